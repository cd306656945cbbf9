import { wordsOf } from '../../words/index.ts'

/** Best or worst of a row: a pointed shape up or a notch down, and the word. */
export const End = ({ which }: Readonly<{ which: 'best' | 'worst' }>) => (
  <span className={`cmp-end verdict small strong cmp-${which}`}>
    <svg viewBox='0 0 16 16' width='16' height='16' aria-hidden='true' focusable='false'>
      {which === 'best' ? (
        <path d='M8 1.5 14.5 13h-13Z' fill='currentColor' />
      ) : (
        <path d='M1.5 3h13L8 14.5Z' fill='none' stroke='currentColor' strokeWidth='1.6' />
      )}
    </svg>
    {wordsOf('compare').table[which]}
  </span>
)

/** A mark beside an input that is not as in the first pier. */
export const Changed = () => (
  <svg className='cmp-changed' viewBox='0 0 16 16' width='14' height='14' aria-hidden='true' focusable='false'>
    <path d='M2 5.5h12M2 10.5h12M11.5 1.5l-7 13' fill='none' stroke='currentColor' strokeWidth='1.8' />
  </svg>
)
