import { type Pascals, type Radians, pascals, radians } from '../../units/quantity.ts'
import { cited, fromPrinted } from '../cited.ts'
import { showing } from '../showing.ts'

/** Atmospheric pressure as the method uses it, 2,116 psf. Source: gec-10-2018. */
export const atmosphere = cited<Pascals>(2116, 'psf', 'gec-10-2018', 'read')

/**
 * Friction angle of clean sand from corrected blow count.
 * @param correctedBlows (N1)60, blows per foot [1], positive
 * @returns drained friction angle [rad]
 * Formula: phi' = 27.5 + 9.2 log10((N1)60), degrees
 * Valid: clean sand, about 5 to 60 blows. Outside: the curve goes on but was not fitted there.
 * Source: gec-10-2018
 * Checked by: tests/external/gec-10-2018/check.test.ts
 */
export function frictionAngleFromBlows(correctedBlows: number): Radians {
  return radians(fromPrinted(27.5 + 9.2 * Math.log10(correctedBlows), 'deg'))
}

type Inputs = Readonly<{ frictionAngle: Radians; blows: number; stress: Pascals; exponent: number; atmosphere: Pascals }>
export type RationalBeta = Readonly<{ preconsolidation: Pascals; overconsolidation: number; atRest: number; passive: number; beta: number }>

/**
 * Rational beta method for side friction of a drilled shaft in sand, with every step.
 * @param frictionAngle drained friction angle [rad]
 * @param blows N60, blows per foot [1], positive
 * @param stress effective vertical stress when the blows were counted [Pa], positive
 * @param exponent m [1]: 0.6 clean sand, 0.8 silty sand (from memory)
 * @param atmosphere atmospheric pressure [Pa]
 * @returns preconsolidation stress [Pa], overconsolidation ratio [1], K0 [1], Kp [1], beta [1]
 * Formula: s'p = 0.47 pa N60^m; OCR = s'p/s'v >= 1; K0 = (1 - sin phi') OCR^sin phi' <= Kp = tan^2(45 + phi'/2); beta = K0 tan phi'
 * Valid: rough cast-in-place concrete in clean sand. Outside: near the surface the answer is far above the lower bound; it needs site data.
 * Source: gec-10-2018
 * Checked by: tests/external/gec-10-2018/check.test.ts
 */
export function betaRational({ frictionAngle, blows, stress, exponent, atmosphere: pa }: Inputs): RationalBeta {
  const preconsolidation = pascals(0.47 * pa * blows ** exponent)
  const overconsolidation = Math.max(1, preconsolidation / stress)
  const sine = Math.sin(frictionAngle)
  const passive = Math.tan(Math.PI / 4 + frictionAngle / 2) ** 2
  const atRest = Math.min(passive, (1 - sine) * overconsolidation ** sine)
  return { preconsolidation, overconsolidation, atRest, passive, beta: atRest * Math.tan(frictionAngle) }
}

/** Rational beta, with its work shown. */
export const workedBetaRational = showing({
  id: 'beta-rational',
  quantity: 'ratio',
  formula: String.raw`\beta = \min\!\left[(1-\sin\varphi')\left(\tfrac{0.47\,p_a N_{60}^{m}}{\sigma'_v}\right)^{\sin\varphi'}\!,\ K_p\right]\tan\varphi'`,
  terms: {
    frictionAngle: [String.raw`\varphi'`, 'angle'],
    blows: ['N_{60}', 'ratio'],
    exponent: ['m', 'ratio'],
    stress: [String.raw`\sigma'_v`, 'pressure'],
    atmosphere: ['p_a', 'pressure'],
  },
  sources: ['gec-10-2018'],
  of: (inputs: Inputs) => betaRational(inputs).beta,
})

/** Friction angle from blow count, with its work shown. */
export const workedFrictionAngleFromBlows = showing({
  id: 'friction-angle-from-blows',
  quantity: 'angle',
  formula: String.raw`\varphi' = 27.5 + 9.2\log_{10}(N_1)_{60}\ (\mathrm{degrees})`,
  terms: { blows: ['(N_1)_{60}', 'ratio'] },
  sources: ['gec-10-2018'],
  of: ({ blows }: Readonly<{ blows: number }>) => frictionAngleFromBlows(blows),
})
