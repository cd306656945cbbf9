import { type Metres, type Slope, metres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Setback from a descending slope is never asked to be more than this. Source: ibc-1808-7. */
export const setbackCap = cited<Metres>(40, 'ft', 'ibc-1808-7', 'secondary')
/** The setback rule applies to slopes steeper than one in three. Source: ibc-1808-7. */
export const setbackSlope = cited<Slope>(1 / 3, '1', 'ibc-1808-7', 'secondary')

type Inputs = Readonly<{ slopeHeight: Metres }>

/**
 * Level distance to keep from the face of the footing to a descending slope.
 * @param slopeHeight height of the slope H [m], non-negative
 * @returns least level distance [m]
 * Formula: min(H/3, 40 ft)
 * Valid: slopes steeper than 1V:3H, below them no rule. Outside: steeper than 1:1 is measured from a 45 degree plane through the toe.
 * Source: ibc-1808-7
 * Checked by: tests/external/ibc-1808-7/check.test.ts
 */
export function setbackFromSlope({ slopeHeight }: Inputs): Metres {
  return metres(Math.min(slopeHeight / 3, setbackCap.value))
}

/** Setback, with its work shown. */
export const workedSetbackFromSlope = showing({
  id: 'setback-from-slope',
  quantity: 'length',
  formula: String.raw`L = \min(H/3,\ c)`,
  terms: { slopeHeight: ['H', 'length'] },
  along: () => [{ symbol: 'c', name: 'setbackCap', value: setbackCap.value, quantity: 'length' }],
  sources: ['ibc-1808-7'],
  of: setbackFromSlope,
})
