import { type Metres, type MetresPerSecond, metres, metresPerSecond, type Seconds, seconds } from '../../units/quantity.ts'
import { showing } from '../showing.ts'
import { drawn, solveDrawn } from './sharpFront.ts'

type DeficitInputs = Readonly<{ effectivePorosity: number; saturation: number }>

/**
 * Room for water in soil that is already damp.
 * @param effectivePorosity share of the volume that drains and fills [1]
 * @param saturation effective saturation at the start [1], 0 to 1
 * @returns moisture deficit [1]
 * Formula: dtheta = (1 - Se) theta_e
 * Valid: even moisture with depth. Outside: none.
 * Source: rawls-1983
 * Checked by: tests/external/chow-1988-examples/check.test.ts
 */
export function moistureDeficit({ effectivePorosity, saturation }: DeficitInputs): number {
  return (1 - saturation) * effectivePorosity
}

/** `suction` at the front plus any head of water standing on top [m]; `deficit` [1]; `conductivity` K of the model [m/s]. */
export type GreenAmptSoil = Readonly<{ conductivity: MetresPerSecond; suction: Metres; deficit: number }>
type RateInputs = GreenAmptSoil & Readonly<{ infiltrated: Metres }>

/**
 * Rate at which soil under standing water takes water.
 * @param conductivity K, half the saturated one [m/s]
 * @param suction at the wetting front plus the head standing on top [m]
 * @param deficit room for water [1]
 * @param infiltrated depth of water taken so far [m], positive
 * @returns rate [m/s]; null before any water has gone in, where the model gives none
 * Formula: f = K (psi dtheta/F + 1)
 * Valid: a sharp front in even soil. Outside: cracks and roots take more.
 * Source: rawls-1983
 * Checked by: tests/external/chow-1988-examples/check.test.ts
 */
export function infiltrationRate({ conductivity, suction, deficit, infiltrated }: RateInputs): MetresPerSecond | null {
  return infiltrated > 0 ? metresPerSecond(conductivity * ((suction * deficit) / infiltrated + 1)) : null
}

/**
 * Time that soil under standing water needs to take a depth of water.
 * @param conductivity K [m/s], positive
 * @param suction at the wetting front plus the head standing on top [m]
 * @param deficit room for water [1]
 * @param infiltrated depth of water taken [m], non-negative
 * @returns time [s]
 * Formula: t = [F - psi dtheta ln(1 + F/(psi dtheta))]/K
 * Valid: water stands from the start. Outside: see the start of ponding.
 * Source: rawls-1983
 * Checked by: tests/external/rain-or-shine-6-5/check.test.ts
 */
export function infiltrationTime({ conductivity, suction, deficit, infiltrated }: RateInputs): Seconds {
  return seconds(drawn(suction * deficit, infiltrated) / conductivity)
}

type DepthInputs = GreenAmptSoil & Readonly<{ time: Seconds }>

/**
 * Depth of water that soil under standing water has taken after a time.
 * @param conductivity K [m/s], non-negative
 * @param suction at the wetting front plus the head standing on top [m], non-negative
 * @param deficit room for water [1], non-negative
 * @param time since water first stood there [s], non-negative
 * @returns depth of water [m]
 * Formula: F - psi dtheta ln(1 + F/(psi dtheta)) = K t, by Newton's rule from above
 * Valid: water stands from the start. Outside: see the start of ponding.
 * Source: rawls-1983
 * Checked by: tests/external/chow-1988-examples/check.test.ts
 */
export function infiltrated({ conductivity, suction, deficit, time }: DepthInputs): Metres {
  return metres(solveDrawn(suction * deficit, conductivity * time))
}

type FrontInputs = Readonly<{ infiltrated: Metres; deficit: number }>

/**
 * Depth of the wetting front.
 * @param infiltrated depth of water taken [m], non-negative
 * @param deficit room for water [1]
 * @returns depth of wet soil [m]; null in soil with no room left
 * Formula: L = F/dtheta
 * Valid: a sharp front. Outside: real fronts are uneven.
 * Source: rawls-1983
 * Checked by: tests/external/rain-or-shine-6-5/check.test.ts
 */
export function frontDepth({ infiltrated: depth, deficit }: FrontInputs): Metres | null {
  return deficit > 0 ? metres(depth / deficit) : null
}

const soilTerms = {
  conductivity: ['K', 'conductivity'],
  suction: [String.raw`\psi`, 'length'],
  deficit: [String.raw`\Delta\theta`, 'ratio'],
} as const

/** Water taken after a time, with its work shown. */
export const workedInfiltrated = showing({
  id: 'infiltrated',
  quantity: 'length',
  formula: String.raw`F - \psi\Delta\theta\,\ln\!\left(1 + \frac{F}{\psi\Delta\theta}\right) = K t`,
  terms: { ...soilTerms, time: ['t', 'duration'] },
  sources: ['rawls-1983'],
  of: infiltrated,
})

/** Rate of taking water, with its work shown. */
export const workedInfiltrationRate = showing({
  id: 'infiltration-rate',
  quantity: 'rain',
  formula: String.raw`f = K\left(\frac{\psi\Delta\theta}{F} + 1\right)`,
  terms: { ...soilTerms, infiltrated: ['F', 'length'] },
  sources: ['rawls-1983'],
  of: infiltrationRate,
})

/** Time to take a depth of water, with its work shown. */
export const workedInfiltrationTime = showing({
  id: 'infiltration-time',
  quantity: 'duration',
  formula: String.raw`t = \frac{1}{K}\left[F - \psi\Delta\theta\,\ln\!\left(1 + \frac{F}{\psi\Delta\theta}\right)\right]`,
  terms: { ...soilTerms, infiltrated: ['F', 'length'] },
  sources: ['rawls-1983'],
  of: infiltrationTime,
})

/** Depth of the front, with its work shown. */
export const workedFrontDepth = showing({
  id: 'front-depth',
  quantity: 'length',
  formula: String.raw`L = F/\Delta\theta`,
  terms: { infiltrated: ['F', 'length'], deficit: [String.raw`\Delta\theta`, 'ratio'] },
  sources: ['rawls-1983'],
  of: frontDepth,
})

/** Room for water, with its work shown. */
export const workedMoistureDeficit = showing({
  id: 'moisture-deficit',
  quantity: 'ratio',
  formula: String.raw`\Delta\theta = (1 - S_e)\,\theta_e`,
  terms: { saturation: ['S_e', 'ratio'], effectivePorosity: [String.raw`\theta_e`, 'ratio'] },
  sources: ['rawls-1983'],
  of: moistureDeficit,
})
