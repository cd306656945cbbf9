import { type Newtons, type Pascals, type SquareMetres, newtons, pascals } from '../../units/quantity.ts'
import { cited, fromPrinted, toPrinted } from '../cited.ts'
import { showing } from '../showing.ts'

/** Strength reduction of plain concrete, whatever acts on it. Source: aci-318-19-14. */
export const plainReduction = cited(0.6, '1', 'aci-318-19-14', 'secondary')

/** What is held of the square root of strength, psi: tension where a section bends, shear across a plane, shear round a loaded area. */
const shares = { bending: 5, shear: 4 / 3, punching: 2.66 } as const

type StressInputs = Readonly<{ strength: Pascals; of: keyof typeof shares }>

/**
 * Nominal stress that plain concrete may be counted on for, over its gross section.
 * @param strength specified concrete strength f'c [Pa], 17.2e6 (2,500 psi) or more
 * @param of what it does [1]: 'bending' at its tension face, 'shear' across a plane, or 'punching' round a loaded area that is at most twice as long as wide
 * @returns nominal stress [Pa], before the strength reduction
 * Formula: 5 sqrt(f'c) in bending, 4/3 sqrt(f'c) in shear, 2.66 sqrt(f'c) in punching; psi
 * Valid: normal-weight concrete, f'c 2,500 psi or more. Outside: the caller counts nothing; in direct tension there is no value at all.
 * Source: aci-318-19-14
 * Checked by: tests/external/aci-318-19-14/check.test.ts
 */
export function plainStress({ strength, of }: StressInputs): Pascals {
  return pascals(fromPrinted(shares[of] * Math.sqrt(toPrinted(strength, 'psi')), 'psi'))
}

type BearingInputs = Readonly<{ strength: Pascals; area: SquareMetres; reduction: number; loadFactor: number }>

/**
 * Load that concrete may be pressed with over an area, brought to the level of loads without factors.
 * @param strength specified concrete strength f'c [Pa], 17.2e6 (2,500 psi) or more
 * @param area that is loaded [m2]
 * @param reduction phi [1], 0.60
 * @param loadFactor that loads are raised by [1], positive
 * @returns allowable load [N]
 * Formula: phi 0.85 f'c A / load factor
 * Valid: no credit for concrete beside the loaded area. Outside: the caller counts nothing.
 * Source: aci-318-19-14
 * Checked by: tests/external/aci-318-19-14/check.test.ts
 */
export function plainBearing({ strength, area, reduction, loadFactor }: BearingInputs): Newtons {
  return newtons((reduction * 0.85 * strength * area) / loadFactor)
}

/** Concrete under a loaded area, with its work shown. */
export const workedPlainBearing = showing({
  id: 'plain-bearing',
  quantity: 'force',
  formula: String.raw`N_a = \frac{\phi\,0.85 f'_c A}{f_u}`,
  terms: {
    reduction: [String.raw`\phi`, 'ratio'],
    strength: ["f'_c", 'strength'],
    area: ['A', 'area'],
    loadFactor: ['f_u', 'ratio'],
  },
  sources: ['aci-318-19-14'],
  of: plainBearing,
})
