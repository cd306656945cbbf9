import { type Metres, type MetresPerSecond, metres, metresPerSecond, type UnitWeight } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Standard gravity [m/s2]. Source: nist-sp-811. */
const gravity = 9.80665
/** Kinematic viscosity [m2/s] and surface tension [N/m] of water at 20 degC. Source: parallel-plates. */
export const waterAt20 = {
  kinematicViscosity: cited(1e-6, '1', 'parallel-plates', 'from memory'),
  surfaceTension: cited(0.0728, '1', 'parallel-plates', 'from memory'),
} as const

type GapInputs = Readonly<{ gap: Metres }>

/**
 * Hydraulic conductivity of an open joint with smooth, parallel sides.
 * @param gap width of the joint [m], non-negative
 * @returns conductivity [m/s]
 * Formula: K = g b^2/(12 nu), water at 20 degC
 * Valid: slow flow, joint full. Outside: rough or part-filled joints carry less.
 * Source: parallel-plates
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function jointConductivity({ gap }: GapInputs): MetresPerSecond {
  return metresPerSecond((gravity * gap ** 2) / (12 * waterAt20.kinematicViscosity.value))
}

type HoldInputs = Readonly<{ gap: Metres; water: UnitWeight }>

/**
 * Height of water that a joint holds up by capillarity, at most.
 * @param gap width of the joint [m], positive
 * @param water unit weight of water [N/m3]
 * @returns height [m]; null for a closed joint
 * Formula: h = 2 gamma/(w b), contact angle zero
 * Valid: clean, wettable sides. Outside: an upper bound.
 * Source: parallel-plates
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function capillaryHold({ gap, water }: HoldInputs): Metres | null {
  return gap > 0 ? metres((2 * waterAt20.surfaceTension.value) / (water * gap)) : null
}

type RatioInputs = Readonly<{ joint: MetresPerSecond; other: MetresPerSecond }>

/**
 * How many times better a joint carries water than another material does.
 * @param joint conductivity of the joint [m/s]
 * @param other conductivity of concrete or of a soil [m/s], positive
 * @returns ratio [1]
 * Formula: K_joint/K
 * Valid: same area and same fall of head. Outside: none.
 * Source: definition
 * Checked by: tests/core/engineering/moisture/joint.test.ts
 */
export function conductivityRatio({ joint, other }: RatioInputs): number {
  return joint / other
}

/** Conductivity of the joint, with its work shown. */
export const workedJointConductivity = showing({
  id: 'joint-conductivity',
  quantity: 'conductivity',
  formula: String.raw`K = \frac{g\,b^2}{12\,\nu}`,
  terms: { gap: ['b', 'length'] },
  sources: ['parallel-plates'],
  of: jointConductivity,
})

/** Capillary hold of the joint, with its work shown. */
export const workedCapillaryHold = showing({
  id: 'capillary-hold',
  quantity: 'length',
  formula: String.raw`h = \frac{2\gamma}{w\,b}`,
  terms: { water: ['w', 'unitWeight'], gap: ['b', 'length'] },
  sources: ['parallel-plates'],
  of: capillaryHold,
})

/** Joint against concrete or a soil, with its work shown. */
export const workedConductivityRatio = showing({
  id: 'conductivity-ratio',
  quantity: 'ratio',
  formula: 'K_{joint}/K',
  terms: { joint: ['K_{joint}', 'conductivity'], other: ['K', 'conductivity'] },
  sources: ['definition'],
  of: conductivityRatio,
})
