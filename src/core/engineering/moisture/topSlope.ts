import { type Metres, type Slope, slope } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ rise: Metres; rimRadius: Metres; innerRadius: Metres }>

/**
 * Slope of a pier's finished top from the post out to the rim.
 * @param rise at the middle of the post's widest face above the rim [m]; negative for a dish
 * @param rimRadius radius of the rim [m]
 * @param innerRadius radius at which the rise is measured [m]
 * @returns slope, positive where it falls away from the post [rise/run]; null where the post fills the hole
 * Formula: s = h/(R - a)
 * Valid: a straight cone. Outside: none.
 * Source: definition
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function topSlope({ rise, rimRadius, innerRadius }: Inputs): Slope | null {
  const run = rimRadius - innerRadius
  return run > 0 ? slope(rise / run) : null
}

/** Slope of the top, with its work shown. */
export const workedTopSlope = showing({
  id: 'top-slope',
  quantity: 'slope',
  formula: String.raw`s = \frac{h}{R - a}`,
  terms: { rise: ['h', 'length'], rimRadius: ['R', 'length'], innerRadius: ['a', 'length'] },
  sources: ['definition'],
  of: topSlope,
})
