import type { WaterPath } from '../../engineering/moisture/waterPath.ts'
import { alongTo, placeOn } from '../../geometry/leaningPost.ts'
import { radiusAlong } from '../../geometry/radial.ts'
import { heightAt } from '../../geometry/surface.ts'
import type { PierFrame } from '../pierFrame.ts'

/** How far beyond the hole the way of water is drawn, and where a swale lies and how deep it is [m]: for the picture alone. Source: assumption. */
export const drawnWater = { beyond: 0.6, swaleAt: 0.9, swaleDepth: 0.15 } as const

type Point = readonly [r: number, y: number]

/** Where a face of the post, `at` from the middle of its foot in the plane straight downhill, passes the finished top or grade [m]. */
function faceOfPost({ spec, leaning, end, grade }: PierFrame, at: number): number {
  if (!leaning) return at
  const [cos, sin] = [Math.cos(spec.site.downhill), Math.sin(spec.site.downhill)]
  const [u, v] = [at * cos, at * sin]
  const [x, , z] = placeOn(leaning, u, alongTo(leaning, end.kind === 'top' ? end.surface : grade, u, v), v)
  return x * cos + z * sin
}

/**
 * The way that rain runs in the plane straight downhill, in order of flow; r negative uphill [m].
 * @param frame of the pier @param path where it ends
 */
export function waterLine(frame: PierFrame, path: WaterPath): Point[] {
  const { spec, end } = frame
  const { downhill, slope } = spec.site
  const rim = frame.profile.shaftRadius
  const post = Math.min(radiusAlong(frame.postOutline, Math.cos(downhill), Math.sin(downhill)), rim)
  /** Where the way meets the post or the bracket's landing, on the uphill and the downhill side: a leaning post has come over downhill. */
  const [innerUp, innerDown] = frame.bracketSite
    ? [Math.min(frame.innerRadius, rim), Math.min(frame.innerRadius, rim)]
    : [-faceOfPost(frame, -post), Math.min(faceOfPost(frame, post), rim)]
  const fall = spec.water.fall
  const ground = (r: number): number =>
    -slope * r - (fall === null ? 0 : (fall - (r < 0 ? -slope : slope)) * Math.max(0, Math.abs(r) - rim))
  const far = rim + drawnWater.beyond
  const at = (r: number): Point => [r, ground(r)]

  if (end.kind !== 'top') return path.end === 'post' ? [at(-far), at(-rim), at(-innerUp)] : [at(innerDown), at(rim), at(far)]
  const top = (r: number): number => heightAt(end.surface, r, 0)
  const onTop = (r: number): Point => [r, top(Math.abs(r))]
  if (path.end === 'ground') {
    if (spec.water.swale === 'yes') {
      const swale = -(rim + drawnWater.swaleAt)
      return [at(swale - drawnWater.beyond), [swale, ground(swale) - drawnWater.swaleDepth]]
    }
    return [onTop(innerDown), onTop(rim), at(rim), at(far)]
  }
  if (spec.top.heaped > 0) return [[-innerUp, top(innerUp) + spec.top.heaped], onTop(-innerUp)]
  if (!path.fromUphill) return [onTop(-rim), onTop(-innerUp)]
  return top(innerUp) < top(rim) ? [at(-far), at(-rim), onTop(-rim), onTop(-innerUp)] : [at(-far), at(-rim), onTop(-innerUp)]
}
