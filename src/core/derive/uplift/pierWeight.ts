import { newtons } from '../../units/quantity.ts'
import type { QuantityLine } from '../../model/result.ts'
import type { Worked } from '../../model/worked.ts'
import { weakest } from '../../engineering/showing.ts'
import { workedFactoredDeadLoad, deadLoadShare } from '../../engineering/soil/factoredDeadLoad.ts'
import { fillKind } from '../../kinds/index.ts'
import type { PierFrame } from '../pierFrame.ts'

/** Zones whose weight hangs on the post or bracket: its concrete, the post, and the steel. Soil and a separate base do not. */
export function hangingLines(frame: PierFrame, lines: readonly QuantityLine[]): readonly QuantityLine[] {
  const concrete = new Set(frame.lifts.filter((lift) => lift.role === 'concrete').map((lift) => lift.id))
  const isCounted = fillKind(frame.spec.fill.kind).counting.weight.counted !== 'not counted'
  return lines.filter((line) => (isCounted && concrete.has(line.id)) || ['wood', 'bar', 'steel'].includes(line.role))
}

/** Effective weight of the pier, buoyant below the water table, and 0.6 of it. */
export function workedPierWeight(frame: PierFrame, lines: readonly QuantityLine[]): Readonly<{ weight: Worked; factored: Worked }> {
  const hanging = hangingLines(frame, lines)
  const value = hanging.reduce((sum, line) => sum + line.buoyantWeight, 0)
  const standing = weakest(...hanging.map((line) => line.standing))
  const weight: Worked = {
    id: 'pier-weight',
    value,
    quantity: 'weight',
    formula: String.raw`D = \sum W'_i`,
    inputs: hanging.map((line, i) => ({ symbol: `W'_{${i + 1}}`, name: line.id, value: line.buoyantWeight, quantity: 'weight' })),
    sources: [...new Set(hanging.flatMap((line) => line.sources))],
    standing,
  }
  const factored = workedFactoredDeadLoad({ weight: newtons(value), share: deadLoadShare.value }, { standings: [standing] })
  return { weight, factored }
}
