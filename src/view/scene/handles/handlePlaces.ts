import type { Cut } from '../../../core/model/solid.ts'
import type { PierExtent } from '../camera/pierExtent.ts'
import type { Pixel } from '../../section/ink.ts'
import { heightAt } from '../../../core/geometry/surface.ts'
import { radians } from '../../../core/units/quantity.ts'
import { type Pose, projectPoint, rayThrough, type Viewport } from '../camera/lens.ts'
import { widestCut } from '../../../state/actions/view.ts'

/** Which handle of the cut: one of its two sides, or its middle, which turns the whole. */
export type HandleId = 'left' | 'right' | 'turn'

const turn = 2 * Math.PI
/** The short way from one plan angle to another [rad]. */
export const shortWay = (from: number, to: number): number => ((((to - from) % turn) + 1.5 * turn) % turn) - Math.PI

/**
 * The cut after one of its handles has moved by `by` radians of plan angle since the drag began: a side moves alone, the other
 * stays; the middle takes both along. The opening ends at whole and at its widest.
 */
export function draggedCut(begun: Cut, handle: HandleId, by: number): Cut {
  if (handle === 'turn') return { open: begun.open, facing: radians(begun.facing + by) }
  const outward = handle === 'left' ? 1 : -1
  const open = Math.min(widestCut, Math.max(0, begun.open + outward * by))
  return { open: radians(open), facing: radians(begun.facing + (outward * (open - begun.open)) / 2) }
}

/** Plan angle at which a handle stands. */
export const handleAngle = ({ open, facing }: Cut, handle: HandleId): number =>
  handle === 'turn' ? facing : facing + (handle === 'left' ? open / 2 : -open / 2)

/** Radius of the block's edge in a plan direction [m]. */
const edgeRadius = (half: number, theta: number): number => half / Math.max(Math.abs(Math.cos(theta)), Math.abs(Math.sin(theta)))

/** Radius of the arc on the floor along which the cut is turned, in halves of the block's side. */
const turnRadius = 0.78

/** Points of that arc, from one side of the cut to the other. */
export function turnArc(cut: Cut, extent: PierExtent): (readonly [number, number, number])[] {
  const count = Math.max(2, Math.ceil(cut.open / 0.12))
  const r = turnRadius * extent.half
  return Array.from({ length: count + 1 }, (_, i) => {
    const theta = cut.facing + cut.open * (i / count - 0.5)
    return [r * Math.cos(theta), extent.bottom, r * Math.sin(theta)] as const
  })
}

/** Where a handle is in space: a side's at the block's edge on the ground, the turning one on the floor before the opening. */
export function handlePlace(cut: Cut, handle: HandleId, extent: PierExtent): readonly [number, number, number] {
  const theta = handleAngle(cut, handle)
  const isSide = handle !== 'turn'
  const r = isSide ? edgeRadius(extent.half, theta) : turnRadius * extent.half
  return [r * Math.cos(theta), isSide ? heightAt(extent.grade, r, theta) : extent.bottom, r * Math.sin(theta)]
}

/** Two sides that stand at one place, as in a whole block, are drawn side by side [px]. */
const leastApart = 52

/** Middles of the three handles on the screen, apart from each other; null for one that is out of the picture. `foot` px at the bottom are taken. */
export function handlePixels(
  cut: Cut,
  extent: PierExtent,
  pose: Pose,
  viewport: Viewport,
  foot: number,
): Readonly<Record<HandleId, Pixel | null>> {
  const slack = 30
  const at = (handle: HandleId): [number, number] | null => {
    const [x, y] = projectPoint(pose, viewport, handlePlace(cut, handle, extent))
    const [cx, cy] = [Math.min(Math.max(x, 24), viewport.width - 24), Math.min(Math.max(y, 24), viewport.height - foot - 24)]
    return Math.hypot(cx - x, cy - y) > slack ? null : [cx, cy]
  }
  const left = at('left')
  const right = at('right')
  if (left && right && Math.hypot(left[0] - right[0], left[1] - right[1]) < leastApart) {
    const middle = (left[0] + right[0]) / 2
    left[0] = middle - leastApart / 2
    right[0] = middle + leastApart / 2
  }
  return { left, right, turn: at('turn') }
}

/** A side of the cut that lies behind the pier as it is seen. */
export const isFar = (cut: Cut, handle: HandleId, { azimuth }: Pose): boolean =>
  Math.abs(shortWay(azimuth, handleAngle(cut, handle))) > Math.PI * 0.6

/** Seen shallower than this the ground can't be aimed at; the way across the screen counts instead [rad]. */
const shallow = 0.24
const ray = new Float64Array(6)

/** Plan angle [rad] moved when the pointer goes from one pixel to another with a handle in hand. */
export function angleDragged(
  from: Pixel,
  to: Pixel,
  cut: Cut,
  handle: HandleId,
  extent: PierExtent,
  pose: Pose,
  viewport: Viewport,
): number {
  const y = handlePlace(cut, handle, extent)[1]
  if (pose.pitch > shallow) {
    const a = angleAt(from, y, pose, viewport)
    const b = angleAt(to, y, pose, viewport)
    if (a !== null && b !== null) return shortWay(a, b)
  }
  const radius = Math.max(
    40,
    Math.abs(
      projectPoint(pose, viewport, [0, y, 0])[0] -
        projectPoint(pose, viewport, [extent.half * Math.sin(pose.azimuth), y, -extent.half * Math.cos(pose.azimuth)])[0],
    ),
  )
  return ((to[0] - from[0]) / radius) * (isFar(cut, handle, pose) ? 1 : -1)
}

/** Plan angle of the point at height `y` under a pixel; null when the sight line does not come down to it. */
function angleAt([px, py]: Pixel, y: number, pose: Pose, viewport: Viewport): number | null {
  rayThrough(pose, viewport, px, py, ray)
  const t = (y - (ray[1] as number)) / (ray[4] as number)
  if (!(t > 0)) return null
  return Math.atan2((ray[2] as number) + t * (ray[5] as number), (ray[0] as number) + t * (ray[3] as number))
}
