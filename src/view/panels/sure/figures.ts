import type { Assumption } from '../../../core/uncertainty/assumptions.ts'
import { valueAtShare } from '../../../core/uncertainty/distributions.ts'
import { type Input, inputs } from '../../../core/uncertainty/inputs.ts'
import type { InputId } from '../../../core/uncertainty/inputs.ts'
import type { PierSpec } from '../../../core/model/spec.ts'
import type { QuantityKind } from '../../../core/units/quantity.ts'
import type { Units } from '../../../core/units/reader.ts'

export const inputOf = (id: InputId): Input | undefined => inputs.find((input) => input.id === id)

const drawnValue = (input: Input, spec: PierSpec, draw: number): number => {
  const entered = input.figure(spec) ?? 0
  return input.as === 'times' ? entered * draw : entered + draw
}

/** A drawn count need not be whole. */
const shownAs = ({ quantity }: Input): QuantityKind => (quantity === 'count' ? 'ratio' : quantity)

/** A figure of the pier as it comes out under one draw, in the reader's units. */
export const drawnFigure = (input: Input, spec: PierSpec, draw: number, { figure }: Units): string =>
  figure(drawnValue(input, spec, draw), shownAs(input))

/** Two of them as a range: the unit once. */
export const drawnRange = (input: Input, spec: PierSpec, draws: readonly [number, number], units: Units): readonly [string, string] => {
  const isPlain = shownAs(input) === 'ratio'
  const low = isPlain ? drawnFigure(input, spec, draws[0], units) : units.bare(drawnValue(input, spec, draws[0]), shownAs(input))
  return [low, drawnFigure(input, spec, draws[1], units)]
}

/** Where 900 in 1,000 draws of a range lie, as draws. */
export const usualDraws = ({ spread }: Assumption): readonly [number, number] => {
  const valueAt = valueAtShare(spread)
  return [valueAt(0.05), valueAt(0.95)]
}
