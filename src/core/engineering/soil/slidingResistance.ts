import { type Newtons, type Pascals, type SquareMetres, newtons } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ deadLoad: Newtons; friction: number | null; cohesion: Pascals | null; area: SquareMetres }>

/**
 * Presumptive resistance to sliding under a base.
 * @param deadLoad on the base [N], non-negative
 * @param friction coefficient of the class [1], or null
 * @param cohesion of the class [Pa], or null
 * @param area of contact [m2]
 * @returns resistance [N]; null when the class gives neither
 * Formula: R = mu D, or for clay and silt R = c A, not more than half the dead load
 * Valid: base on undisturbed soil. Outside: no value without either figure.
 * Source: ibc-1806-2, ibc-1806-3
 * Checked by: tests/external/ibc-1806-2/check.test.ts
 */
export function slidingResistance({ deadLoad, friction, cohesion, area }: Inputs): Newtons | null {
  if (friction !== null) return newtons(friction * deadLoad)
  return cohesion === null ? null : newtons(Math.min(cohesion * area, deadLoad / 2))
}

/** Resistance to sliding, with its work shown. */
export const workedSlidingResistance = showing({
  id: 'sliding-resistance',
  quantity: 'force',
  formula: ({ friction }: Inputs) => (friction === null ? String.raw`R = \min(c A,\ D/2)` : String.raw`R = \mu D`),
  terms: { deadLoad: ['D', 'force'], friction: [String.raw`\mu`, 'ratio'], cohesion: ['c', 'pressure'], area: ['A', 'area'] },
  sources: ['ibc-1806-2', 'ibc-1806-3'],
  of: slidingResistance,
})
