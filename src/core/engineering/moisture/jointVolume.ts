import { type CubicMetres, cubicMetres, type Metres } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

/** Does the joint close with depth, or stay as wide all the way down? */
export type JointShape = 'wedge' | 'even'
const share: Readonly<Record<JointShape, number>> = { wedge: 0.5, even: 1 }

type RectInputs = Readonly<{ width: Metres; depth: Metres; gapWidth: Metres; gapDepth: Metres; reach: Metres; shape: JointShape }>

/**
 * Water that the joint round a sawn post holds when full.
 * @param width of the post [m], positive
 * @param depth of the post [m], positive
 * @param gapWidth opened across the width, both faces together, at the top [m]
 * @param gapDepth opened across the depth, both faces together, at the top [m]
 * @param reach length of open joint down from the top [m]
 * @param shape 'wedge' closes at `reach`, 'even' does not close [1]
 * @returns volume [m3]
 * Formula: V = c (g_w d + g_d w) L, c = 1/2 for a wedge
 * Valid: gap small beside the post. Outside: corners are left out.
 * Source: definition
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function jointVolume({ width, depth, gapWidth, gapDepth, reach, shape }: RectInputs): CubicMetres {
  return cubicMetres(share[shape] * (gapWidth * depth + gapDepth * width) * reach)
}

type RoundInputs = Readonly<{ diameter: Metres; gap: Metres; reach: Metres; shape: JointShape }>

/**
 * Water that the joint round a pole holds when full.
 * @param diameter of the pole [m], positive
 * @param gap opened across the diameter, both sides together, at the top [m]
 * @param reach length of open joint down from the top [m]
 * @param shape 'wedge' closes at `reach`, 'even' does not close [1]
 * @returns volume [m3]
 * Formula: V = c pi D (g/2) L, c = 1/2 for a wedge
 * Valid: gap small beside the pole. Outside: none.
 * Source: definition
 * Checked by: tests/core/engineering/moisture/joint.test.ts
 */
export function roundJointVolume({ diameter, gap, reach, shape }: RoundInputs): CubicMetres {
  return cubicMetres((share[shape] * Math.PI * diameter * gap * reach) / 2)
}

const coefficient = (shape: JointShape) => (shape === 'wedge' ? String.raw`\tfrac{1}{2}` : '')

/** Water in the joint round a sawn post, with its work shown. */
export const workedJointVolume = showing({
  id: 'joint-volume',
  quantity: 'volume',
  formula: ({ shape }: RectInputs) => String.raw`V = ${coefficient(shape)}(g_w d + g_d w)\,L`,
  terms: {
    gapWidth: ['g_w', 'length'],
    depth: ['d', 'length'],
    gapDepth: ['g_d', 'length'],
    width: ['w', 'length'],
    reach: ['L', 'length'],
  },
  sources: ['definition'],
  of: jointVolume,
})

/** Water in the joint round a pole, with its work shown. */
export const workedRoundJointVolume = showing({
  id: 'round-joint-volume',
  quantity: 'volume',
  formula: ({ shape }: RoundInputs) => String.raw`V = ${coefficient(shape)}\,\pi D\,\frac{g}{2}\,L`,
  terms: { diameter: ['D', 'length'], gap: ['g', 'length'], reach: ['L', 'length'] },
  sources: ['definition'],
  of: roundJointVolume,
})
