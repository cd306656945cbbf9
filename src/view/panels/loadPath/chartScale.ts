import { fromSI, inputUnit, toSI } from '../../../core/units/factors.ts'
import type { UnitSystem } from '../../../core/units/quantity.ts'

/** One scale for every bar. `end` and `ticks` are forces [N]; ticks are round in the reader's units and begin at nothing. */
export type ChartScale = Readonly<{ end: number; ticks: readonly number[] }>

/** How far the scale reaches past the least bar, at most: what is stronger is drawn broken, with its number. */
const reach = 4.5
const steps = [1, 2, 2.5, 5, 10]

/**
 * A scale on which the least bar can be read, the next one too where it is not far off, and the load with room to spare.
 * @param holds what the needed links hold [N], any order; links without a value left out
 * @param load uplift asked for [N], or null
 */
export function chartScale(holds: readonly number[], load: number | null, system: UnitSystem): ChartScale {
  const [least = 0, second = 0] = [...holds].filter((value) => value > 0).sort((a, b) => a - b)
  const wanted = Math.max(least * 2, Math.min(second * 1.15, least * reach), (load ?? 0) * 1.25)
  const unit = inputUnit[system].force
  const amount = wanted > 0 ? fromSI(wanted, unit) : 1
  const rough = amount / 3
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = power * (steps.find((one) => one * power >= rough) ?? 10)
  const count = Math.ceil(amount / step - 1e-9)
  return { end: toSI(count * step, unit), ticks: Array.from({ length: count + 1 }, (_, i) => toSI(i * step, unit)) }
}

/** Where a force stands on the scale, as a share of its length: 1 at its end and past it. */
export const shareOf = (scale: ChartScale, force: number): number => Math.min(1, Math.max(0, force / scale.end))
export const isBroken = (scale: ChartScale, force: number): boolean => force > scale.end
