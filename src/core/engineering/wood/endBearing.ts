import { type Newtons, type Pascals, type SquareMetres, newtons } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Share of the wood's own value that the end of a post may press with where no plate lies under it. Source: nds-2018-3-10. */
export const endBearingShare = cited(0.75, '1', 'nds-2018-3-10', 'from memory')

type Inputs = Readonly<{ compression: Pascals; wet: number; duration: number; area: SquareMetres }>

/**
 * Load that a post may hand on through its sawn end.
 * @param compression reference value along the grain Fc [Pa]
 * @param wet factor of wet service [1], at most 1
 * @param duration load duration factor CD [1]
 * @param area of the end [m2]
 * @returns allowable load [N]
 * Formula: N = 0.75 Fc CD CM A
 * Valid: an end cut square, on concrete or wood, no plate under it. Outside: with a plate the whole value, which is not counted here.
 * Source: nds-2018-3-10
 * Checked by: tests/external/nds-2018-3-10/check.test.ts
 */
export function endBearing({ compression, wet, duration, area }: Inputs): Newtons {
  return newtons(endBearingShare.value * compression * wet * duration * area)
}

/** Bearing of a post's end, with its work shown. */
export const workedEndBearing = showing({
  id: 'end-bearing',
  quantity: 'force',
  formula: 'N_a = 0.75\\,F_c C_D C_M A',
  terms: { compression: ['F_c', 'strength'], duration: ['C_D', 'ratio'], wet: ['C_M', 'ratio'], area: ['A', 'area'] },
  sources: ['nds-2018-3-10'],
  of: endBearing,
})
