import { buoyantWeight } from '../../engineering/soil/buoyantWeight.ts'
import { waterUnitWeight } from '../../engineering/tables/materials.ts'
import type { Corner } from '../../geometry/corner.ts'
import { sweptVolume } from '../../geometry/measure.ts'
import { placedVolume } from '../../geometry/placed.ts'
import { level } from '../../geometry/surface.ts'
import { placedVolumeBelow, volumeBelow } from '../../geometry/volumeBelow.ts'
import type { Role } from '../../model/solid.ts'
import { cubicMetres, type UnitWeight } from '../../units/quantity.ts'
import type { QuantityLine } from '../../model/result.ts'
import type { Worked } from '../../model/worked.ts'
import { weakest } from '../../engineering/showing.ts'
import { carriesAsConcrete, countingOf } from '../counting.ts'
import type { PierFrame } from '../pierFrame.ts'
import { liftBodies, postCorners } from '../pierZones.ts'
import { placedParts } from '../placedZones.ts'
import type { Properties } from '../properties.ts'

/** Zones whose weight hangs on the post or bracket: its concrete, the post, and the steel. Soil and a separate base do not. */
export function hangingLines(frame: PierFrame, lines: readonly QuantityLine[]): readonly QuantityLine[] {
  const concrete = new Set(frame.lifts.filter((lift) => carriesAsConcrete(lift.role, frame.spec)).map((lift) => lift.id))
  const isCounted = countingOf(frame.spec).weight.counted !== 'not counted'
  return lines.filter((line) => (isCounted && concrete.has(line.id)) || ['wood', 'bar', 'steel'].includes(line.role))
}

/** The same weight as a bare number [N], from volumes alone: no zone is measured that does not hang on the post. */
export function hangingWeight(frame: PierFrame, properties: Properties): number {
  const { waterTable } = frame.spec.site
  const isCounted = countingOf(frame.spec).weight.counted !== 'not counted'
  const parts = placedParts(frame)
  const weigh = (role: Role, volume: number, wet: number): number => {
    const { moist, saturated } = properties.weighing(role)
    return buoyantWeight({
      dry: moist as UnitWeight,
      saturated: saturated as UnitWeight,
      water: waterUnitWeight.value,
      above: cubicMetres(volume - wet),
      below: cubicMetres(wet),
    })
  }
  const lessParts = (id: string, gross: number): number =>
    parts.reduce((left, { displaces }) => left - Math.max(0, displaces[id] ?? 0), gross)
  const body = (id: string, role: Role, corners: readonly Corner[]): number => {
    const gross = sweptVolume(corners).value
    const net = lessParts(id, gross)
    const wet = waterTable === null || net <= 0 ? 0 : (net / gross) * volumeBelow(corners, level(-waterTable))
    return weigh(role, net, wet)
  }
  let sum = frame.leaning ? 0 : body('post', 'wood', postCorners(frame))
  if (isCounted)
    for (const { lift, corners } of liftBodies(frame))
      if (carriesAsConcrete(lift.role, frame.spec)) sum += body(lift.id, lift.role, corners)
  for (const { id, role, solids } of parts) {
    const gross = placedVolume(solids).value
    // Of all parts only a leaning post has others in it.
    const net = role === 'wood' ? lessParts(id, gross) : gross
    sum += weigh(role, net, waterTable === null ? 0 : (net / gross) * placedVolumeBelow(solids, -waterTable))
  }
  return sum
}

/** Effective weight of the pier, buoyant below the water table. */
export function pierWeight(frame: PierFrame, lines: readonly QuantityLine[]): Worked {
  const hanging = hangingLines(frame, lines)
  return {
    id: 'pier-weight',
    value: hanging.reduce((sum, line) => sum + line.buoyantWeight, 0),
    quantity: 'weight',
    formula: String.raw`D = \sum W'_i`,
    inputs: hanging.map((line, i) => ({ symbol: `W'_{${i + 1}}`, name: line.id, value: line.buoyantWeight, quantity: 'weight' })),
    sources: [...new Set(hanging.flatMap((line) => line.sources))],
    standing: weakest(...hanging.map((line) => line.standing)),
  }
}
