import { type Metres, metres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ width: Metres; depth: Metres; round: boolean }>

/**
 * Width of a post that bears sideways in the embedment equations: diameter, or diagonal of a square or rectangle.
 * @param width one side, or the diameter [m], positive
 * @param depth other side [m], positive; ignored when round
 * @param round true for a round post [1]
 * @returns bearing width b [m]
 * Formula: b = sqrt(w^2 + d^2), round: b = D
 * Valid: post in sand or flowable fill; with concrete in the hole b is the hole's diameter. Outside: loose native backfill has no option.
 * Source: ibc-1807-3-2-1
 * Checked by: tests/external/ibc-1807-3-3/check.test.ts
 */
export function bearingWidth({ width, depth, round }: Inputs): Metres {
  return metres(round ? width : Math.hypot(width, depth))
}

/** How much wider than the post the hole is to be for concrete backfill. Source: ibc-1807-3-3. */
export const concreteBackfillClearance = cited<Metres>(4, 'in', 'ibc-1807-3-3', 'secondary')

/**
 * Least hole for the concrete backfill option.
 * @param width one side of the post, or its diameter [m]
 * @param depth other side [m]; ignored when round
 * @param round true for a round post [1]
 * @returns least diameter at the hole's bottom [m]
 * Formula: D = diagonal (or diameter) + 4 in
 * Valid: concrete of 2,000 psi or more. Outside: sand in 8 in lifts and flowable fill have no such rule.
 * Source: ibc-1807-3-3
 * Checked by: tests/external/ibc-1807-3-3/check.test.ts
 */
export function leastHoleForConcrete({ width, depth, round }: Inputs): Metres {
  return metres(bearingWidth({ width, depth, round }) + concreteBackfillClearance.value)
}

/** Bearing width of a post, with its work shown. */
export const workedBearingWidth = showing({
  id: 'bearing-width',
  quantity: 'length',
  formula: ({ round }: Inputs) => (round ? 'b = w' : String.raw`b = \sqrt{w^2 + d^2}`),
  terms: { width: ['w', 'length'], depth: ['d', 'length'] },
  sources: ['ibc-1807-3-2-1'],
  of: bearingWidth,
})

/** Least hole for concrete backfill, with its work shown. */
export const workedLeastHoleForConcrete = showing({
  id: 'least-hole-for-concrete',
  quantity: 'length',
  formula: ({ round }: Inputs) => (round ? 'D = w + c' : String.raw`D = \sqrt{w^2 + d^2} + c`),
  terms: { width: ['w', 'length'], depth: ['d', 'length'] },
  along: () => [{ symbol: 'c', name: 'clearance', value: concreteBackfillClearance.value, quantity: 'length' }],
  sources: ['ibc-1807-3-3'],
  of: leastHoleForConcrete,
})
