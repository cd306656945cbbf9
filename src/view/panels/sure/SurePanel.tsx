import { useEffect } from 'react'
import type { SpreadOfUplift } from '../../../core/uncertainty/sureResult.ts'
import type { PierSpec } from '../../../core/model/spec.ts'
import { seenDocument } from '../../../state/derived.ts'
import { isSameQuestion, questionOf, runStudy, stopStudy, sureStore, restoreAssumptions } from '../../../state/sure.ts'
import { wordsOf } from '../../../words/index.ts'
import { usePier, useResult, useUnits } from '../../hooks/usePier.ts'
import { answerWords, reasonWords } from '../../../facts/answerWords.ts'
import { Pairs } from '../../kit/FactTable.tsx'
import { MarkedWord } from '../../kit/Mark.tsx'
import { DotPlot, DotPlotNotes } from './DotPlot.tsx'
import { LinkCounts } from './LinkCounts.tsx'
import { RunBar } from './RunBar.tsx'
import { countWords, unbroken, wholeNumber } from './sureFigures.ts'
import { Swings } from './Swings.tsx'
import { useSure } from './useSure.ts'
import { inputsOf } from '../../../core/uncertainty/inputs.ts'
import { startingAssumptions } from '../../../core/uncertainty/assumptions.ts'
import { RangeRow } from './RangeRow.tsx'
import { Button } from '../../kit/Controls.tsx'
import './sure.css'

/** What is assumed about every input that this pier has, each changed in place. */
const Ranges = ({ spec }: { spec: PierSpec }) => {
  const sure = wordsOf('sure')
  const assumptions = useSure((state) => state.assumptions)
  return (
    <div className='sure-part stack small'>
      <h4 className='flat'>{sure.ranges.title}</h4>
      <p className='quiet'>{sure.ranges.plain}</p>
      <ul className='sure-ranges'>
        {inputsOf(spec).map((input) => {
          const assumption = assumptions.find(({ id }) => id === input.id)
          return assumption ? <RangeRow key={input.id} input={input} assumption={assumption} spec={spec} /> : null
        })}
      </ul>
      <Button disabled={assumptions === startingAssumptions} onClick={() => restoreAssumptions(sureStore)}>
        {sure.ranges.restore}
      </Button>
    </div>
  )
}

/** Changes that follow each other faster than this wait for the last of them [ms]. */
const pause = 350

/**
 * How far the allowable uplift moves when its inputs come out a little different. Works itself out when it is opened and whenever the
 * pier, a range, the seed or the load is another.
 */
export const SurePanel = ({ demand = null }: { demand?: number | null }) => {
  const spec = usePier((state) => seenDocument(state).spec)
  const state = useSure((all) => all)
  const { last, run } = state
  const question = questionOf(state, spec, demand)
  const isAnswered = last !== null && isSameQuestion(last.question, question)
  const isAsked = run.kind === 'running' && isSameQuestion(run.question, question)
  const { assumptions, seed, samples } = question
  const needsRun = !isAnswered && !isAsked
  // Asked again when the question is another, and only then: a study that was stopped stays stopped.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the parts of the question are what it depends on
  useEffect(() => {
    if (!needsRun) return
    const timer = setTimeout(() => runStudy(sureStore, spec, demand), last === null ? 0 : pause)
    return () => clearTimeout(timer)
  }, [spec, demand, assumptions, seed, samples])
  useEffect(() => () => stopStudy(sureStore), [])
  const result = last?.result
  return (
    <div className='stack small'>
      {result?.kind === 'unverified' && <Unverified links={result.links} />}
      {result?.kind === 'spread' && <Spread result={result} spec={last?.question.spec ?? spec} isStale={!isAnswered} />}
      {result?.kind !== 'unverified' && (
        <>
          <RunBar isStale={!isAnswered && last !== null} onRun={() => runStudy(sureStore, spec, demand)} />
          <Ranges spec={spec} />
        </>
      )}
    </div>
  )
}

/** A link that may not be counted leaves nothing to spread. */
const Unverified = ({ links }: { links: readonly string[] }) => {
  const sure = wordsOf('sure')
  const { checks } = useResult()
  return (
    <div className='sure-part stack small'>
      <p className='lead'>
        <MarkedWord name='unverified' word={sure.unverified.title} />
      </p>
      <p>{sure.unverified.plain}</p>
      <ul className='bullets'>
        {links.map((id) => (
          <li key={id}>
            <strong>{answerWords(id).label}:</strong> {wordsOf('app').verdicts.unverified.toLowerCase()}.{' '}
            {reasonWords(checks.find((check) => check.id === id)?.why)}
          </li>
        ))}
      </ul>
    </div>
  )
}

const Spread = ({ result, spec, isStale }: { result: SpreadOfUplift; spec: PierSpec; isStale: boolean }) => {
  const sure = wordsOf('sure')
  const { say, bare } = useUnits()
  const { quantiles, without, study, below, asEntered, allowable } = result
  const range = quantiles && ([bare(quantiles.low, 'force'), unbroken(say(quantiles.high, 'force'))] as const)
  const lacking = study.samples - allowable.length
  return (
    <div data-stale={isStale || undefined} className='sure-answer stack small'>
      <p className='lead'>{range ? (without.length > 0 ? sure.leadSome(...range) : sure.lead(...range)) : sure.noneHold}</p>
      {below !== null && study.demand != null && (
        <p>
          {sure.below(countWords(below, study.samples), unbroken(say(study.demand, 'force')))} {below === 0 && sure.noneIsNotNever}
        </p>
      )}
      {lacking > 0 && <p>{sure.without(countWords(lacking, study.samples))}</p>}
      <p className='sure-not aside'>{sure.notChance}</p>
      {quantiles && (
        <>
          <DotPlot result={result} quantiles={quantiles} />
          <DotPlotNotes result={result} quantiles={quantiles} />
          <Pairs
            of={[
              [sure.asEntered, say(asEntered, 'force')],
              [sure.middle, say(quantiles.middle, 'force')],
            ]}
          />
        </>
      )}
      <p className='quiet'>
        {sure.tryMeans(wholeNumber(study.samples))} {study.demand == null && sure.noLoad}
      </p>
      <LinkCounts result={result} />
      <Swings result={result} spec={spec} />
    </div>
  )
}
