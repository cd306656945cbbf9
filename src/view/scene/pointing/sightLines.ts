import type { Mesh } from '../../../core/model/solid.ts'
import type { Pixel } from '../../section/ink.ts'
import { type Frame, projectPoint, rayThrough } from '../camera/lens.ts'

export type Target = Readonly<{ id: string; mesh: Mesh; offset: Readonly<{ x: number; y: number; z: number }> }>
export type Hit = { id: string | null; distance: number }

/**
 * The first body that a sight line meets. `ray` is [ex, ey, ez, dx, dy, dz]; `distance` counts lengths of its direction.
 * A plain loop over the core's own arrays (Moeller and Trumbore): nothing is allocated, no three object is asked.
 */
export function nearestHit(targets: Iterable<Target>, ray: Float64Array, hit: Hit): Hit {
  hit.id = null
  hit.distance = Infinity
  const dx = ray[3] as number
  const dy = ray[4] as number
  const dz = ray[5] as number
  for (const { id, mesh, offset } of targets) {
    const { positions: p, indices } = mesh
    const ox = (ray[0] as number) - offset.x
    const oy = (ray[1] as number) - offset.y
    const oz = (ray[2] as number) - offset.z
    for (let i = 0; i < indices.length; i += 3) {
      const a = 3 * (indices[i] as number)
      const b = 3 * (indices[i + 1] as number)
      const c = 3 * (indices[i + 2] as number)
      const ax = p[a] as number
      const ay = p[a + 1] as number
      const az = p[a + 2] as number
      const ux = (p[b] as number) - ax
      const uy = (p[b + 1] as number) - ay
      const uz = (p[b + 2] as number) - az
      const vx = (p[c] as number) - ax
      const vy = (p[c + 1] as number) - ay
      const vz = (p[c + 2] as number) - az
      const px = dy * vz - dz * vy
      const py = dz * vx - dx * vz
      const pz = dx * vy - dy * vx
      const det = ux * px + uy * py + uz * pz
      // Only faces that look at the eye: bodies are closed.
      if (det < 1e-14) continue
      const tx = ox - ax
      const ty = oy - ay
      const tz = oz - az
      const u = tx * px + ty * py + tz * pz
      if (u < 0 || u > det) continue
      const qx = ty * uz - tz * uy
      const qy = tz * ux - tx * uz
      const qz = tx * uy - ty * ux
      const v = dx * qx + dy * qy + dz * qz
      if (v < 0 || u + v > det) continue
      const t = (vx * qx + vy * qy + vz * qz) / det
      if (t > 1e-9 && t < hit.distance) {
        hit.distance = t
        hit.id = id
      }
    }
  }
  return hit
}

/** A finger's breadth: what stands no farther before a point does not hide it [m]. */
const slack = 0.03

/** Asks what stands first on the way to a pixel or to a point. */
export class SightLines {
  private readonly ray = new Float64Array(6)
  private readonly hit: Hit = { id: null, distance: 0 }
  private readonly shown = new Map<string, boolean>()

  constructor(private readonly targets: () => readonly Target[]) {}

  /** The picture has changed: what could be seen is asked anew. */
  forget(): void {
    this.shown.clear()
  }

  /** The first zone under a pixel, or null. */
  firstUnder([x, y]: Pixel, { pose, viewport }: Frame, targets: readonly Target[] = this.targets()): string | null {
    rayThrough(pose, viewport, x, y, this.ray)
    return nearestHit(targets, this.ray, this.hit).id
  }

  /** Nothing stands before the point at this plan angle, radius and height. Asked once between two rests. */
  isShown(theta: number, r: number, y: number, { pose, viewport }: Frame): boolean {
    const key = `${theta.toFixed(3)} ${r.toFixed(3)} ${y.toFixed(3)}`
    const known = this.shown.get(key)
    if (known !== undefined) return known
    const point = [r * Math.cos(theta), y, r * Math.sin(theta)] as const
    const [px, py] = projectPoint(pose, viewport, point)
    rayThrough(pose, viewport, px, py, this.ray)
    const [ex, ey, ez, dx, dy, dz] = this.ray as unknown as [number, number, number, number, number, number]
    const toPoint = Math.hypot(point[0] - ex, point[1] - ey, point[2] - ez)
    const isShown = nearestHit(this.targets(), this.ray, this.hit).distance * Math.hypot(dx, dy, dz) > toPoint - slack
    this.shown.set(key, isShown)
    return isShown
  }
}
