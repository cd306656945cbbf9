import type { Radians } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ frictionAngle: Radians; descent: Radians }>

/**
 * Passive pressure on the downhill side of a slope as a share of that in level ground: a screening ratio.
 * @param frictionAngle of the soil [rad]
 * @param descent angle of the descending slope [rad], 0 up to the friction angle
 * @returns ratio to level ground [1]; null for a slope steeper than the friction angle
 * Formula: Kp(-b) = cos^2 phi/{1 - sqrt[sin phi sin(phi - b)/cos b]}^2, divided by Kp(0)
 * Valid: Coulomb wedge, smooth face. Outside: no value; a geotechnical engineer decides.
 * Source: computed-here
 * Checked by: tests/external/computed-here/check.test.ts
 */
export function slopePassiveRatio({ frictionAngle, descent }: Inputs): number | null {
  if (descent > frictionAngle) return null
  return passive(frictionAngle, descent) / passive(frictionAngle, 0)
}

const passive = (phi: number, descent: number): number =>
  Math.cos(phi) ** 2 / (1 - Math.sqrt((Math.sin(phi) * Math.sin(phi - descent)) / Math.cos(descent))) ** 2

/** Passive ratio on a slope, with its work shown. */
export const workedSlopePassiveRatio = showing({
  id: 'slope-passive-ratio',
  quantity: 'ratio',
  formula: String.raw`\frac{K_p(-\beta)}{K_p(0)},\quad K_p(-\beta) = \frac{\cos^2\varphi}{\left[1-\sqrt{\sin\varphi\,\sin(\varphi-\beta)/\cos\beta}\right]^2}`,
  terms: { frictionAngle: [String.raw`\varphi`, 'angle'], descent: [String.raw`\beta`, 'angle'] },
  sources: ['computed-here'],
  of: slopePassiveRatio,
})
