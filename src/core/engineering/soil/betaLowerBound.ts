import type { Radians } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ frictionAngle: Radians }>

/**
 * Lower-bound ratio of side friction to effective vertical stress: normally consolidated ground, no credit for overconsolidation.
 * @param frictionAngle drained friction angle of the soil [rad], 0 to 0.79
 * @returns beta [1]
 * Formula: beta = (1 - sin phi') tan phi'
 * Valid: cast-in-place concrete against undisturbed soil (delta = phi'). Outside: loose backfill and smooth forms are not covered.
 * Source: gec-10-2018, computed-here (the choice of a lower bound)
 * Checked by: tests/external/gec-10-2018/check.test.ts
 */
export function betaLowerBound({ frictionAngle }: Inputs): number {
  return (1 - Math.sin(frictionAngle)) * Math.tan(frictionAngle)
}

/** Lower-bound beta, with its work shown. */
export const workedBetaLowerBound = showing({
  id: 'beta-lower-bound',
  quantity: 'ratio',
  formula: String.raw`\beta = (1 - \sin\varphi')\tan\varphi'`,
  terms: { frictionAngle: [String.raw`\varphi'`, 'angle'] },
  sources: ['gec-10-2018', 'computed-here'],
  of: betaLowerBound,
})
