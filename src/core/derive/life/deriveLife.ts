import { climateIndex, type ClimateMonth, decayHazard, workedClimateIndex } from '../../engineering/life/climateIndex.ts'
import { evidenceCurve } from '../../engineering/life/evidenceCurves.ts'
import { estimatedLifeBand, type LifeFactors, workedEstimatedLife } from '../../engineering/life/factorMethod.ts'
import { shareSoundBand } from '../../engineering/life/weibull.ts'
import { workedZeroFailureBound } from '../../engineering/life/zeroFailures.ts'
import { climateRecords } from '../../engineering/tables/climateRecords.ts'
import { lifeEvidence } from '../../engineering/tables/lifeEvidence.ts'
import { weakest } from '../../engineering/showing.ts'
import type { SourceId } from '../../engineering/sources.ts'
import type { PierSpec } from '../../model/spec.ts'
import type { Band, LifeResult } from '../../model/timeResult.ts'
import type { Worked } from '../../model/worked.ts'
import { toSI } from '../../units/factors.ts'
import { seconds, type Seconds } from '../../units/quantity.ts'
import { claimsOnLife } from './claims.ts'
import { evidenceFor, ruleOfThumb } from './evidenceRows.ts'
import { inspectionOf } from './inspection.ts'

/** How sure a bound from a sample without failures is to hold, a project choice. Source: assumption. */
const confidence = 0.95
const years = Array.from({ length: 61 }, (_, year) => year)

/** How steeply shares fall, as far as two rows that have two points each tell. Source: weibull-two-points. */
const shape = ((): Band => {
  const shapes = lifeEvidence.flatMap((row) => {
    const curve = evidenceCurve(row, confidence)
    return curve?.kind === 'curve' ? [curve.weibull.shape] : []
  })
  return { low: Math.min(...shapes), high: Math.max(...shapes) }
})()

/**
 * What may be said of the life of the wood, always as a range. Pure, and apart from `derivePier`.
 * @param spec a valid spec
 */
export function deriveLife(spec: PierSpec): LifeResult {
  const found = evidenceFor(spec)
  const { quality: A, design: B, work: C, outdoors: E, use: F, upkeep: G } = spec.life.factors
  const factors: LifeFactors = { A, B, C, D: 1, E, F, G }
  const estimated = found.range && estimatedLifeBand({ reference: found.range, low: factors, high: factors })
  const climate = climateOf(spec)
  const rows = found.rows.map((row) => row.id)
  const beside = found.beside.map((row) => row.id)
  const use = (id: string) => ({ id, standings: found.rows.map((row) => row.standing), sources: found.rows.map((row) => row.source) })
  const worked: Worked[] = [
    ...(found.range
      ? [
          workedEstimatedLife({ reference: found.range.low, ...factors }, use('estimated-life-least')),
          workedEstimatedLife({ reference: found.range.high, ...factors }, use('estimated-life-most')),
        ]
      : []),
    ...[...found.rows, ...found.beside].flatMap(({ id, sample, source, standing }) => {
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
    rows,
    beside,
    lacks: found.lacks,
    reference: found.range,
    estimated,
    factors,
    sound: estimated && years.map((year) => ({ year, share: shareSoundBand({ time: inSeconds(year), median: estimated, shape }) })),
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
      [...found.rows, ...found.beside, ruleOfThumb].map((row) => row.source),
    ),
    standing: weakest('definition', ...worked.map((one) => one.standing)),
  }
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
