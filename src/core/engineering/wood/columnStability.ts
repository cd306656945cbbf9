import { type Metres, type Newtons, type Pascals, type SquareMetres, newtons, pascals } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Built-up column factor in the weak direction. Source: nds-2018-15-3. */
export const builtUpFactor = {
  solid: cited(1, '1', 'nds-2018-15-3', 'from memory'),
  nailed: cited(0.6, '1', 'nds-2018-15-3', 'from memory'),
  bolted: cited(0.75, '1', 'nds-2018-15-3', 'from memory'),
} as const

type Inputs = Readonly<{ elasticityMin: Pascals; compression: Pascals; effectiveLength: Metres; depth: Metres; builtUp: number }>
export type ColumnStability = Readonly<{ slenderness: number; critical: Pascals; cp: number; allowable: Pascals }>

/**
 * Column stability factor of a sawn or built-up post.
 * @param elasticityMin adjusted Emin' [Pa], positive
 * @param compression Fc* with all factors but CP [Pa], positive
 * @param effectiveLength le [m], positive
 * @param depth of the section in the plane of buckling d [m], positive
 * @param builtUp Kf [1]: 1 solid or strong axis, 0.6 nailed, 0.75 bolted
 * @returns slenderness le/d [1], FcE [Pa], CP [1] and Fc' [Pa]; null past a slenderness of 50
 * Formula: FcE = 0.822 Emin'/(le/d)^2, a = FcE/Fc*, CP = Kf {(1 + a)/1.6 - sqrt([(1 + a)/1.6]^2 - a/0.8)}
 * Valid: le/d <= 50, sawn wood (c = 0.8). Outside: no value.
 * Source: nds-2018-3-7
 * Checked by: tests/external/hud-rsdg-2017/check.test.ts
 */
export function columnStability({ elasticityMin, compression, effectiveLength, depth, builtUp }: Inputs): ColumnStability | null {
  const slenderness = effectiveLength / depth
  if (slenderness > 50) return null
  const critical = (0.822 * elasticityMin) / slenderness ** 2
  const a = critical / compression
  const half = (1 + a) / 1.6
  const cp = builtUp * (half - Math.sqrt(half * half - a / 0.8))
  return { slenderness, critical: pascals(critical), cp, allowable: pascals(cp * compression) }
}

/** Column stability factor, with its work shown. */
export const workedColumnStability = showing({
  id: 'column-stability',
  quantity: 'ratio',
  formula: String.raw`C_P = K_f\left\{\tfrac{1+\alpha}{2c} - \sqrt{\left(\tfrac{1+\alpha}{2c}\right)^2 - \tfrac{\alpha}{c}}\right\},\quad \alpha = \frac{0.822\,E'_{min}}{(l_e/d)^2 F_c^*}`,
  terms: {
    elasticityMin: ["E'_{min}", 'strength'],
    compression: ['F_c^*', 'strength'],
    effectiveLength: ['l_e', 'length'],
    depth: ['d', 'length'],
    builtUp: ['K_f', 'ratio'],
  },
  sources: ['nds-2018-3-7'],
  of: (inputs: Inputs): number | null => columnStability(inputs)?.cp ?? null,
})

type LoadInputs = Readonly<{ allowable: Pascals; area: SquareMetres }>
/** Allowable load on the post as a column, with its work shown. */
export const workedColumnLoad = showing({
  id: 'column-load',
  quantity: 'force',
  formula: "P = F_c'\\,A",
  terms: { allowable: ["F_c'", 'strength'], area: ['A', 'area'] },
  sources: ['nds-2018-3-7'],
  of: ({ allowable, area }: LoadInputs): Newtons => newtons(allowable * area),
})
