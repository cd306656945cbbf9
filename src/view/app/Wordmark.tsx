import { wordsOf } from '../../words/index.ts'

/** A pier in its hole, in one ink: grade line, hole, post, crown. */
export const Wordmark = () => (
  <h1 className='wordmark heavy'>
    <svg viewBox='0 0 20 28' aria-hidden='true' focusable='false' fill='none' stroke='currentColor'>
      <path d='M0 9.5h4.2M15.8 9.5H20' strokeWidth='1.4' />
      <path d='M4.2 9v17.3h11.6V9L10 6.4Z' strokeWidth='1.4' />
      <path d='M7.6 1h4.8v20.5H7.6Z' fill='var(--panel)' strokeWidth='1.4' />
      <path d='M5.8 17.2h8.4' strokeWidth='1.8' />
    </svg>
    <span>{wordsOf('app').name}</span>
  </h1>
)
