import type { Pixel } from '../../section/ink.ts'
import { type Frame, project, rayThrough } from '../camera/lens.ts'
import { type Hit, nearestHit, type Target } from '../pointing/nearestHit.ts'

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
    const [px, py] = project(pose, viewport, point)
    rayThrough(pose, viewport, px, py, this.ray)
    const [ex, ey, ez, dx, dy, dz] = this.ray as unknown as [number, number, number, number, number, number]
    const toPoint = Math.hypot(point[0] - ex, point[1] - ey, point[2] - ez)
    const isShown = nearestHit(this.targets(), this.ray, this.hit).distance * Math.hypot(dx, dy, dz) > toPoint - slack
    this.shown.set(key, isShown)
    return isShown
  }
}
