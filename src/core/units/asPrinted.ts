import type { FormatOptions } from './format.ts'
import { parseQuantity } from './parse.ts'
import type { QuantityKind } from './quantity.ts'
import type { SayNumber } from './reader.ts'

/** A figure, what it is held against, and how far they are apart [SI]. */
type Three = Readonly<{ value: number; limit: number; quantity: QuantityKind }>

/** Lengths closer than this are told in sixteenths of an inch, all three of them [m]. Source: definition (one inch). */
const closeLength = 0.0254

/**
 * How a figure, its limit and their difference are printed so that they add up: in one fraction, and the difference is that of
 * the printed ones. A difference too small for it is told as it is.
 * @param say how the reader's numbers are written
 * @returns options to write the two with, and the difference [SI]
 */
export function togetherAsPrinted(
  { value, limit, quantity }: Three,
  say: SayNumber,
): Readonly<{ options: FormatOptions; difference: number }> {
  const apart = value - limit
  const options: FormatOptions = quantity === 'length' && Math.abs(apart) < closeLength ? { fraction: 16 } : {}
  const [one, other] = [value, limit].map((figure) =>
    parseQuantity(say(figure, quantity, options), quantity, quantity === 'count' ? '1' : undefined),
  )
  const printed = one?.ok && other?.ok ? one.value - other.value : 0
  const isNone = Math.abs(printed) <= 1e-12 * Math.max(Math.abs(value), Math.abs(limit))
  return { options, difference: isNone ? apart : printed }
}
