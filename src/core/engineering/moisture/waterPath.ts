import type { Metres, Slope } from '../../units/quantity.ts'

type Inputs = Readonly<{
  slope: Slope | null
  rimAboveUphill: Metres
  rimAboveDownhill: Metres
  heaped: Metres
}>
/** Why water reaches the post, each a key into the text table. 'soil-against-post': no finished top, and the ground does not fall away. */
export type WaterReason =
  | 'top-slopes-in'
  | 'top-is-level'
  | 'post-fills-hole'
  | 'rim-below-uphill-grade'
  | 'heaped-over'
  | 'soil-against-post'
export type WaterPath = Readonly<{
  /** Where rain on and above the top ends. */
  end: 'ground' | 'post'
  /** All that send it there; empty where it ends on the ground. */
  reasons: readonly WaterReason[]
  /** Does sheet water from uphill run onto the top? */
  fromUphill: boolean
  /** Depth over the rim that water reaches before it runs off downhill [m]. */
  overRim: Metres
}>

/** Two heights closer than this are the same height [m]. */
const same = 1e-9

/**
 * Where rain goes at the top of a pier: off it, or to the post.
 * @param slope of the finished top, positive where it falls away from the post [rise/run]; null where the post fills the hole
 * @param rimAboveUphill height of the rim above grade at the uphill edge [m], negative when lower
 * @param rimAboveDownhill height of the rim above grade at the downhill edge [m], negative when lower
 * @param heaped soil or mulch on the finished top, at the post [m]
 * @returns end of the path, every reason, and the depth over the rim [m]
 * Formula: to the post when the top slopes in or is level, when the rim lies below uphill grade, or when soil is heaped over it; over the rim up to max(0, -downhill)
 * Valid: a level rim, grade a plane. Outside: a swale uphill, which keeps sheet water away, is not seen here.
 * Source: definition, assumption
 * Checked by: tests/core/engineering/moisture/topDrainage.test.ts
 */
export function waterPath({ slope, rimAboveUphill, rimAboveDownhill, heaped }: Inputs): WaterPath {
  const fromUphill = rimAboveUphill < -same
  const reasons: WaterReason[] = []
  if (slope === null) reasons.push('post-fills-hole')
  else if (slope < -same) reasons.push('top-slopes-in')
  else if (slope <= same) reasons.push('top-is-level')
  if (fromUphill) reasons.push('rim-below-uphill-grade')
  if (heaped > same) reasons.push('heaped-over')
  return {
    end: reasons.length > 0 ? 'post' : 'ground',
    reasons,
    fromUphill,
    overRim: Math.max(0, -rimAboveDownhill) as Metres,
  }
}
