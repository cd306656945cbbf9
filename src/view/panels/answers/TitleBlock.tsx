import { factsOf } from '../../../core/derive/report/report.ts'
import { costOfGain } from '../../../core/derive/report/worsened.ts'
import type { Fact } from '../../../core/model/fact.ts'
import type { Role } from '../../../core/model/solid.ts'
import { headlineWords, mixPartsWords, mostWoodWords, numberOf, toOrderWords } from '../../../facts/firstWords.ts'
import { wordsOf } from '../../../words/index.ts'
import { useFacts, useFactsBefore, useUnits } from '../../hooks/usePier.ts'
import { MarkedWord, StandingMark } from '../../kit/Mark.tsx'
import { StatusLine } from '../../kit/StatusLine.tsx'
import { Worse } from '../../kit/Worse.tsx'

const labels = (ids: readonly string[]): string => ids.map((id) => headlineWords(id).label).join(', ')

/** What is asked of it, and whether it holds that: only where the load path has a number. */
const Asked = ({ uplift: { verdict, ratio, limit, isEstimate } }: { uplift: Fact }) => {
  const { say } = useUnits()
  const load = numberOf(limit)
  if (ratio === null || load === null || load <= 0) return null
  const kind = isEstimate ? 'estimated' : 'entered'
  const { notBelow, below, askedFor } = wordsOf('app').answers
  const holds = verdict === 'meets'
  return (
    <p className='title-note quiet title-asked line'>
      <MarkedWord name={holds ? 'meets' : 'short'} word={(holds ? notBelow : below)[kind]} />
      <span>{askedFor[kind](say(load, 'force'))}</span>
    </p>
  )
}

/** What holds the pier down, or that it can't be verified; and what governs. */
const Uplift = ({ uplift, facts }: Readonly<{ uplift: Fact; facts: readonly Fact[] }>) => {
  const before = useFactsBefore()
  const { say } = useUnits()
  const { answers, verdicts } = wordsOf('app')
  const holds = numberOf(uplift.value)
  const rests = labels(uplift.restsOn)
  return (
    <div className='title-cell over-fine title-main'>
      <h2 className='quiet light'>{answers.uplift}</h2>
      <p className='large'>
        {holds === null ? (
          <MarkedWord name='unverified' word={verdicts.unverified} />
        ) : (
          <>
            {say(holds, 'force')} <StandingMark standing={uplift.standing} />
          </>
        )}
      </p>
      {rests !== '' && (
        <p className='title-note quiet'>
          {holds === null ? `${answers.because}: ` : <span className='governs heavy'>{answers.governs}</span>} {rests}
        </p>
      )}
      <Asked uplift={uplift} />
      {before && <Worse checks={costOfGain(before, facts)} />}
    </div>
  )
}

/** What is counted as mix: the stone of a bed is ordered too, and is none. */
const isMix: ReadonlySet<Role | undefined> = new Set(['concrete', 'dry-mix', 'flowable-fill'])

/** A few words under a main number: what to order, what comes out, where it was measured. */
const useNotes = (facts: readonly Fact[]): Readonly<Record<string, string>> => {
  const units = useUnits()
  const { looseNote, weightNote } = wordsOf('app').answers
  const loose = factsOf(facts, 'hole').find(({ id }) => id === 'spoil-loose')?.value
  const mixes = factsOf(facts, 'quantity').filter(({ role, orders }) => orders && orders.length > 0 && isMix.has(role))
  return {
    'hole-volume': loose?.as === 'range' ? looseNote(units.bare(loose.low, 'volume'), units.say(loose.high, 'volume')) : '',
    'mix-volume': [
      ...factsOf(facts, 'headline').flatMap((fact) => (fact.id === 'mix-volume' ? [mixPartsWords(fact, units)] : [])),
      ...mixes.map((mix) => toOrderWords(mix, units)),
    ]
      .filter((note) => note !== '')
      .join('. '),
    'pier-weight': weightNote,
    'wood-below-grade': mostWoodWords(factsOf(facts, 'exposure')),
  }
}

/** The main answers, as the title block of the sheet: always in view. */
export const TitleBlock = () => {
  const facts = useFacts()
  const { say } = useUnits()
  const notes = useNotes(facts)
  return (
    <section className='title panel under-heavy' aria-label={wordsOf('app').panels.headlines}>
      <StatusLine facts={facts} />
      {factsOf(facts, 'uplift').map((uplift) => (
        <Uplift key={uplift.id} uplift={uplift} facts={facts} />
      ))}
      {factsOf(facts, 'headline').map(({ id, value }) => (
        <div key={id} className='title-cell over-fine'>
          <h2 className='quiet light'>{headlineWords(id).label}</h2>
          <p className='large'>{value?.as === 'number' && say(value.value, value.quantity)}</p>
          <p className='title-note quiet'>{notes[id]}</p>
        </div>
      ))}
    </section>
  )
}
