import { type Metres, metres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

type GapInputs = Readonly<{ size: Metres; before: number; now: number }>

/**
 * Gap that wood opens in concrete set against it while it was wetter, both faces together.
 * @param size of the post across, when the concrete was placed [m], positive
 * @param before shrinkage from green that the wood had when the concrete was placed [1]
 * @param now shrinkage from green that it has in service [1]
 * @returns gap [m]; never below zero: wood that takes up water closes on the concrete
 * Formula: g = D [1 - (1 - S_now)/(1 - S_before)], not below 0
 * Valid: rigid concrete that does not follow the wood. Outside: gaps round posts were never measured; a wet core lessens it.
 * Source: wood-handbook-4, computed-here
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function jointGap({ size, before, now }: GapInputs): Metres {
  return metres(Math.max(0, size * (1 - (1 - now) / (1 - before))))
}

/** Depth to which the joint is drawn open, a project default from the top 6 to 12 in where decay sits. Source: assumption. */
export const wedgeReach = cited<Metres>(12, 'in', 'assumption', 'assumed here')

type AtInputs = Readonly<{ gap: Metres; reach: Metres; below: Metres }>

/**
 * Gap at a depth, open at the top and closed at the depth to which wood dries.
 * @param gap at the top of the concrete [m]
 * @param reach depth at which the joint is closed [m], positive
 * @param below depth below the top of the concrete [m], non-negative
 * @returns gap there [m], zero from `reach` on
 * Formula: g(z) = g (1 - z/L)
 * Valid: a straight wedge, chosen here. Outside: no measured shape was found.
 * Source: assumption
 * Checked by: tests/core/engineering/moisture/joint.test.ts
 */
export function jointGapAt({ gap, reach, below }: AtInputs): Metres {
  return metres(gap * Math.max(0, 1 - below / reach))
}

/** Joint opened by drying, both faces together, with its work shown. */
export const workedJointGap = showing({
  id: 'joint-gap',
  quantity: 'length',
  formula: String.raw`g = D\left(1 - \frac{1 - S_{now}}{1 - S_{before}}\right)`,
  terms: { size: ['D', 'length'], now: ['S_{now}', 'ratio'], before: ['S_{before}', 'ratio'] },
  sources: ['wood-handbook-4', 'computed-here'],
  of: jointGap,
})

/** Joint at one face of a post that stays in the middle, with its work shown. */
export const workedJointAtFace = showing({
  id: 'joint-at-face',
  quantity: 'length',
  formula: String.raw`g_f = \tfrac{1}{2}\,D\left(1 - \frac{1 - S_{now}}{1 - S_{before}}\right)`,
  terms: { size: ['D', 'length'], now: ['S_{now}', 'ratio'], before: ['S_{before}', 'ratio'] },
  sources: ['wood-handbook-4', 'computed-here'],
  of: (inputs: GapInputs) => metres(jointGap(inputs) / 2),
})
