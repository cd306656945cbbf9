import type { PierResult } from '../../core/model/result.ts'
import type { Band } from '../../core/model/timeResult.ts'
import { moistureOf } from '../../state/moistureDerived.ts'
import { costOf } from '../../state/compareRows.ts'
import { lifeOf } from '../../state/timeDerived.ts'
import { wordsOf } from '../../words/index.ts'
import { useUnits } from '../hooks/useUnits.ts'
import { StandingMark } from '../panels/answers/StandingMark.tsx'
import { yearsText } from '../time/timeFigures.ts'

type Cell = Readonly<{ result: PierResult }>

/** Buried wood by class of wetness. */
export const Wet = ({ result }: Cell) => {
  const { say } = useUnits()
  const shares = moistureOf(result.spec).shares.filter(({ area }) => area > 1e-9)
  if (shares.length === 0) return <p>{wordsOf('compare').table.noWood}</p>
  return (
    <ul>
      {shares.map(({ wetness, share, area }) => (
        <li key={wetness}>
          {wordsOf('moisture').wetness[wetness]}: {say(share, 'ratio')} <span className='cmp-small'>{say(area, 'area')}</span>
        </li>
      ))}
    </ul>
  )
}

/** The range that rows of evidence leave, or that there is none. */
export const Life = ({ result }: Cell) => {
  const words = wordsOf('compare').table
  const { estimated, standing } = lifeOf(result.spec)
  if (estimated === null) return <p>{words.noLife}</p>
  return (
    <p>
      {words.years(yearsText(estimated.low), yearsText(estimated.high))} <StandingMark standing={standing} />
    </p>
  )
}

/** Present value and yearly cost as ranges. A price that is missing and a life that nobody knows are told apart. */
export const Cost = ({ result }: Cell) => {
  const words = wordsOf('compare').table
  const { say } = useUnits()
  const cost = costOf(result)
  const money = ({ low, high }: Band): string => words.spread(say(low, 'money'), say(high, 'money'))
  if (!cost?.present || !cost.yearly) return <p>{cost?.lacks.join() === 'life' ? words.noLifeCost : words.noPrice}</p>
  return (
    <>
      <p>
        {money(cost.present)} <span className='cmp-small'>{words.today}</span>
      </p>
      <p className='cmp-small'>{words.aYear(money(cost.yearly))}</p>
    </>
  )
}
