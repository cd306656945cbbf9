import type { Fact } from '../../core/model/fact.ts'
import { isNamed, statusParts } from '../../facts/statusWords.ts'
import { wordsOf } from '../../words/index.ts'
import { MarkedWord } from './Mark.tsx'
import './statusLine.css'

/** How all checks stand, worst first, with the names of those that fall short or can't be verified. It is not permission to build, and says so. */
export const StatusLine = ({ facts }: Readonly<{ facts: readonly Fact[] }>) => (
  <p className='status-line small'>
    {statusParts(facts).map((part) => (
      <span key={part.stand} className='status-part' data-stand={part.stand}>
        <MarkedWord name={part.stand} word={isNamed(part) ? `${part.count}:` : part.count} /> {isNamed(part) && part.names.join('; ')}
        <span className='spoken'>. </span>
      </span>
    ))}
    <span className='quiet'>{wordsOf('app').status.noLeave}</span>
  </p>
)
