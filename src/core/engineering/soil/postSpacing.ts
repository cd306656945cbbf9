import { type Metres, metres } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ post: Metres; footing: Metres }>

/**
 * Least spacing of posts for which the post-frame foundation standard speaks.
 * @param post largest cross-section dimension of the post or pier [m]
 * @param footing largest dimension of footing or collar [m], 0 for none
 * @returns least spacing, centre to centre [m]
 * Formula: max(4.5 b, 3 B)
 * Valid: the standard's own scope, relatively level ground. Outside: closer posts share their soil.
 * Source: ep486-scope
 * Checked by: tests/external/ep486-scope/check.test.ts
 */
export function leastPostSpacing({ post, footing }: Inputs): Metres {
  return metres(Math.max(4.5 * post, 3 * footing))
}

/** Least post spacing, with its work shown. */
export const workedLeastPostSpacing = showing({
  id: 'least-post-spacing',
  quantity: 'length',
  formula: String.raw`s = \max(4.5\,b,\ 3\,B)`,
  terms: { post: ['b', 'length'], footing: ['B', 'length'] },
  sources: ['ep486-scope'],
  of: leastPostSpacing,
})
