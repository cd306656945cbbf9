import { type Metres, type MetresPerSecond, metres, metresPerSecond, type Seconds } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type DepthInputs = Readonly<{ sorptivity: number; conductivity: MetresPerSecond; time: Seconds }>

/**
 * Depth of water taken, two-term form for short times.
 * @param sorptivity S [m/s^0.5], non-negative
 * @param conductivity K [m/s]; zero for a level column
 * @param time since water first stood there [s], non-negative
 * @returns depth of water [m]
 * Formula: F = S sqrt(t) + K t
 * Valid: short times. Outside: too much after long ones.
 * Source: chow-1988
 * Checked by: tests/external/chow-1988-examples/check.test.ts
 */
export function philipInfiltrated({ sorptivity, conductivity, time }: DepthInputs): Metres {
  return metres(sorptivity * Math.sqrt(time) + conductivity * time)
}

/**
 * Rate of taking water, two-term form.
 * @param sorptivity S [m/s^0.5], non-negative
 * @param conductivity K [m/s]
 * @param time since water first stood there [s], positive
 * @returns rate [m/s]; null at the very start, where the form gives none
 * Formula: f = S/(2 sqrt(t)) + K
 * Valid: short times. Outside: none.
 * Source: chow-1988
 * Checked by: tests/core/engineering/moisture/infiltration.test.ts
 */
export function philipRate({ sorptivity, conductivity, time }: DepthInputs): MetresPerSecond | null {
  return time > 0 ? metresPerSecond(sorptivity / (2 * Math.sqrt(time)) + conductivity) : null
}

type SorptivityInputs = Readonly<{ conductivity: MetresPerSecond; suction: Metres; deficit: number }>

/**
 * Sorptivity that a sharp front has.
 * @param conductivity K [m/s], non-negative
 * @param suction at the wetting front [m], non-negative
 * @param deficit room for water [1], non-negative
 * @returns sorptivity [m/s^0.5]
 * Formula: S = sqrt(2 K psi dtheta)
 * Valid: the early part of the sharp-front model. Outside: none.
 * Source: chow-1988
 * Checked by: tests/core/engineering/moisture/infiltration.test.ts
 */
export function sharpFrontSorptivity({ conductivity, suction, deficit }: SorptivityInputs): number {
  return Math.sqrt(2 * conductivity * suction * deficit)
}

/** Water taken, two-term form, with its work shown. */
export const workedPhilipInfiltrated = showing({
  id: 'philip-infiltrated',
  quantity: 'length',
  formula: String.raw`F = S\sqrt{t} + K t`,
  terms: { sorptivity: ['S', 'ratio'], conductivity: ['K', 'conductivity'], time: ['t', 'duration'] },
  sources: ['chow-1988'],
  of: philipInfiltrated,
})
