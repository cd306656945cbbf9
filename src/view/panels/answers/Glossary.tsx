import { text } from '../../../text/index.ts'

/** Every technical word of the page, in one line each. */
export const Glossary = () => (
  <dl className='marks'>
    {Object.entries(text.glossary).map(([word, meaning]) => (
      <div key={word}>
        <dt>{word}</dt>
        <dd>{meaning}</dd>
      </div>
    ))}
  </dl>
)
