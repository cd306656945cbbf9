import { sectionPolygons } from '../../core/geometry/section.ts'
import type { Role } from '../../core/model/solid.ts'
import type { PierSpec } from '../../core/model/spec.ts'
import { derived } from '../derived.ts'

/** A section the size of a stamp, as numbers: a window and bodies in whole millimetres, right and down. No markup, so nothing in it can act. */
export type Thumbnail = Readonly<{
  box: readonly [x: number, y: number, width: number, height: number]
  bodies: readonly (readonly [role: string, points: readonly number[]])[]
}>

const millimetres = (value: number): number => Math.round(value * 1000) + 0

/** The pier cut along its fall, from below its bottom to a hand over grade. */
export const thumbnailOf = (spec: PierSpec): Thumbnail => {
  const polygons = sectionPolygons(derived(spec).zones, spec.site.downhill, { cutPost: false })
  const { diameter, depth } = spec.hole
  const half = Math.max(1.05 * diameter, 0.55 * (spec.hole.bell?.diameter ?? 0), 0.5 * depth)
  const high = Math.min(0.42 * depth, Math.max(spec.post.heightAboveGrade, 0.2 * depth))
  return {
    box: [-half, -high, 2 * half, high + 1.08 * depth].map(millimetres) as [number, number, number, number],
    bodies: polygons.map(({ role, points }) => [role, points.flatMap(([right, up]) => [millimetres(right), millimetres(-up)])]),
  }
}

const roles: ReadonlySet<string> = new Set<Role>([
  'topsoil',
  'soil',
  'soil-lower',
  'backfill',
  'granular',
  'gravel',
  'mulch',
  'dry-mix',
  'concrete',
  'flowable-fill',
  'wood',
  'bar',
  'steel',
])
const isNumbers = (value: unknown): value is readonly number[] => Array.isArray(value) && value.every((one) => Number.isFinite(one))

/** Only what can be drawn is taken from a store. */
export const isThumbnail = (value: unknown): value is Thumbnail =>
  typeof value === 'object' &&
  value !== null &&
  'box' in value &&
  isNumbers(value.box) &&
  value.box.length === 4 &&
  'bodies' in value &&
  Array.isArray(value.bodies) &&
  value.bodies.every((body: unknown) => Array.isArray(body) && body.length === 2 && roles.has(String(body[0])) && isNumbers(body[1]))
