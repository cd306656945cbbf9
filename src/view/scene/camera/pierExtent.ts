import { heightAt, plane, type Surface } from '../../../core/geometry/surface.ts'
import type { PierResult } from '../../../core/model/result.ts'
import { type Mesh, nativeRoles } from '../../../core/model/solid.ts'
import type { PierSpec } from '../../../core/model/spec.ts'

/** Sizes [m] that the camera, the light and the floor go by; heights are signed. */
export type PierExtent = Readonly<{
  /** Half the side of the block. */
  half: number
  bottom: number
  grade: Surface
  /** Highest grade on the block. */
  groundTop: number
  holeRadius: number
  holeBottom: number
  /** Top of what was placed in the hole, and of bracket steel. */
  pierTop: number
  postTop: number
  /** How far up the highest part is lifted now. */
  lifted: number
}>

/** The finished ground of a site. */
export const gradeOf = ({ slope, downhill }: PierSpec['site']): Surface =>
  plane(0, -slope * Math.cos(downhill), -slope * Math.sin(downhill))

/** Read off the meshes on show, so that nothing here repeats how zones are built. */
export function pierExtent({ zones, spec }: PierResult, meshOf: (id: string) => Mesh | null): PierExtent {
  const { downhill } = spec.site
  const grade = gradeOf(spec.site)
  let half = 0
  let bottom = -spec.hole.depth
  let groundTop = 0
  let pierTop = 0
  let postTop = 0
  for (const zone of zones) {
    const positions = meshOf(zone.id)?.positions
    if (!positions) continue
    const isNative = nativeRoles.has(zone.role)
    for (let i = 0; i < positions.length; i += 3) {
      const y = positions[i + 1] ?? 0
      if (isNative) {
        half = Math.max(half, Math.abs(positions[i] ?? 0), Math.abs(positions[i + 2] ?? 0))
        bottom = Math.min(bottom, y)
        groundTop = Math.max(groundTop, y)
      } else if (zone.role === 'wood') postTop = Math.max(postTop, y)
      else pierTop = Math.max(pierTop, y)
    }
  }
  const mouth = Math.max(spec.hole.diameter, spec.hole.bell?.diameter ?? 0, spec.hole.flare?.diameter ?? 0) / 2
  return {
    half,
    bottom,
    grade,
    groundTop: Math.max(groundTop, heightAt(grade, half, downhill + Math.PI)),
    holeRadius: mouth,
    holeBottom: -spec.hole.depth,
    pierTop,
    postTop,
    lifted: 0,
  }
}

/** Heights between which parts stand, and how far they reach from the axis [m]. */
export type PartExtent = Readonly<{ low: number; high: number; radius: number }>

/** Round parts as they are drawn; null when none of them is. */
export function partExtent(ids: readonly string[], meshOf: (id: string) => Mesh | null): PartExtent | null {
  let low = Infinity
  let high = -Infinity
  let radius = 0
  for (const id of ids) {
    const positions = meshOf(id)?.positions ?? []
    for (let i = 0; i < positions.length; i += 3) {
      const y = positions[i + 1] ?? 0
      low = Math.min(low, y)
      high = Math.max(high, y)
      radius = Math.max(radius, Math.hypot(positions[i] ?? 0, positions[i + 2] ?? 0))
    }
  }
  return low <= high ? { low, high, radius } : null
}
