import { type CubicMetres, cubicMetres } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ volume: CubicMetres; waste: number }>

/**
 * Ready-mixed concrete to order for a volume in place.
 * @param volume in place [m3], non-negative
 * @param waste extra share to order [1], non-negative
 * @returns volume to order [m3], not rounded
 * Formula: Vo = V (1 + w)
 * Valid: always. Outside: suppliers round up to their own step and ask a least load.
 * Source: common-practice
 * Checked by: tests/external/bag-yields/check.test.ts
 */
export function readyMixVolume({ volume, waste }: Inputs): CubicMetres {
  return cubicMetres(volume * (1 + waste))
}

/** Ready-mix to order, with its work shown. */
export const workedReadyMixVolume = showing({
  id: 'ready-mix-volume',
  quantity: 'volume',
  formula: 'V_o = V(1+w)',
  terms: { volume: ['V', 'volume'], waste: ['w', 'ratio'] },
  sources: ['common-practice'],
  of: readyMixVolume,
})
