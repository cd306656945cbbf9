import './parts.css'
import type { WeatherFlag } from '../../core/engineering/mix/weatherFlags.ts'
import { wordsOf } from '../../words/index.ts'
import type { SayNumber } from '../../core/units/reader.ts'

/** What the weather asks attention for, each with what was entered and the limit that it passes. */
export const WeatherFlags = ({ flags, say }: Readonly<{ flags: readonly WeatherFlag[]; say: SayNumber }>) => {
  if (flags.length === 0) return null
  return (
    <ul className='danger'>
      {flags.map(({ id, got, limit }) => (
        <li key={id}>
          {wordsOf('time').month.flags[id]}
          {got !== null && limit !== null && ` ${wordsOf('time').month.against(say(got, 'temperature'), say(limit, 'temperature'))}`}
        </li>
      ))}
    </ul>
  )
}
