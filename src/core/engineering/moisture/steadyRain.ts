import { type Metres, type MetresPerSecond, metres, type Seconds, seconds } from '../../units/quantity.ts'
import { showing } from '../showing.ts'
import type { GreenAmptSoil } from './greenAmpt.ts'
import { drawn, solveDrawn } from './sharpFront.ts'

type StartInputs = GreenAmptSoil & Readonly<{ rain: MetresPerSecond }>

/**
 * Time from the start of steady rain until water stands on the ground.
 * @param conductivity K [m/s]
 * @param suction at the wetting front [m]
 * @param deficit room for water [1]
 * @param rain steady rate [m/s]
 * @returns time [s]; null where the ground takes all of it for ever
 * Formula: tp = K psi dtheta/[i (i - K)]
 * Valid: i > K. Outside: no value.
 * Source: chow-1988
 * Checked by: tests/external/chow-1988-examples/check.test.ts
 */
export function pondingStart({ conductivity, suction, deficit, rain }: StartInputs): Seconds | null {
  return rain > conductivity ? seconds((conductivity * suction * deficit) / (rain * (rain - conductivity))) : null
}

type AfterInputs = StartInputs & Readonly<{ time: Seconds }>

/**
 * Depth of water that the ground has taken of steady rain.
 * @param conductivity K [m/s]
 * @param suction at the wetting front [m]
 * @param deficit room for water [1]
 * @param rain steady rate [m/s]
 * @param time since the rain began [s], non-negative
 * @returns depth of water [m]: all the rain until water stands, less after
 * Formula: F - Fp - psi dtheta ln[(psi dtheta + F)/(psi dtheta + Fp)] = K (t - tp), Fp = i tp
 * Valid: steady rain on even soil. Outside: none.
 * Source: chow-1988
 * Checked by: tests/external/chow-1988-examples/check.test.ts
 */
export function rainTaken({ conductivity, suction, deficit, rain, time }: AfterInputs): Metres {
  const start = pondingStart({ conductivity, suction, deficit, rain })
  if (start === null || time <= start) return metres(rain * time)
  const room = suction * deficit
  return metres(solveDrawn(room, conductivity * (time - start) + drawn(room, rain * start)))
}

const terms = {
  conductivity: ['K', 'conductivity'],
  suction: [String.raw`\psi`, 'length'],
  deficit: [String.raw`\Delta\theta`, 'ratio'],
  rain: ['i', 'rain'],
} as const

/** Time until water stands, with its work shown. */
export const workedPondingStart = showing({
  id: 'ponding-start',
  quantity: 'duration',
  formula: String.raw`t_p = \frac{K\,\psi\Delta\theta}{i\,(i - K)}`,
  terms,
  sources: ['chow-1988'],
  of: pondingStart,
})

/** Rain taken by the ground, with its work shown. */
export const workedRainTaken = showing({
  id: 'rain-taken',
  quantity: 'length',
  formula: String.raw`F - F_p - \psi\Delta\theta\,\ln\frac{\psi\Delta\theta + F}{\psi\Delta\theta + F_p} = K\,(t - t_p)`,
  terms: { ...terms, time: ['t', 'duration'] },
  sources: ['chow-1988'],
  of: rainTaken,
})
