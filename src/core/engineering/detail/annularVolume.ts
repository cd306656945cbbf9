import { type CubicMetres, type Metres, type SquareMetres, cubicMetres } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ hole: CubicMetres; postArea: SquareMetres; embedded: Metres }>

/**
 * Material round a post in a hole.
 * @param hole volume to fill, post not taken out [m3]
 * @param postArea cross-section of the post [m2]
 * @param embedded length of post inside that volume [m]
 * @returns volume of material [m3]
 * Formula: V = V_hole - A_post L
 * Valid: post wholly inside. Outside: negative when the post is wider than the hole.
 * Source: definition
 * Checked by: tests/external/plane-cut-solids/check.test.ts
 */
export function annularVolume({ hole, postArea, embedded }: Inputs): CubicMetres {
  return cubicMetres(hole - postArea * embedded)
}

/** Material round a post, with its work shown. */
export const workedAnnularVolume = showing({
  id: 'annular-volume',
  quantity: 'volume',
  formula: 'V = V_h - A_p L',
  terms: { hole: ['V_h', 'volume'], postArea: ['A_p', 'area'], embedded: ['L', 'length'] },
  sources: ['definition'],
  of: annularVolume,
})
