import type { PierSpec } from '../../../core/model/spec.ts'
import type { Assumption } from '../../../core/uncertainty/assumptions.ts'
import { valueAtShare } from '../../../core/uncertainty/distributions.ts'
import { type Input, type InputId, inputs } from '../../../core/uncertainty/inputs.ts'
import { inThousand } from '../../../core/uncertainty/summary.ts'
import { fromSI, inputUnit, toSI } from '../../../core/units/factors.ts'
import type { QuantityKind, UnitSystem } from '../../../core/units/quantity.ts'
import type { Units } from '../../../core/units/reader.ts'
import { answerWords } from '../../../facts/answerWords.ts'
import { locale, wordsOf } from '../../../words/index.ts'

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

/** A straight scale from a stretch of values to a stretch of the drawing. */
export type Scale = Readonly<{ from: number; to: number; at: (value: number) => number }>

export const straightScale = (from: number, to: number, left: number, right: number): Scale => ({
  from,
  to,
  at: (value) => left + ((value - from) / (to - from)) * (right - left),
})

/** Round values between two ends, in the reader's unit: at most `most` of them, one, two or five apart. SI. */
export function roundValues(from: number, to: number, quantity: QuantityKind, system: UnitSystem, most: number): readonly number[] {
  const unit = inputUnit[system][quantity]
  const [low, high] = [fromSI(from, unit), fromSI(to, unit)]
  const rough = (high - low) / most
  if (!(rough > 0)) return []
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = power * ([1, 2, 5, 10].find((one) => one * power >= rough) ?? 10)
  const values: number[] = []
  for (let k = Math.ceil(low / step); k * step <= high; k++) values.push(toSI(k * step, unit))
  return values
}

/** A count out of all tries, in words that never turn few into none. */
export const countWords = (count: number, samples: number): string =>
  wordsOf('sure').inThousand(inThousand(count, samples), wholeNumber(samples))

export const wholeNumber = (value: number): string => value.toLocaleString(locale())

export const inputWords = (id: InputId) => wordsOf('sure').inputs[id]

/** Why a try has no number: the link by its name, or that there could be no such pier. */
export const withoutWords = (id: string): string => {
  const sure = wordsOf('sure')
  return id === 'not-possible' ? sure.notPossible : sure.withoutLink(answerWords(id).label)
}

/** An amount that is not parted from its unit at the end of a line. */
export const unbroken = (amount: string): string => amount.replaceAll(' ', '\u00a0')
