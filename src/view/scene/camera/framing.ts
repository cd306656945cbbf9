import { type Pose, projectPoint, type Viewport } from './lens.ts'

/** Part of the picture, in pixels from the upper left, that the pier shall fill. */
export type SafeArea = Readonly<{ left: number; top: number; right: number; bottom: number }>

export type Extent = { left: number; top: number; right: number; bottom: number }

type Point = readonly [number, number, number]

/** Where a picture is taken from, in which perspective, and what it must hold [rad, m]. */
export type Aim = Readonly<{ azimuth: number; pitch: number; perspective: number; points: readonly Point[] }>

/** Box on the screen round points [m]. */
export function extentOf(points: readonly Point[], pose: Pose, viewport: Viewport): Extent {
  const extent: Extent = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity }
  for (const point of points) {
    const [px, py] = projectPoint(pose, viewport, point)
    extent.left = Math.min(extent.left, px)
    extent.right = Math.max(extent.right, px)
    extent.top = Math.min(extent.top, py)
    extent.bottom = Math.max(extent.bottom, py)
  }
  return extent
}

/** Middle of the box round points [m]. */
const middleOf = (points: readonly Point[]): Point => {
  const [x, y, z] = [0, 1, 2].map((k) => {
    const along = points.map((point) => point[k] as number)
    return (Math.min(...along) + Math.max(...along)) / 2
  }) as [number, number, number]
  return [x, y, z]
}

/** The pose of an aim at which its points just fill the safe area, in its middle. */
export function framed({ points, azimuth, pitch, perspective }: Aim, viewport: Viewport, safe: SafeArea): Pose {
  const target = middleOf(points)
  const reach = Math.max(...points.map(([x, y, z]) => Math.hypot(x - target[0], y - target[1], z - target[2])))
  const room = { width: Math.max(40, safe.right - safe.left), height: Math.max(40, safe.bottom - safe.top) }
  const at = (distance: number): Pose => ({ azimuth, pitch, distance, target, shift: [0, 0], perspective })
  let near = reach * 1.15
  let far = reach * 60
  for (let i = 0; i < 40; i++) {
    const distance = Math.sqrt(near * far)
    const extent = extentOf(points, at(distance), viewport)
    if (extent.right - extent.left <= room.width && extent.bottom - extent.top <= room.height) far = distance
    else near = distance
  }
  const pose = at(far)
  const extent = extentOf(points, pose, viewport)
  return {
    ...pose,
    shift: [
      (safe.left + safe.right) / 2 - (extent.left + extent.right) / 2,
      (safe.top + safe.bottom) / 2 - (extent.top + extent.bottom) / 2,
    ],
  }
}
