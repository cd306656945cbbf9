import type { Metres, Pascals, SquareMetres } from '../../units/quantity.ts'
import { toPrinted } from '../cited.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{
  diameter: Metres
  spacing: Metres
  count: number
  main: Readonly<{ elasticity: Pascals; area: SquareMetres }>
  side: Readonly<{ elasticity: Pascals; area: SquareMetres }>
  joint: 'wood-wood' | 'wood-metal'
}>
export type GroupAction = Readonly<{ u: number; m: number; rea: number; cg: number }>

/**
 * Group action factor for dowels in a row along the load.
 * @param diameter of each dowel [m], up to 0.0254
 * @param spacing centre to centre in the row [m], positive
 * @param count dowels in the row [1], 1 or more
 * @param main gross area [m2] and modulus of elasticity [Pa] of the main member
 * @param side gross area, all side members together [m2], and modulus of elasticity [Pa]
 * @param joint 'wood-wood' or 'wood-metal'; wood to concrete has no figure and takes the metal one, which is lower [1]
 * @returns u [1], m [1], REA [1] and Cg [1]
 * Formula: u = 1 + gamma (s/2)[1/(Em Am) + 1/(Es As)], m = u - sqrt(u^2 - 1), gamma = 180000 or 270000 D^1.5 (lb/in, in);
 *   Cg = {m(1 - m^2n)/(n[(1 + REA m^n)(1 + m) - 1 + m^2n])} (1 + REA)/(1 - m)
 * Valid: D of 1/4 to 1 in. Outside: 1 for one dowel and for thinner ones.
 * Source: nds-2018-11-3-6
 * Checked by: tests/external/nds-2018-tables-11-3-6/check.test.ts
 */
export function groupAction({ diameter, spacing, count: n, main, side, joint }: Inputs): GroupAction {
  const d = toPrinted(diameter, 'in')
  const gamma = (joint === 'wood-wood' ? 180_000 : 270_000) * d ** 1.5
  const em = toPrinted(main.elasticity, 'psi') * toPrinted(main.area, 'in2')
  const es = toPrinted(side.elasticity, 'psi') * toPrinted(side.area, 'in2')
  const u = 1 + gamma * (toPrinted(spacing, 'in') / 2) * (1 / em + 1 / es)
  const m = u - Math.sqrt(u * u - 1)
  const rea = Math.min(es / em, em / es)
  if (n <= 1 || d < 0.25 * (1 - 1e-9)) return { u, m, rea, cg: 1 }
  const cg = ((m * (1 - m ** (2 * n))) / (n * ((1 + rea * m ** n) * (1 + m) - 1 + m ** (2 * n)))) * ((1 + rea) / (1 - m))
  return { u, m, rea, cg }
}

/** Group action factor, with its work shown. */
export const workedGroupAction = showing({
  id: 'group-action',
  quantity: 'ratio',
  formula: String.raw`C_g = \frac{m(1-m^{2n})}{n[(1+R_{EA}m^n)(1+m)-1+m^{2n}]}\cdot\frac{1+R_{EA}}{1-m}`,
  terms: { diameter: ['D', 'length'], spacing: ['s', 'length'], count: ['n', 'count'] },
  along: (inputs: Inputs) => {
    const { m, rea } = groupAction(inputs)
    return [
      { symbol: 'm', name: 'groupTerm', value: m, quantity: 'ratio' },
      { symbol: 'R_{EA}', name: 'stiffnessRatio', value: rea, quantity: 'ratio' },
    ]
  },
  sources: ['nds-2018-11-3-6'],
  of: (inputs: Inputs) => groupAction(inputs).cg,
})
