import type { Metres } from '../../units/quantity.ts'
import { fromPrinted, toPrinted } from '../cited.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ depth: Metres; blows: number }>

/** Depth above which the cap of 1.2 rules: ((1.5 - 1.2) / 0.135)^2 = 4.94 ft [m]. Source: oneill-reese-1999. */
export const betaCapDepth = fromPrinted((0.3 / 0.135) ** 2, 'ft') as Metres

/**
 * Depth-based ratio of side friction to effective vertical stress in sand.
 * @param depth depth below grade [m], non-negative
 * @param blows N60, blows per foot [1]; below 15 the ratio falls in proportion
 * @returns beta [1], 0.25 to 1.2 before the reduction for low blow counts
 * Formula: beta = 1.5 - 0.135 sqrt(z in feet), 0.25 <= beta <= 1.2, times N60/15 when N60 < 15
 * Valid: sand, drilled shaft, undisturbed. Outside: nearly every short pier lies wholly under the cap of 1.2.
 * Source: oneill-reese-1999
 * Checked by: tests/external/oneill-reese-1999/check.test.ts
 */
export function betaByDepth({ depth, blows }: Inputs): number {
  const beta = Math.min(1.2, Math.max(0.25, 1.5 - 0.135 * Math.sqrt(toPrinted(depth, 'ft'))))
  return blows < 15 ? (beta * blows) / 15 : beta
}

/** Depth-based beta, with its work shown. */
export const workedBetaByDepth = showing({
  id: 'beta-by-depth',
  quantity: 'ratio',
  formula: String.raw`\beta = 1.5 - 0.135\sqrt{z\,(\mathrm{ft})},\quad 0.25 \le \beta \le 1.2`,
  terms: { depth: ['z', 'length'], blows: ['N_{60}', 'ratio'] },
  sources: ['oneill-reese-1999'],
  of: betaByDepth,
})
