import { type Pascals, pascals } from '../../units/quantity.ts'
import { fromPrinted } from '../cited.ts'
import { interpolate } from '../interpolate.ts'
import { strengthByWaterCement } from '../tables/concrete.ts'
import { showing } from '../showing.ts'

const columns = {
  plain: strengthByWaterCement.map((row) => [row.plain, row.psi] as const),
  airEntrained: strengthByWaterCement.flatMap((row) => (row.airEntrained === null ? [] : [[row.airEntrained, row.psi] as const])),
}
type Inputs = Readonly<{ ratio: number; airEntrained: boolean }>

/**
 * Average 28-day strength for a water-cement ratio, from the table.
 * @param ratio water over cement by mass [1]
 * @param airEntrained true for air-entrained concrete [1]
 * @returns average strength [Pa]; null outside the table
 * Formula: straight line between the rows of the table
 * Valid: 0.41 to 0.82 without air, 0.40 to 0.74 with. Outside: no value.
 * Source: aci-211-1
 * Checked by: tests/external/aci-211-1/check.test.ts
 */
export function strengthForWaterCement({ ratio, airEntrained }: Inputs): Pascals | null {
  const psi = interpolate(airEntrained ? columns.airEntrained : columns.plain, ratio)
  return psi === null ? null : pascals(fromPrinted(psi, 'psi'))
}

/**
 * Average 28-day strength for a water-cement ratio, smooth fit to the table.
 * @param ratio water over cement by mass [1], positive
 * @param airEntrained true for air-entrained concrete [1]
 * @returns average strength [Pa]
 * Formula: f = A/B^(w/c): 18000/14.58^(w/c), with air 14694/14.81^(w/c), psi
 * Valid: inside the table, within 3 %. Outside: an extrapolation.
 * Source: aci-211-1, computed-here
 * Checked by: tests/external/aci-211-1/check.test.ts
 */
export function strengthFit({ ratio, airEntrained }: Inputs): Pascals {
  return pascals(fromPrinted(airEntrained ? 14_694 / 14.81 ** ratio : 18_000 / 14.58 ** ratio, 'psi'))
}

/** Average strength from the table, with its work shown. */
export const workedStrengthForWaterCement = showing({
  id: 'strength-for-water-cement',
  quantity: 'strength',
  formula: 'f(w/c)',
  terms: { ratio: ['w/c', 'ratio'] },
  sources: ['aci-211-1'],
  of: strengthForWaterCement,
})

/** Average strength from the fit, with its work shown. */
export const workedStrengthFit = showing({
  id: 'strength-fit',
  quantity: 'strength',
  formula: ({ airEntrained }: Inputs) =>
    airEntrained ? String.raw`f = 14694/14.81^{w/c}\ (\mathrm{psi})` : String.raw`f = 18000/14.58^{w/c}\ (\mathrm{psi})`,
  terms: { ratio: ['w/c', 'ratio'] },
  sources: ['aci-211-1', 'computed-here'],
  of: strengthFit,
})
