import { evidenceBand, type EvidenceBand, lifeBand, steepestOf } from '../../engineering/life/evidenceBand.ts'
import { referenceLife } from '../../engineering/life/referenceLife.ts'
import {
  aboveGroundEvidence,
  commonPracticeLife,
  contactEvidence,
  type EvidenceRow,
  lifeEvidence,
  treatedEvidence,
  untreatedEvidence,
} from '../../engineering/tables/lifeEvidence.ts'
import type { ApartWhy, LifeResult } from '../../model/timeResult.ts'
import type { PierSpec } from '../../model/spec.ts'
import { places } from '../../spec/placement.ts'

/** One treatment or wood in one zone and contact: the rows that speak of it, and what they leave open. */
export type FoundBand = Readonly<{ wood: string; rows: readonly EvidenceRow[]; isOneSided: boolean; band: EvidenceBand }>
type Apart = Readonly<{ row: EvidenceRow; why: ApartWhy }>

/** What was found that speaks of a post: bands, rows told apart with the reason, a range of life where one is chosen, and keys of what all of it lacks. */
export type Found = Readonly<{
  bands: readonly FoundBand[]
  apart: readonly Apart[]
  range: LifeResult['estimated']
  lacks: readonly string[]
}>

/** How sure an interval about a count is to hold, a project choice. Source: assumption. */
export const confidence = 0.95

/** Most that lives of such wood bunch together, as far as two rows that have two points each tell. Source: weibull-two-points. */
const steepest = Math.max(...lifeEvidence.flatMap((row) => steepestOf(row, confidence) ?? []))

/** The range that a person's choice of reference gives for this post, and the rows it rests on. */
export function evidenceFor(spec: PierSpec): Found {
  const { life, post, support } = spec
  if (life.reference === 'own')
    return {
      bands: [{ wood: 'own', rows: [], isOneSided: false, band: lifeBand(life.own, steepest) }],
      apart: [],
      range: life.own,
      lacks: ['own-years'],
    }
  const isTreated = post.treatment !== 'untreated'
  if (support.kind === 'bracket') {
    const about = aboveGroundEvidence.filter((row) => row.wood.endsWith('untreated') !== isTreated)
    return { bands: [], apart: about.map((row) => ({ row, why: 'no-post' })), range: null, lacks: ['no-post-on-bracket'] }
  }
  const about = isTreated ? treatedEvidence : untreatedEvidence
  const chosen = life.reference === 'rows' ? undefined : lifeEvidence.find((row) => row.id === life.reference)
  const zone = life.decayZone
  const told = about.map((row) => ({ row, why: row === chosen ? null : chosen ? ('not-chosen' as const) : whyApart(row, zone) }))
  const counted = chosen ? [chosen] : told.flatMap(({ row, why }) => (why === null ? [row] : []))
  return {
    bands: counted.flatMap((row) => bandOf(row, chosen ? null : zone)),
    apart: [
      ...told.flatMap(({ row, why }) => (why === null ? [] : [{ row, why }])),
      ...contactEvidence.map((row) => ({ row, why: 'no-life' as const })),
    ],
    range: chosen ? referenceLife(chosen) : null,
    lacks: lacksOf(spec, counted),
  }
}

/** Why a row is no part of a band: null for a row that is. Of a zone that is harsher than the pier's a row bounds one side. */
function whyApart({ specimen, limits, sample, life, zone: at }: EvidenceRow, zone: number | null): ApartWhy | null {
  if (specimen !== 'post') return 'no-post'
  if (limits.includes('durable-species')) return 'durable-wood'
  if (limits.includes('low-retention')) return 'less-preservative'
  if (sample === null && life === null) return 'no-count'
  if (sample === null && life?.high === null) return 'one-side'
  if (zone === null) return null
  return at === null ? 'zone-not-read' : at < zone ? 'milder-zone' : null
}

function bandOf(row: EvidenceRow, zone: number | null): readonly FoundBand[] {
  const band = evidenceBand(row, confidence, steepest)
  if (band === null) return []
  const isOneSided = zone !== null && row.zone !== null && row.zone > zone
  const gone: EvidenceBand['gone'] = isOneSided ? (time) => ({ low: 0, high: band.gone(time).high }) : band.gone
  return [{ wood: row.wood, rows: [row], isOneSided, band: { ...band, gone } }]
}

/** What the rows leave out of this pier. */
function lacksOf(spec: PierSpec, rows: readonly EvidenceRow[]): readonly string[] {
  const { life, post } = spec
  const isHarsher = life.decayZone !== null && rows.some(({ zone }) => zone !== null && zone > (life.decayZone ?? 0))
  return [
    'no-building-load',
    ...(rows.some((row) => row.life?.high === null) ? ['row-is-open'] : []),
    ...(rows.some(({ specimen }) => specimen !== 'post') ? ['small-stakes'] : []),
    ...(post.treatment === 'untreated' ? [] : ['no-post-with-todays-treatment']),
    ...(places(spec, 'concrete') || places(spec, 'dry-mix') ? ['none-in-concrete'] : []),
    ...(life.decayZone === null ? ['zone-not-given'] : isHarsher ? ['zone-is-milder'] : []),
  ]
}

/** The trade's figure: for a post in soil that stays wet. */
export const ruleOfThumb = commonPracticeLife
