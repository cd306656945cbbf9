import type { PierResult } from '../../../core/model/result.ts'
import type { Role } from '../../../core/model/solid.ts'
import { wordsOf } from '../../../words/index.ts'
import { useResult } from '../../hooks/usePier.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { MarkedWord } from '../../kit/Mark.tsx'
import { answerWords } from './answerWords.ts'
import { orderWords } from './orderWords.ts'
import { sideWords } from './sideWords.ts'
import { StandingMark } from './StandingMark.tsx'

/** What is asked of it, and whether it holds that: only where the load path has a number. */
const Asked = ({ result }: { result: PierResult }) => {
  const { say } = useUnits()
  const { demand, uplift } = result
  if (uplift.ratio === null || demand.uplift === null || demand.uplift.value <= 0) return null
  const kind = demand.isEstimate ? 'estimated' : 'entered'
  const holds = uplift.ratio <= 1
  const load = say(demand.uplift.value, 'force')
  return (
    <p className='title-note title-asked'>
      <MarkedWord name={holds ? 'meets' : 'short'} word={(holds ? wordsOf('app').answers.notBelow : wordsOf('app').answers.below)[kind]} />
      <span>{wordsOf('app').answers.askedFor[kind](load)}</span>
    </p>
  )
}

/** What holds the pier down, or that it can't be verified; and what governs. */
const Uplift = () => {
  const result = useResult()
  const { uplift, checks } = result
  const { say } = useUnits()
  const governing = checks.find((check) => check.id === uplift.governing)
  const uncounted = uplift.uncounted.map((id) => answerWords(id).label)
  return (
    <div className='title-cell title-main'>
      <h3 className='title-label'>{wordsOf('app').answers.uplift}</h3>
      {uplift.allowable === null ? (
        <>
          <p className='title-value'>
            <MarkedWord name='unverified' word={wordsOf('app').verdicts.unverified} />
          </p>
          {uncounted.length > 0 && (
            <p className='title-note'>
              {wordsOf('app').answers.because}: {uncounted.join(', ')}
            </p>
          )}
        </>
      ) : (
        <>
          <p className='title-value'>
            {say(uplift.allowable, 'force')} <StandingMark standing={uplift.standing} />
          </p>
          {governing && (
            <p className='title-note'>
              <span className='governs'>{wordsOf('app').answers.governs}</span> {answerWords(governing.id).label}
            </p>
          )}
          <Asked result={result} />
        </>
      )}
    </div>
  )
}

/** What is counted as mix: the stone of a bed is ordered too, and is none. */
const isMix: ReadonlySet<Role> = new Set<Role>(['concrete', 'dry-mix', 'flowable-fill'])

/** A few words under a main number: what to order, what comes out, where it was measured. */
const useNotes = (): Readonly<Record<string, string>> => {
  const { hole, quantities, exposure } = useResult()
  const { say, bare, system } = useUnits()
  const mixes = quantities.filter((line) => line.orders.length > 0 && isMix.has(line.role))
  return {
    'hole-volume': wordsOf('app').answers.looseNote(bare(hole.spoilLoose.low, 'volume'), say(hole.spoilLoose.high, 'volume')),
    'mix-volume': mixes
      .map(({ orders }) => orders.map((order) => orderWords(order, system, say, 'each', 'short')).join(` ${wordsOf('app').answers.or} `))
      .join(' + '),
    'pier-weight': wordsOf('app').answers.weightNote,
    'wood-below-grade': sideWords(exposure.lines),
  }
}

/** The main answers, as the title block of the sheet: always in view. */
export const TitleBlock = () => {
  const { headlines } = useResult()
  const { say } = useUnits()
  const notes = useNotes()
  return (
    <section className='title' aria-label={wordsOf('app').panels.headlines}>
      <Uplift />
      {headlines.map((worked) => (
        <div key={worked.id} className='title-cell'>
          <h3 className='title-label'>{answerWords(worked.id).label}</h3>
          <p className='title-value'>{say(worked.value, worked.quantity)}</p>
          <p className='title-note'>{notes[worked.id]}</p>
        </div>
      ))}
    </section>
  )
}
