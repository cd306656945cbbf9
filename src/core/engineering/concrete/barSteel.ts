import { type Newtons, type Pascals, type SquareMetres, newtons } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Strength reduction of steel in tension, and the working stress of Grade 60 in older allowable stress design. Source: aci-318-19-22-4. */
export const barTensionFactors = {
  reduction: cited(0.9, '1', 'aci-318-19-22-4', 'from memory'),
  workingStress: cited<Pascals>(24, 'ksi', 'memory', 'from memory'),
} as const
/** Safety factor of steel shear yielding, and the share of yield in shear. Source: aisc-360. */
export const barShearFactors = {
  safety: cited(1.67, '1', 'aisc-360', 'from memory'),
  shear: cited(0.6, '1', 'aisc-360', 'from memory'),
} as const

type TensionInputs = Readonly<{ area: SquareMetres; stress: Pascals; count: number }>

/**
 * Tension that vertical bars carry across a plane, developed on both sides.
 * @param area of one bar [m2]
 * @param stress allowed in the bar [Pa]: phi fy at strength level, working stress at allowable level
 * @param count bars across the plane [1]
 * @returns tension [N]
 * Formula: T = n As f
 * Valid: full development on both sides. Outside: the code counts no share of it.
 * Source: aci-318-19-22-4
 * Checked by: tests/external/astm-a615/check.test.ts
 */
export function barTension({ area, stress, count }: TensionInputs): Newtons {
  return newtons(count * area * stress)
}

type ShearInputs = Readonly<{ area: SquareMetres; yield: Pascals; planes: number }>

/**
 * Allowable shear of a bar, yielding.
 * @param area of the bar [m2]
 * @param yield specified yield strength [Pa]
 * @param planes shear planes [1]: two for a bar through a post
 * @returns allowable shear [N]
 * Formula: Va = n 0.6 Fy A/1.67
 * Valid: a check beside the yield equations; CD does not apply. Outside: none.
 * Source: aisc-360
 * Checked by: tests/external/load-path-example/check.test.ts
 */
export function barShear({ area, yield: fy, planes }: ShearInputs): Newtons {
  return newtons((planes * barShearFactors.shear.value * fy * area) / barShearFactors.safety.value)
}

/** Tension of vertical bars, with its work shown. */
export const workedBarTension = showing({
  id: 'bar-tension',
  quantity: 'force',
  formula: 'T = n\\,A_s f',
  terms: { count: ['n', 'count'], area: ['A_s', 'area'], stress: ['f', 'strength'] },
  sources: ['aci-318-19-22-4'],
  of: barTension,
})

/** Allowable bar shear, with its work shown. */
export const workedBarShear = showing({
  id: 'bar-shear',
  quantity: 'force',
  formula: String.raw`V_a = n\,\frac{0.6 F_y A}{1.67}`,
  terms: { planes: ['n', 'count'], yield: ['F_y', 'strength'], area: ['A', 'area'] },
  sources: ['aisc-360'],
  of: barShear,
})
