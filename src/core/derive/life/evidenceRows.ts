import { referenceLife } from '../../engineering/life/referenceLife.ts'
import {
  commonPracticeLife,
  contactEvidence,
  type EvidenceRow,
  lifeEvidence,
  treatedEvidence,
  untreatedEvidence,
} from '../../engineering/tables/lifeEvidence.ts'
import type { Band } from '../../model/timeResult.ts'
import type { PierSpec } from '../../model/spec.ts'
import { seconds, type Seconds } from '../../units/quantity.ts'

/** What was found that speaks of a post, and the range it leaves. `lacks`: keys of what it does not cover. */
export type Found = Readonly<{
  rows: readonly EvidenceRow[]
  beside: readonly EvidenceRow[]
  range: Band<Seconds> | null
  lacks: readonly string[]
}>

const isCommonWood = (row: EvidenceRow) => !row.limits.includes('durable-species')
const hasLife = (row: EvidenceRow) => referenceLife(row) !== null
/** The last word on treatments that are sold today: no life, only how long they have been watched. */
const today = (row: EvidenceRow) => row.limits.includes('ten-years-only')

const nothing: Found = { rows: [], beside: [], range: null, lacks: [] }
/** No longer estimate was found for any post; the end of a row that is printed as "or more". */
const longest = Math.max(...lifeEvidence.flatMap((row) => referenceLife(row)?.high ?? []))

/** The range that a person's choice of reference gives for this post, and the rows it rests on. */
export function evidenceFor({ life, post, support }: PierSpec): Found {
  if (life.reference === 'own') return { ...nothing, range: life.own, lacks: ['own-years'] }
  if (support.kind === 'bracket') return { ...nothing, lacks: ['no-rows-above-ground'] }
  const about = post.treatment === 'untreated' ? untreatedEvidence.filter(isCommonWood) : treatedEvidence
  const beside = [...about.filter((row) => !hasLife(row)), ...contactEvidence]
  if (life.reference !== 'rows') {
    const row = lifeEvidence.find((one) => one.id === life.reference)
    const range = row ? referenceLife(row) : null
    if (row === undefined || range === null) return nothing
    const isOpen = range.high === null
    const most = seconds(Math.max(range.high ?? longest, range.low))
    return { rows: [row], beside, range: { low: range.low, high: most }, lacks: isOpen ? ['row-is-open'] : [] }
  }
  const rows = about.filter((row) => hasLife(row))
  const lives = rows.flatMap((row) => referenceLife(row) ?? [])
  const watched = post.treatment === 'untreated' ? [] : about.filter(today)
  const low = Math.min(...lives.map((one) => one.low), ...watched.flatMap((row) => row.watched?.value ?? []))
  const high = Math.max(...lives.map((one) => one.high ?? one.low))
  const lacks = ['no-building-load', ...(watched.length > 0 ? ['todays-treatments-watched-briefly'] : ['small-stakes'])]
  return {
    rows: [...rows, ...watched],
    beside: beside.filter((row) => !watched.includes(row)),
    range: { low: seconds(low), high: seconds(high) },
    lacks,
  }
}

/** The trade's figure: for a post in soil that stays wet. */
export const ruleOfThumb = commonPracticeLife
