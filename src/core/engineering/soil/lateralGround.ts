import { type Metres, metres } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ height: Metres; lost: Metres }>

/**
 * Height of a lateral force above the ground that counts, when the top of the ground does not.
 * @param height of the force above finished grade [m], non-negative
 * @param lost thickness not counted: r s on the downhill side, or topsoil, frost or loose soil [m], non-negative
 * @returns height above the ground that counts [m]
 * Formula: h' = h + lost; the embedment then counts from below `lost`
 * Valid: a careful approximation for slopes and poor topsoil, not code text. Outside: 1:3 and steeper needs a geotechnical engineer.
 * Source: computed-here
 * Checked by: tests/external/ibc-1807-3-2-1/check.test.ts
 */
export function heightAboveSoundGround({ height, lost }: Inputs): Metres {
  return metres(height + lost)
}

/** Height above sound ground, with its work shown. */
export const workedHeightAboveSoundGround = showing({
  id: 'height-above-sound-ground',
  quantity: 'length',
  formula: "h' = h + t_0",
  terms: { height: ['h', 'length'], lost: ['t_0', 'length'] },
  sources: ['computed-here'],
  of: heightAboveSoundGround,
})
