import { type Metres, type Newtons, type Pascals, type SquareMetres, newtons, squareMetres } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type AreaInputs = Readonly<{ area: SquareMetres; hole: Metres; length: Metres; count: number }>

/**
 * Net section of a post at holes in one plane.
 * @param area gross [m2], positive
 * @param hole diameter as drilled [m], non-negative
 * @param length of each hole through the post [m]
 * @param count holes in the plane [1]
 * @returns net area [m2]
 * Formula: Anet = A - n dh b
 * Valid: straight holes through. Outside: negative when the holes take all.
 * Source: nds-2018-3-1-2
 * Checked by: tests/external/load-path-example/check.test.ts
 */
export function netArea({ area, hole, length, count }: AreaInputs): SquareMetres {
  return squareMetres(area - count * hole * length)
}

type Inputs = Readonly<{ tension: Pascals; duration: number; wet: number; area: SquareMetres }>

/**
 * Allowable tension on a net section.
 * @param tension reference tension value Ft [Pa]
 * @param duration CD [1]
 * @param wet CM [1]
 * @param area net section [m2]
 * @returns allowable tension [N]
 * Formula: T' = Ft CD CM Anet
 * Valid: tension along the grain. Outside: size, heat and incising factors go into Ft.
 * Source: nds-2018-3-1-2, nds-2018-app-e
 * Checked by: tests/external/load-path-example/check.test.ts
 */
export function netTension({ tension, duration, wet, area }: Inputs): Newtons {
  return newtons(tension * duration * wet * area)
}

/** Allowable tension on the net section, with its work shown. */
export const workedNetTension = showing({
  id: 'net-tension',
  quantity: 'force',
  formula: "T' = F_t C_D C_M A_{net}",
  terms: { tension: ['F_t', 'strength'], duration: ['C_D', 'ratio'], wet: ['C_M', 'ratio'], area: ['A_{net}', 'area'] },
  sources: ['nds-2018-3-1-2'],
  of: netTension,
})

/** Net area, with its work shown. */
export const workedNetArea = showing({
  id: 'net-area',
  quantity: 'area',
  formula: String.raw`A_{net} = A - n\,d_h b`,
  terms: { area: ['A', 'area'], count: ['n', 'count'], hole: ['d_h', 'length'], length: ['b', 'length'] },
  sources: ['nds-2018-3-1-2'],
  of: netArea,
})
