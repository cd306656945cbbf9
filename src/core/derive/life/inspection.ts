import { type DecayZone, inspectionIntervals } from '../../engineering/tables/decayZones.ts'
import { hasTop, placesMix } from '../../spec/placement.ts'
import type { PierSpec } from '../../model/spec.ts'
import type { LifeResult } from '../../model/timeResult.ts'

const zones: Readonly<Record<number, DecayZone>> = { 1: '1', 2: '2-3', 3: '2-3', 4: '4-5', 5: '4-5' }

/** What a person who walks up to the post can see of it, what stays out of sight, and when poles of that zone are first looked at. */
export function inspectionOf(spec: PierSpec): LifeResult['inspection'] {
  const { support, top, bars, life } = spec
  const zone = life.decayZone === null ? undefined : zones[life.decayZone]
  const times = zone && support.kind === 'embedded' ? inspectionIntervals[zone] : null
  const isCovered = top.heaped > 0
  const shown = hasTop(spec) && !isCovered ? ['top-of-concrete'] : []
  const seen =
    support.kind === 'bracket'
      ? { visible: ['post-foot', 'bracket', 'bolts', ...shown], hidden: ['steel-in-concrete'] }
      : {
          visible: ['post-above-ground', ...shown],
          hidden: [
            'wood-below-ground',
            ...(hasTop(spec) && placesMix(spec) ? ['joint'] : []),
            ...(isCovered ? ['top-under-heap'] : []),
            ...(bars ? ['bar'] : []),
          ],
        }
  return {
    ...seen,
    first: times && { low: times.first.low.value, high: times.first.high.value },
    every: times?.later.value ?? null,
  }
}
