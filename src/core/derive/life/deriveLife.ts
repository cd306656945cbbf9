import { climateIndex, type ClimateMonth, decayHazard, workedClimateIndex } from '../../engineering/life/climateIndex.ts'
import { estimatedLife, estimatedLifeBand, type LifeFactors, workedEstimatedLife } from '../../engineering/life/factorMethod.ts'
import { workedZeroFailureBound } from '../../engineering/life/zeroFailures.ts'
import { climateRecords } from '../../engineering/tables/climateRecords.ts'
import { termiteEvidence } from '../../engineering/tables/lifeEvidence.ts'
import { weakest } from '../../engineering/showing.ts'
import type { SourceId } from '../../engineering/sources.ts'
import type { PierSpec } from '../../model/spec.ts'
import type { TreatmentBand, LifeResult, SoundByYear } from '../../model/timeResult.ts'
import type { Worked } from '../../model/worked.ts'
import { toSI } from '../../units/factors.ts'
import { seconds, type Seconds } from '../../units/quantity.ts'
import { claimsOnLife } from './claims.ts'
import { confidence, evidenceFor, type FoundBand, ruleOfThumb } from './evidenceRows.ts'
import { inspectionOf } from './inspection.ts'

/** Longest that is shown of rows that tell a life [yr]. */
const longest = 60

/**
 * What may be said of the life of the wood, always as a range. Pure, and apart from `derivePier`.
 * @param spec a valid spec
 */
export function deriveLife(spec: PierSpec): LifeResult {
  const found = evidenceFor(spec)
  const { quality: A, design: B, work: C, outdoors: E, use: F, upkeep: G } = spec.life.factors
  const factors: LifeFactors = { A, B, C, D: 1, E, F, G }
  const times = estimatedLife({ reference: seconds(1), factors })
  const rows = found.bands.flatMap((one) => one.rows)
  const apart = found.apart.map(({ row }) => row)
  const bands = found.bands.map((one) => shownBand(one, times))
  const termites = isBuried(spec) ? termitesFor(spec) : []
  const climate = climateOf(spec)
  const { range } = found
  const band = range && estimatedLifeBand({ reference: { low: range.low, high: range.high ?? range.low }, low: factors, high: factors })
  const use = (id: string) => ({ id, standings: rows.map((row) => row.standing), sources: rows.map((row) => row.source) })
  const worked: Worked[] = [
    ...(range ? [workedEstimatedLife({ reference: range.low, ...factors }, use('estimated-life-least'))] : []),
    ...(range?.high ? [workedEstimatedLife({ reference: range.high, ...factors }, use('estimated-life-most'))] : []),
    ...[...rows, ...apart].flatMap(({ id, sample, source, standing }) => {
      const bound =
        sample?.failed === 0
          ? workedZeroFailureBound(
              { sample: sample.count, confidence },
              { id: `zero-failure-bound-${id}`, sources: [source], standings: [standing] },
            )
          : null
      return bound ? [bound] : []
    }),
    ...(climate ? [climate.index] : []),
  ]
  return {
    rows: rows.map(({ id }) => id),
    apart: found.apart.map(({ row, why }) => ({ row: row.id, why })),
    lacks: found.lacks,
    bands,
    estimated: band && { low: band.low, high: range?.high === null ? null : band.high },
    termites: termites.map(({ id }) => id),
    factors,
    sound: allOf(bands),
    ruleOfThumb: {
      row: ruleOfThumb.id,
      applies: isBuried(spec) && spec.water.ground === 'wet',
      life: seconds(ruleOfThumb.life?.low.value ?? 0),
    },
    climate,
    buriedHazard: isBuried(spec) ? 'high' : 'none',
    inspection: inspectionOf(spec),
    claims: claimsOnLife(spec),
    worked,
    sources: sourcesOf(
      worked,
      [...rows, ...apart, ruleOfThumb, ...termites].map((row) => row.source),
    ),
    standing: weakest(bands.length > 0 ? 'assumed here' : 'definition', ...worked.map((one) => one.standing)),
  }
}

/** A band by whole years, its times stretched by the factors, up to where its rows end. */
function shownBand({ wood, rows, isOneSided, band }: FoundBand, times: number): TreatmentBand {
  const last = band.until === null ? longest : Math.min(longest, Math.floor((band.until * times) / inSeconds(1) + 1e-9))
  const [row] = rows
  return {
    wood,
    zone: row?.zone ?? null,
    contact: row?.contact ?? null,
    rows: rows.map(({ id }) => id),
    isOneSided,
    sound: Array.from({ length: last + 1 }, (_, year) => {
      const { low, high } = band.gone(seconds(inSeconds(year) / times))
      return { year, share: { low: 1 - high, high: 1 - low } }
    }),
  }
}

/** The widest that any band leaves open, as long as all of them speak: which of the treatments is in a post is not asked. */
function allOf(bands: readonly TreatmentBand[]): SoundByYear | null {
  const [first, ...others] = bands.map(({ sound }) => sound)
  if (first === undefined) return null
  return first.flatMap(({ year, share }) => {
    const shares = [share, ...others.flatMap((sound) => sound[year]?.share ?? [])]
    if (shares.length < bands.length) return []
    return [{ year, share: { low: Math.min(...shares.map((one) => one.low)), high: Math.max(...shares.map((one) => one.high)) } }]
  })
}

const termitesFor = ({ post }: PierSpec) => {
  const treatment = post.treatment === 'untreated' ? 'untreated' : 'treated'
  return termiteEvidence.filter((one) => one.treatment === 'any' || one.treatment === treatment)
}

const inSeconds = (year: number): Seconds => seconds(toSI(year, 'yr'))
const isBuried = ({ support }: PierSpec): boolean => support.kind === 'embedded'
const sourcesOf = (worked: readonly Worked[], more: readonly SourceId[]): readonly SourceId[] =>
  [...new Set([...worked.flatMap((one) => one.sources), ...more])].sort()

/** The index of the months entered, else of the record chosen. It speaks of wood above ground, whatever the pier. */
function climateOf({ life }: PierSpec): LifeResult['climate'] {
  const record =
    life.climate === null ? null : ((climateRecords as Readonly<Record<string, (typeof climateRecords)['seattle']>>)[life.climate] ?? null)
  const months: readonly ClimateMonth[] | null = life.months
    ? Object.values(life.months.temperature).map((temperature, index) => ({
        temperature,
        wetDays: Object.values(life.months?.rainDays ?? {})[index] ?? 0,
      }))
    : (record?.months ?? null)
  if (months === null) return null
  const value = climateIndex(months)
  const index = workedClimateIndex(
    { months },
    record && !life.months
      ? { sources: [record.source], standings: [record.standing] }
      : { sources: ['user'], standings: ['assumed here'] },
  )
  return value === null || index === null
    ? null
    : { index, hazard: decayHazard({ place: 'above-ground', index: value }), appliesTo: 'above-ground wood' }
}
