import type { ComponentType } from 'react'
import type { CalloutVerdict } from '../../core/model/calloutResult.ts'
import type { PierResult } from '../../core/model/result.ts'
import { chainOfResult, type CompareRowId } from '../../state/compareRows.ts'
import { wordsOf } from '../../words/index.ts'
import { cells } from '../compare/cells.tsx'
import { answerWords } from '../panels/answers/words.ts'
import { markOf } from '../panels/drawing/values.ts'
import { Mark, type MarkName, MarkedWord } from '../kit/Mark.tsx'

type Cell = Readonly<{ result: PierResult }>

/** Names under one mark and one word, on as few lines as they take. */
const Told = ({ mark, word, names }: Readonly<{ mark: MarkName; word: string; names: readonly string[] }>) => (
  <p>
    <Mark name={mark} /> <b>{word}:</b> {names.join(', ')}
  </p>
)

const counts = [
  ['not counted', 'unverified'],
  ["engineer's judgement", 'judgement'],
  ['counted', 'counted'],
] as const

/** Links of the pull by how they count. */
const Links = ({ result }: Cell) =>
  counts.map(([counted, mark]) => {
    const names = chainOfResult(result).flatMap((check) => (check.counted === counted ? [answerWords(check.id).label] : []))
    return names.length > 0 && <Told key={counted} mark={mark} word={wordsOf('app').verdicts[mark]} names={names} />
  })

const overallMark = { 'as drawn': 'meets', 'not as drawn': 'short', "can't be confirmed as drawn": 'unverified' } as const
const held: readonly CalloutVerdict[] = ['falls short', "can't be verified", 'meets']

/** Items of the drawing by their verdict. */
const Drawing = ({ result: { callout } }: Cell) => {
  if (callout === null || callout.checked === 0) return <p>{wordsOf('compare').table.noDrawing}</p>
  return (
    <>
      <p className='cmp-figure'>
        <MarkedWord name={overallMark[callout.overall]} word={wordsOf('drawing').overall[callout.overall]} />
      </p>
      {held.map((verdict) => {
        const names = callout.items.flatMap((item) => (item.verdict === verdict ? [wordsOf('drawing').items[item.id]] : []))
        const mark = markOf[verdict]
        return names.length > 0 && mark && <Told key={verdict} mark={mark} word={wordsOf('drawing').verdicts[verdict]} names={names} />
      })}
    </>
  )
}

/** No number may be stated; which links say so stands in a row of its own. */
const Unverified = () => (
  <p className='cmp-figure'>
    <MarkedWord name='unverified' word={wordsOf('app').verdicts.unverified} />
  </p>
)
const Counted = cells['holds-down']
const HoldsDown = ({ result }: Cell) => (result.uplift.allowable === null ? <Unverified /> : <Counted result={result} />)
const Used = cells['load-used']
const LoadUsed = ({ result }: Cell) => (result.uplift.ratio === null ? <Unverified /> : <Used result={result} />)

const Inspect = ({ result }: Cell) => {
  const words = wordsOf('compare')
  const { open, closed } = words.inspect[result.spec.fill.kind]
  return (
    <>
      <p>
        <b>{words.table.open}:</b> {open}
      </p>
      <p>
        <b>{words.table.closed}:</b> {closed}
      </p>
    </>
  )
}

const Replace = ({ result }: Cell) => {
  const words = wordsOf('compare')
  return (
    <p>
      {words.replace[result.spec.fill.kind]} {result.spec.support.kind !== 'bracket' && words.table.noTime}
    </p>
  )
}

const Sides = ({ result }: Cell) => {
  const words = wordsOf('compare')
  const { strength, weakness } = wordsOf('fills')[result.spec.fill.kind]
  return (
    <>
      <p>
        <b>{words.table.forIt}:</b> {strength}
      </p>
      <p>
        <b>{words.table.againstIt}:</b> {weakness}
      </p>
    </>
  )
}

/** As on the screen, but with nothing to open, and with each word once where it is true of several names. */
export const paperCells: Readonly<Record<CompareRowId, ComponentType<Cell>>> = {
  ...cells,
  'holds-down': HoldsDown,
  'load-used': LoadUsed,
  links: Links,
  drawing: Drawing,
  inspect: Inspect,
  replace: Replace,
  sides: Sides,
}

/** Rows of which every cell is known from the trade alone. */
export const isPractice = (id: CompareRowId): boolean => id === 'inspect' || id === 'replace'
