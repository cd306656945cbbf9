import { type Metres, type Pascals, pascals } from '../../units/quantity.ts'
import { showing } from '../showing.ts'
import { shaftResistanceCap, shaftResistanceMinDiameter } from '../tables/soils.ts'

type Inputs = Readonly<{ bearing: Pascals; diameter: Metres }>

/**
 * Presumptive shaft resistance of a cast-in-place pier. A compression value: in uplift it is an upper bound, never a capacity.
 * @param bearing presumptive vertical bearing of the soil [Pa], positive
 * @param diameter of the shaft [m]
 * @returns allowable unit resistance in compression [Pa]; null for a shaft narrower than 12 in
 * Formula: fs = min(q/6, 500 psf)
 * Valid: uncased concrete cast against undisturbed soil, 12 in or wider, not with end bearing unless investigated. Outside: no value.
 * Source: ibc-1810-3-3-1-4
 * Checked by: tests/external/ibc-1810-3-3-1-4/check.test.ts
 */
export function presumptiveFriction({ bearing, diameter }: Inputs): Pascals | null {
  // A hole typed as 12 in must not fall short of 12 in by the last bit.
  if (diameter < shaftResistanceMinDiameter.value * (1 - 1e-9)) return null
  return pascals(Math.min(bearing / 6, shaftResistanceCap.value))
}

/** Presumptive unit friction, with its work shown. */
export const workedPresumptiveFriction = showing({
  id: 'presumptive-friction',
  quantity: 'pressure',
  formula: String.raw`f_s = \min(q/6,\ c)`,
  terms: { bearing: ['q', 'pressure'] },
  along: () => [{ symbol: 'c', name: 'frictionCap', value: shaftResistanceCap.value, quantity: 'pressure' }],
  sources: ['ibc-1810-3-3-1-4', 'ibc-1806-2'],
  of: presumptiveFriction,
})
