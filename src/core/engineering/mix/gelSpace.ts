import { showing } from '../showing.ts'
import { gelSpaceCoefficients } from '../tables/hydration.ts'
import { type Curing, hydrationLimit } from './hydrationDegree.ts'

type GelInputs = Readonly<{ hydration: number; space: number; coefficients: keyof typeof gelSpaceCoefficients }>

/**
 * Share of the space between grains that gel fills.
 * @param hydration degree of hydration [1], 0 to 1
 * @param space water and air for each weight of cement, as weight of water [1]; the water-cement ratio of a mix without air
 * @param coefficients 'powers' 0.68 and 0.32, 'textbook' 0.657 and 0.319 [1]
 * @returns gel-space ratio [1]; null where there is neither gel nor space
 * Formula: x = 0.68 a/(0.32 a + s)
 * Valid: Portland cement; for a loose pack `space` must count the air. Outside: with the air left out the law promises the absurd.
 * Source: powers-gel-space, gel-space-textbook
 * Checked by: tests/external/gel-space-textbook/check.test.ts
 */
export function gelSpaceRatio({ hydration, space, coefficients }: GelInputs): number | null {
  const { gel, hydrated } = gelSpaceCoefficients[coefficients]
  const room = hydrated.value * hydration + space
  return room > 0 ? (gel.value * hydration) / room : null
}

type Mix = Readonly<{ hydration: number; space: number }>
type RatioInputs = Readonly<{ mix: Mix; reference: Mix; exponent: number }>

/**
 * Strength of a mix over that of a known mix of the same cement.
 * @param mix hydration and space of the mix asked about [1]
 * @param reference hydration and space of the known mix [1]
 * @param exponent of the law [1], 2.6 to 3
 * @returns ratio of strengths [1]; null where the law gives none
 * Formula: (x/x_ref)^n
 * Valid: ratios alone: the strength of pure gel is fitted to each cement and differs threefold between sources. Outside: no strength follows.
 * Source: powers-gel-space, nist-hydration
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function strengthRatio({ mix, reference, exponent }: RatioInputs): number | null {
  const x = gelSpaceRatio({ ...mix, coefficients: 'powers' })
  const known = gelSpaceRatio({ ...reference, coefficients: 'powers' })
  return x === null || known === null || known <= 0 ? null : (x / known) ** exponent
}

type LocalInputs = Readonly<{ ratio: number; space: number; curing: Curing; hydration: number; reference: Mix; exponent: number }>

/**
 * Strength of dry mix wetted in place over that of a known mixed concrete.
 * @param ratio water over cement at the place [1], non-negative
 * @param space water and air for each weight of cement [1], positive
 * @param curing 'sealed', or 'outsideWater' [1]
 * @param hydration share of the cement that time has let hydrate, where water is no limit [1]
 * @param reference hydration and space of the known mix [1]
 * @param exponent of the law [1], 2.6 to 3
 * @returns ratio of strengths [1], zero where it stayed dry; null where the law gives none
 * Formula: a = min(a_time, a_water); (x/x_ref)^n with the void form of x
 * Valid: even wetting at the place. Outside: no test of pours wetted from the top was found that gives numbers.
 * Source: powers-gel-space, nist-hydration
 * Checked by: tests/core/engineering/mix/gelSpace.test.ts
 */
export function placedStrengthRatio({ ratio, space, curing, hydration, reference, exponent }: LocalInputs): number | null {
  const reached = Math.min(hydration, hydrationLimit({ ratio, curing }))
  return strengthRatio({ mix: { hydration: reached, space }, reference, exponent })
}

/** Gel-space ratio, with its work shown. */
export const workedGelSpaceRatio = showing({
  id: 'gel-space-ratio',
  quantity: 'ratio',
  formula: ({ coefficients }: GelInputs) => {
    const { gel, hydrated } = gelSpaceCoefficients[coefficients]
    return String.raw`x = \frac{${gel.printed}\,\alpha}{${hydrated.printed}\,\alpha + s}`
  },
  terms: { hydration: [String.raw`\alpha`, 'ratio'], space: ['s', 'ratio'] },
  sources: ['powers-gel-space'],
  of: gelSpaceRatio,
})

/** Strength of mix wetted in place over a known mix, with its work shown. */
export const workedPlacedStrengthRatio = showing({
  id: 'placed-strength-ratio',
  quantity: 'ratio',
  formula: String.raw`\left(\frac{x}{x_{ref}}\right)^{n},\quad x = \frac{0.68\,\alpha}{0.32\,\alpha + s},\quad \alpha = \min(\alpha_t,\ \alpha_w)`,
  terms: {
    ratio: ['w/c', 'ratio'],
    space: ['s', 'ratio'],
    hydration: [String.raw`\alpha_t`, 'ratio'],
    exponent: ['n', 'ratio'],
  },
  sources: ['powers-gel-space', 'nist-hydration'],
  of: placedStrengthRatio,
})
