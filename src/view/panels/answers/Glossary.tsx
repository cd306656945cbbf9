import { late } from '../../../text/late.ts'

/** Every technical word of the page, in one line each. */
export const Glossary = () => (
  <dl className='marks'>
    {Object.entries(late.glossary).map(([word, meaning]) => (
      <div key={word}>
        <dt>{word}</dt>
        <dd>{meaning}</dd>
      </div>
    ))}
  </dl>
)
