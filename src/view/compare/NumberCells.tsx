import type { PierResult } from '../../core/model/result.ts'
import { uncountedMass } from '../../state/compareRows.ts'
import { wordsOf } from '../../words/index.ts'
import { useUnits } from '../hooks/useUnits.ts'
import { orderWords } from '../panels/answers/Quantities.tsx'
import { StandingMark } from '../panels/answers/WorkedDetails.tsx'
import { sideWords } from '../panels/answers/sideWords.ts'
import { answerWords, reasonWords } from '../panels/answers/words.ts'
import { MarkedWord } from '../kit/Mark.tsx'

type Cell = Readonly<{ result: PierResult }>

const headline = ({ headlines }: PierResult, id: string) => headlines.find((one) => one.id === id)

const Figure = ({ children }: Readonly<{ children: React.ReactNode }>) => <p className='cmp-figure'>{children}</p>

/** No number may be stated: a mark of its own, the word, and the links that say so. */
const Unverified = ({ result }: Cell) => (
  <>
    <p className='cmp-figure cmp-none'>
      <MarkedWord name='unverified' word={wordsOf('app').verdicts.unverified} />
    </p>
    <ul className='cmp-small'>
      {result.uplift.uncounted.map((id) => (
        <li key={id}>{wordsOf('compare').table.notCounted(answerWords(id).label)}</li>
      ))}
    </ul>
  </>
)

export const HoldsDown = ({ result }: Cell) => {
  const { say } = useUnits()
  const { uplift, checks, demand } = result
  if (uplift.allowable === null) return <Unverified result={result} />
  const governing = checks.find((check) => check.id === uplift.governing)
  return (
    <>
      <Figure>
        {say(uplift.allowable, 'force')} <StandingMark standing={uplift.standing} />
      </Figure>
      {demand.uplift && <p className='cmp-small'>{wordsOf('compare').table.needs(say(demand.uplift.value, 'force'))}</p>}
      {governing && (
        <p className='cmp-small' title={reasonWords(governing.why)}>
          <span className='governs'>{wordsOf('app').answers.governs}</span> {answerWords(governing.id).label}
        </p>
      )}
    </>
  )
}

export const LoadUsed = ({ result }: Cell) => {
  const { say } = useUnits()
  const { ratio } = result.uplift
  if (ratio === null) return <Unverified result={result} />
  return (
    <>
      <Figure>{say(ratio, 'ratio')}</Figure>
      <MarkedWord name={ratio <= 1 ? 'meets' : 'short'} word={ratio <= 1 ? wordsOf('app').verdicts.meets : wordsOf('app').verdicts.short} />
    </>
  )
}

export const Hole = ({ result }: Cell) => {
  const { say, bare } = useUnits()
  const { volume, spoilLoose } = result.hole
  return (
    <>
      <Figure>{say(volume.value, 'volume')}</Figure>
      <p className='cmp-small'>{wordsOf('app').answers.looseNote(bare(spoilLoose.low, 'volume'), say(spoilLoose.high, 'volume'))}</p>
    </>
  )
}

export const Mix = ({ result }: Cell) => {
  const { say, system } = useUnits()
  const mix = headline(result, 'mix-volume')
  const orders = result.quantities.flatMap(({ id, role, orders: ways }) =>
    ways.length > 0
      ? [{ id, name: wordsOf('materials').roles[role].label, ways: ways.map((way) => orderWords(way, system, say, 'each', 'short')) }]
      : [],
  )
  return (
    <>
      {mix && <Figure>{say(mix.value, mix.quantity)}</Figure>}
      <ul className='cmp-small'>
        {orders.map(({ id, name, ways }) => (
          <li key={id}>
            {name}: {ways.join(` ${wordsOf('app').answers.or} `)}
          </li>
        ))}
      </ul>
    </>
  )
}

export const Weight = ({ result }: Cell) => {
  const { say } = useUnits()
  const weight = headline(result, 'pier-weight')
  const left = uncountedMass(result).reduce((sum, line) => sum + line.weight, 0)
  return (
    <>
      {weight && (
        <Figure>
          {say(weight.value, weight.quantity)} <StandingMark standing={weight.standing} />
        </Figure>
      )}
      <p className='cmp-small'>{wordsOf('app').answers.weightNote}</p>
      {left > 0 && <p className='cmp-small'>{wordsOf('compare').table.massNotCounted(say(left, 'weight'))}</p>}
    </>
  )
}

export const Wood = ({ result }: Cell) => {
  const { say } = useUnits()
  const wood = headline(result, 'wood-below-grade')
  return (
    <>
      {wood && <Figure>{say(wood.value, wood.quantity)}</Figure>}
      <p className='cmp-small'>{sideWords(result.exposure.lines)}</p>
    </>
  )
}
