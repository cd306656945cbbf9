import { type SourceId, sources } from '../../core/engineering/sources.ts'
import { wordsOf } from '../../words/index.ts'
import { StandingMark } from './Mark.tsx'

/** Title, edition, place and standing of one source, as an item of a list. */
export const SourceLine = ({ id }: { id: SourceId }) => {
  const source = sources[id]
  const edition = [source.edition, source.year === null || source.edition.includes(String(source.year)) ? '' : String(source.year)]
  return (
    <li>
      <span translate='no'>
        <cite>{source.title}</cite>
        {[...edition, source.locator].filter((part) => part !== '').map((part) => `, ${part}`)}
      </span>{' '}
      <StandingMark standing={source.standing} />
    </li>
  )
}

export const SourceList = ({ ids }: { ids: readonly SourceId[] }) =>
  ids.length === 0 ? null : (
    <div className='source-list'>
      <h4 className='small-head'>{wordsOf('app').answers.sources}</h4>
      <ul className='dashes'>
        {[...new Set(ids)].map((id) => (
          <SourceLine key={id} id={id} />
        ))}
      </ul>
    </div>
  )
