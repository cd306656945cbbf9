import { type CubicMetresPerSecond, cubicMetresPerSecond, type MetresPerSecond, type SquareMetres } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ share: number; rain: MetresPerSecond; area: SquareMetres }>

/**
 * Water that runs off a surface in steady rain.
 * @param share that runs off [1]: 0.95 for roofs
 * @param rain steady rate [m/s]
 * @param area level area that the rain falls on [m2]
 * @returns flow [m3/s]
 * Formula: Q = C i A
 * Valid: small areas. Outside: none.
 * Source: rational-runoff
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function runoff({ share, rain, area }: Inputs): CubicMetresPerSecond {
  return cubicMetresPerSecond(share * rain * area)
}

/** Runoff, with its work shown. */
export const workedRunoff = showing({
  id: 'runoff',
  quantity: 'flow',
  formula: 'Q = C\\,i\\,A',
  terms: { share: ['C', 'ratio'], rain: ['i', 'rain'], area: ['A', 'area'] },
  sources: ['rational-runoff'],
  of: runoff,
})
