import { type Metres, type MetresPerSecond, type Seconds, seconds } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

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

/** `suction` at the wetting front [m]; `deficit` [1]; `conductivity` K, half the saturated one [m/s]; `rain` at a steady rate [m/s]. */
type StartInputs = Readonly<{ conductivity: MetresPerSecond; suction: Metres; deficit: number; rain: MetresPerSecond }>

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

/** Time until water stands, with its work shown. */
export const workedPondingStart = showing({
  id: 'ponding-start',
  quantity: 'duration',
  formula: String.raw`t_p = \frac{K\,\psi\Delta\theta}{i\,(i - K)}`,
  terms: {
    conductivity: ['K', 'conductivity'],
    suction: [String.raw`\psi`, 'length'],
    deficit: [String.raw`\Delta\theta`, 'ratio'],
    rain: ['i', 'rain'],
  },
  sources: ['chow-1988'],
  of: pondingStart,
})
