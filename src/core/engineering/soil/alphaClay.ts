import { type Metres, type Pascals, metres, pascals } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

type AashtoInputs = Readonly<{ strength: Pascals; atmosphere: Pascals }>

/**
 * Adhesion factor for a drilled shaft in clay, the constant form.
 * @param strength undrained shear strength su [Pa], positive
 * @param atmosphere atmospheric pressure pa [Pa]
 * @returns alpha [1]; null above su/pa = 2.5, where the form ends
 * Formula: alpha = 0.55 for su/pa <= 1.5, else 0.55 - 0.1 (su/pa - 1.5)
 * Valid: su/pa <= 2.5. Outside: no value.
 * Source: aashto-10-8-3-5
 * Checked by: tests/external/aashto-10-8-3-5/check.test.ts
 */
export function alphaConstant({ strength, atmosphere }: AashtoInputs): number | null {
  const ratio = strength / atmosphere
  if (ratio > 2.5) return null
  return ratio <= 1.5 ? 0.55 : 0.55 - 0.1 * (ratio - 1.5)
}

type RationalInputs = Readonly<{ triaxialStrength: Pascals; atmosphere: Pascals }>

/**
 * Adhesion factor for a drilled shaft in clay, the rational form.
 * @param triaxialStrength undrained strength of the consolidated triaxial test [Pa], positive
 * @param atmosphere atmospheric pressure pa [Pa]
 * @returns alpha [1], not above 1
 * Formula: alpha = 0.30 + 0.17 / (su,CIUC / pa) <= 1
 * Valid: undisturbed clay. Outside: soft clay reaches the cap of 1.
 * Source: gec-10-2018
 * Checked by: tests/external/gec-10-2018/check.test.ts
 */
export function alphaRational({ triaxialStrength, atmosphere }: RationalInputs): number {
  return Math.min(1, 0.3 + (0.17 * atmosphere) / triaxialStrength)
}

type ConversionInputs = Readonly<{ strength: Pascals; stress: Pascals; test: 'UC' | 'UU' }>

/**
 * Consolidated-triaxial strength from a simpler test.
 * @param strength undrained strength by that test [Pa], positive
 * @param stress effective vertical stress at the sample [Pa], positive
 * @param test 'UC' unconfined compression, 'UU' unconsolidated triaxial [1]
 * @returns equivalent consolidated-triaxial strength [Pa]; null where the fitted ratio is not positive
 * Formula: su/su,CIUC = 0.893 + 0.513 log10(su/s'v) (UC); 0.911 + 0.499 log10(su/s'v) (UU)
 * Valid: su/s'v of about 0.1 to 3. Outside: the logarithm runs away; no value at a ratio of zero or less.
 * Source: gec-10-2018 (UC), ufc-3-220-20 (UU)
 * Checked by: tests/external/gec-10-2018/check.test.ts
 */
export function triaxialStrength({ strength, stress, test }: ConversionInputs): Pascals | null {
  const [a, b] = test === 'UC' ? [0.893, 0.513] : [0.911, 0.499]
  const ratio = a + b * Math.log10(strength / stress)
  return ratio > 0 ? pascals(strength / ratio) : null
}

/** Top length of a shaft in clay that is not counted, 5 ft or the depth of seasonal moisture change. Source: aashto-10-8-3-5. */
export const clayTopExclusion = cited<Metres>(5, 'ft', 'aashto-10-8-3-5', 'secondary')

type LengthInputs = Readonly<{ top: Metres; bottom: Metres; topExclusion: Metres; diameter: Metres }>

/**
 * Length of a shaft in clay on which adhesion may be counted.
 * @param top depth at which the shaft begins to touch clay [m]
 * @param bottom depth of the shaft's bottom [m]
 * @param topExclusion depth above which nothing counts [m], 1.524 or more
 * @param diameter of the base [m]; one diameter above the bottom does not count
 * @returns counted length [m], zero when the exclusions take all
 * Formula: L = max(0, bottom - B - max(top, exclusion))
 * Valid: always. Outside: a pier shorter than 5 ft and one diameter has no adhesion to count.
 * Source: aashto-10-8-3-5
 * Checked by: tests/external/aashto-10-8-3-5/check.test.ts
 */
export function clayAdhesionLength({ top, bottom, topExclusion, diameter }: LengthInputs): Metres {
  return metres(Math.max(0, bottom - diameter - Math.max(top, topExclusion)))
}

type AdhesionInputs = Readonly<{ alpha: number; strength: Pascals; perimeter: Metres; length: Metres }>
/** Adhesion over the counted length, ultimate, with its work shown. */
export const workedClayAdhesion = showing({
  id: 'clay-adhesion',
  quantity: 'force',
  formula: String.raw`R_s = \alpha\,s_u\,p\,L`,
  terms: { alpha: [String.raw`\alpha`, 'ratio'], strength: ['s_u', 'pressure'], perimeter: ['p', 'length'], length: ['L', 'length'] },
  sources: ['aashto-10-8-3-5'],
  of: ({ alpha, strength, perimeter, length }: AdhesionInputs) => alpha * strength * perimeter * length,
})

/** Adhesion factor, constant form, with its work shown. */
export const workedAlphaConstant = showing({
  id: 'alpha-constant',
  quantity: 'ratio',
  formula: String.raw`\alpha = 0.55 - 0.1\,\max(0,\ s_u/p_a - 1.5)`,
  terms: { strength: ['s_u', 'pressure'], atmosphere: ['p_a', 'pressure'] },
  sources: ['aashto-10-8-3-5'],
  of: alphaConstant,
})

/** Adhesion factor, rational form, with its work shown. */
export const workedAlphaRational = showing({
  id: 'alpha-rational',
  quantity: 'ratio',
  formula: String.raw`\alpha = 0.30 + \frac{0.17\,p_a}{s_{u,CIUC}} \le 1`,
  terms: { triaxialStrength: ['s_{u,CIUC}', 'pressure'], atmosphere: ['p_a', 'pressure'] },
  sources: ['gec-10-2018'],
  of: alphaRational,
})

/** Triaxial strength from a simpler test, with its work shown. */
export const workedTriaxialStrength = showing({
  id: 'triaxial-strength',
  quantity: 'pressure',
  formula: ({ test }: ConversionInputs) =>
    test === 'UC'
      ? String.raw`s_{u,CIUC} = \frac{s_u}{0.893 + 0.513\log_{10}(s_u/\sigma'_v)}`
      : String.raw`s_{u,CIUC} = \frac{s_u}{0.911 + 0.499\log_{10}(s_u/\sigma'_v)}`,
  terms: { strength: ['s_u', 'pressure'], stress: [String.raw`\sigma'_v`, 'pressure'] },
  sources: ['gec-10-2018', 'ufc-3-220-20'],
  of: triaxialStrength,
})

/** Counted length in clay, with its work shown. */
export const workedClayAdhesionLength = showing({
  id: 'clay-adhesion-length',
  quantity: 'length',
  formula: String.raw`L = \max\!\left[0,\ z_b - B - \max(z_t,\ z_e)\right]`,
  terms: { bottom: ['z_b', 'length'], diameter: ['B', 'length'], top: ['z_t', 'length'], topExclusion: ['z_e', 'length'] },
  sources: ['aashto-10-8-3-5'],
  of: clayAdhesionLength,
})
