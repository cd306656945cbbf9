import { wordsOf } from '../../../words/index.ts'

/** Every technical word of the page, in one line each. */
export const Glossary = () => (
  <dl className='marks'>
    {Object.entries(wordsOf('glossary')).map(([word, meaning]) => (
      <div key={word}>
        <dt>{word}</dt>
        <dd>{meaning}</dd>
      </div>
    ))}
  </dl>
)
