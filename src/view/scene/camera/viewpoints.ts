import { heightAt } from '../../../core/geometry/surface.ts'
import type { Viewpoint } from '../../../state/appState.ts'
import type { Aim } from './framing.ts'
import type { PartExtent, PierExtent } from './pierExtent.ts'

type Point = readonly [number, number, number]
const degrees = Math.PI / 180

/** Below this width [px] labels and the whole block do not fit side by side: the hole is framed instead. */
export const narrowWidth = 560

/** How much of the post above the pier belongs into the picture, as a share of the hole's depth: it runs out at the top. */
const postShown = 0.3

/** Corners of the block at grade and at its underside, and the post as far as it is shown. */
function blockPoints(extent: PierExtent): Point[] {
  const { half, bottom, grade } = extent
  const corners = [1, 3, 5, 7].map((n) => [half * Math.SQRT2, (n * Math.PI) / 4] as const)
  const top = Math.min(extent.postTop, Math.max(extent.groundTop, extent.pierTop) + postShown * -extent.holeBottom)
  return [
    ...corners.flatMap(([r, theta]): Point[] => {
      const x = r * Math.cos(theta)
      const z = r * Math.sin(theta)
      return [
        [x, heightAt(grade, r, theta), z],
        [x, bottom, z],
      ]
    }),
    [0, top + extent.lifted, 0],
    ...(extent.lifted > 0 ? ring(extent.holeRadius, Math.max(0, extent.pierTop) + extent.lifted) : []),
  ]
}

const ring = (radius: number, y: number): Point[] =>
  Array.from({ length: 12 }, (_, i): Point => [radius * Math.cos((i * Math.PI) / 6), y, radius * Math.sin((i * Math.PI) / 6)])

/** The hole with a collar of soil: what matters when the screen is too narrow for the whole block. */
function holePoints(extent: PierExtent): Point[] {
  const { holeRadius, holeBottom } = extent
  const top = Math.min(extent.postTop, Math.max(extent.groundTop, extent.pierTop) + 0.22 * -holeBottom)
  return [...ring(holeRadius * 1.12, holeBottom * 1.1), ...ring(holeRadius * 1.12, 0), [0, top, 0]]
}

/** Crown, bracket and ground round the post. */
function topPoints(extent: PierExtent): Point[] {
  const { holeRadius } = extent
  const top = Math.min(extent.postTop, extent.pierTop + 0.9 * holeRadius)
  return [...ring(holeRadius * 1.7, -0.9 * holeRadius), ...ring(holeRadius * 1.5, extent.groundTop * 0.4), [0, top, 0]]
}

/** A part with pier round it on all sides. A post is followed no farther up than in the view of the top. */
function partPoints({ holeRadius, pierTop, postTop }: PierExtent, { low, high, radius }: PartExtent): Point[] {
  const around = Math.max(radius, holeRadius) * 1.25
  const top = Math.min(high, postTop > 0 ? Math.min(postTop, pierTop + 0.9 * holeRadius) : high)
  return [...ring(around, low - 0.6 * holeRadius), ...ring(around, Math.max(top, low) + 0.6 * holeRadius)]
}

const turn = 2 * Math.PI

/** From this side, but far enough round toward the opening that the cut shows. */
function towardCut(side: number, facing: number): number {
  const way = ((((facing - side) % turn) + 1.5 * turn) % turn) - Math.PI
  return side + Math.min(34 * degrees, Math.max(-34 * degrees, way))
}

/**
 * Where a named view stands and what it must hold. `facing` of the cut and `downhill` of the ground are plan angles [rad];
 * `isNarrow` for a screen on which the hole, not the block, is framed; `part` is what the close-up is of, the top of the pier without.
 */
export function aimAt(
  name: Viewpoint,
  extent: PierExtent,
  facing: number,
  downhill: number,
  isNarrow: boolean,
  part: PartExtent | null = null,
): Aim {
  const whole = isNarrow && extent.lifted === 0 ? holePoints(extent) : blockPoints(extent)
  switch (name) {
    case 'section':
      return { azimuth: facing, pitch: 0, perspective: 0, points: whole }
    case 'three-quarter':
      return { azimuth: facing - 27 * degrees, pitch: 23 * degrees, perspective: 1, points: whole }
    case 'uphill':
      return { azimuth: towardCut(downhill + Math.PI, facing), pitch: 20 * degrees, perspective: 0, points: blockPoints(extent) }
    case 'downhill':
      return { azimuth: towardCut(downhill, facing), pitch: 16 * degrees, perspective: 0, points: blockPoints(extent) }
    case 'plan':
      return { azimuth: facing, pitch: 90 * degrees, perspective: 0, points: blockPoints(extent) }
    case 'close-up':
      return {
        azimuth: facing - 20 * degrees,
        pitch: 17 * degrees,
        perspective: 1,
        points: part ? partPoints(extent, part) : topPoints(extent),
      }
  }
}
