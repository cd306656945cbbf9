import { type Newtons, type Pascals, type SquareMetres, newtons } from '../../units/quantity.ts'
import { cited, fromPrinted, toPrinted } from '../cited.ts'
import { showing } from '../showing.ts'

/** Strength reduction of plain concrete. Source: aci-318-19-14. */
export const plainReduction = cited(0.6, '1', 'aci-318-19-14', 'from memory')

type Inputs = Readonly<{ strength: Pascals; area: SquareMetres; reduction: number }>

/**
 * Screening value for tension carried by a plain concrete section. The code gives no direct-tension strength to rely on.
 * @param strength specified concrete strength f'c [Pa], positive
 * @param area of concrete in the plane [m2]
 * @param reduction phi [1], 0.60
 * @returns screening value, strength level [N]
 * Formula: 5 phi sqrt(f'c) A, psi and in; the limit on flexural tension, borrowed
 * Valid: screening alone. Outside: a pier that must carry a pull needs vertical bars across the plane.
 * Source: aci-318-19-14
 * Checked by: tests/external/aci-318-19-14/check.test.ts
 */
export function plainTension({ strength, area, reduction }: Inputs): Newtons {
  return newtons(fromPrinted(5 * reduction * Math.sqrt(toPrinted(strength, 'psi')), 'psi') * area)
}

/** Plain concrete screening value, with its work shown. */
export const workedPlainTension = showing({
  id: 'plain-tension',
  quantity: 'force',
  formula: String.raw`T = 5\phi\sqrt{f'_c}\,A\ (\mathrm{psi,\ in})`,
  terms: { reduction: [String.raw`\phi`, 'ratio'], strength: ["f'_c", 'strength'], area: ['A', 'area'] },
  sources: ['aci-318-19-14'],
  of: plainTension,
})
