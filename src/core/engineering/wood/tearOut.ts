import { type Metres, type Newtons, type Pascals, type SquareMetres, newtons } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type RowInputs = Readonly<{ shear: Pascals; thickness: Metres; critical: Metres; count: number }>

/**
 * Row tear-out of dowels in a row along the grain.
 * @param shear adjusted shear value Fv' = Fv CD CM Ct [Pa]
 * @param thickness of the wood along the dowel [m]
 * @param critical lesser of dowel spacing and end distance [m]
 * @param count dowels in the row [1]
 * @returns allowable row tear-out [N]
 * Formula: Z'RT = n Fv' t s_crit (two shear planes, each at half of the peak stress)
 * Valid: load along the grain. Outside: add the rows; see the group form.
 * Source: nds-2018-app-e
 * Checked by: tests/external/load-path-example/check.test.ts
 */
export function rowTearOut({ shear, thickness, critical, count }: RowInputs): Newtons {
  return newtons(count * shear * thickness * critical)
}

type GroupInputs = Readonly<{ firstRow: Newtons; lastRow: Newtons; tension: Pascals; area: SquareMetres }>

/**
 * Group tear-out of several rows.
 * @param firstRow row tear-out of the first row [N]
 * @param lastRow row tear-out of the last row [N]
 * @param tension adjusted tension value Ft' [Pa]
 * @param area net section between the first and the last row [m2]
 * @returns allowable group tear-out [N]
 * Formula: Z'GT = Z'RT(1)/2 + Z'RT(n)/2 + Ft' Agroup
 * Valid: two rows or more. Outside: one row has row tear-out alone.
 * Source: nds-2018-app-e
 * Checked by: tests/external/nds-2018-app-e/check.test.ts
 */
export function groupTearOut({ firstRow, lastRow, tension, area }: GroupInputs): Newtons {
  return newtons(firstRow / 2 + lastRow / 2 + tension * area)
}

/** Row tear-out, with its work shown. */
export const workedRowTearOut = showing({
  id: 'row-tear-out',
  quantity: 'force',
  formula: String.raw`Z'_{RT} = n\,F_v'\,t\,s_{crit}`,
  terms: { count: ['n', 'count'], shear: ["F_v'", 'strength'], thickness: ['t', 'length'], critical: ['s_{crit}', 'length'] },
  sources: ['nds-2018-app-e'],
  of: rowTearOut,
})

/** Group tear-out, with its work shown. */
export const workedGroupTearOut = showing({
  id: 'group-tear-out',
  quantity: 'force',
  formula: String.raw`Z'_{GT} = \tfrac12 Z'_{RT,1} + \tfrac12 Z'_{RT,n} + F'_t A_{group}`,
  terms: { firstRow: ["Z'_{RT,1}", 'force'], lastRow: ["Z'_{RT,n}", 'force'], tension: ["F'_t", 'strength'], area: ['A_{group}', 'area'] },
  sources: ['nds-2018-app-e'],
  of: groupTearOut,
})
