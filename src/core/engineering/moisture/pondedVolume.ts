import { type CubicMetres, cubicMetres, type Metres } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

/** What stands in the middle of the dish: a sawn post, a pole, or a level landing under a bracket. */
export type InDish =
  | Readonly<{ shape: 'rect'; width: Metres; depth: Metres }>
  | Readonly<{ shape: 'round'; diameter: Metres }>
  | Readonly<{ shape: 'landing' }>

type Inputs = Readonly<{ rimRadius: Metres; innerRadius: Metres; dish: Metres; overRim: Metres; inside: InDish }>

/** Integral of r over a centred rectangle [m3]. */
const firstMoment = (w: number, d: number): number =>
  (w * d * Math.hypot(w, d)) / 6 + (w ** 3 * Math.asinh(d / w)) / 12 + (d ** 3 * Math.asinh(w / d)) / 12

/** Area taken by what stands there, its farthest corner, and the integral of r over it. */
const standing = (inside: InDish): Readonly<{ area: number; reach: number; moment: number }> => {
  if (inside.shape === 'landing') return { area: 0, reach: 0, moment: 0 }
  if (inside.shape === 'rect') {
    const { width: w, depth: d } = inside
    return { area: w * d, reach: Math.hypot(w, d) / 2, moment: firstMoment(w, d) }
  }
  const a = inside.diameter / 2
  return { area: Math.PI * a ** 2, reach: a, moment: (2 * Math.PI * a ** 3) / 3 }
}

/**
 * Water that a dished top holds round the post when full, in closed form.
 * @param rimRadius radius of the level rim [m], positive
 * @param innerRadius radius at which the dish's depth is measured [m]: the middle of the post's widest face, or the edge of the landing
 * @param dish depth of the top below the rim at that radius [m], non-negative
 * @param overRim height that water may stand over the rim before it finds a way out [m], zero for a rim above the ground
 * @param inside what stands in the middle [m]
 * @returns volume [m3]; null where a post reaches past the rim
 * Formula: H = h R/(R - a), V = pi R^2 H/3 - H (A - M/R) + (pi R^2 - A) o, with A the post's area and M the integral of r over it;
 *   landing: V = pi h (R^2 + R a + a^2)/3 + pi R^2 o
 * Valid: a straight cone on the pier's axis. Outside: no value.
 * Source: plane-cut-solids
 * Checked by: tests/external/plane-cut-solids/ponding.test.ts
 */
export function pondedVolume({ rimRadius, innerRadius, dish, overRim, inside }: Inputs): CubicMetres | null {
  const R = rimRadius
  const a = innerRadius
  const { area, reach, moment } = standing(inside)
  if (!(R > a) || reach > R) return null
  const disc = Math.PI * R ** 2
  if (inside.shape === 'landing') return cubicMetres((Math.PI * dish * (R ** 2 + R * a + a ** 2)) / 3 + disc * overRim)
  const apex = (dish * R) / (R - a)
  return cubicMetres((disc * apex) / 3 - apex * (area - moment / R) + (disc - area) * overRim)
}

/** Water standing in a dished top, with its work shown. */
export const workedPondedVolume = showing({
  id: 'ponded-volume',
  quantity: 'volume',
  formula: ({ inside }: Inputs) =>
    inside.shape === 'landing'
      ? String.raw`V = \tfrac{\pi h}{3}(R^2 + R a + a^2) + \pi R^2 o`
      : String.raw`V = \tfrac{1}{3}\pi R^2 H - H\left(A - \tfrac{1}{R}\int_A r\,dA\right) + (\pi R^2 - A)\,o,\quad H = \frac{hR}{R - a}`,
  terms: {
    dish: ['h', 'length'],
    rimRadius: ['R', 'length'],
    innerRadius: ['a', 'length'],
    overRim: ['o', 'length'],
  },
  sources: ['plane-cut-solids'],
  method: 'closed form',
  of: pondedVolume,
})
