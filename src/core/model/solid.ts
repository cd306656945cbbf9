import type { ZoneLabel } from './saidIds.ts'
import type { CubicMetres, Radians } from '../units/quantity.ts'

/** What a zone is made of, for colour, hatch, unit weight and legend. Views map every role; the compiler checks it. */
export type Role =
  | 'topsoil'
  | 'soil'
  | 'soil-lower'
  | 'backfill'
  | 'granular'
  | 'gravel'
  | 'mulch'
  | 'dry-mix'
  | 'concrete'
  | 'flowable-fill'
  | 'wood'
  | 'bar'
  | 'steel'

/** Ground as it was found, from the top down. */
export const nativeRoles: ReadonlySet<Role> = new Set<Role>(['topsoil', 'soil', 'soil-lower'])
const cast = ['concrete', 'dry-mix', 'flowable-fill'] as const satisfies readonly Role[]
export type CastRole = (typeof cast)[number]
/** What is mixed with cement and cast against the sides of the hole. */
export const castRoles: ReadonlySet<Role> = new Set<Role>(cast)
export const isCast = (role: Role): role is CastRole => castRoles.has(role)

export type Measure<T extends number = CubicMetres> = Readonly<{ value: T; method: 'closed form' | 'integrated' }>

/** Sector taken out of the picture: `open` wide (0 = whole), centred on the plan direction `facing`. */
export type Cut = Readonly<{ open: Radians; facing: Radians }>

/**
 * Plain vertex arrays of one zone. Two index ranges: `outside` faces first, then the `section` faces made by the cut.
 * positions, normals: [n][3] metres, outward; indices: triangles, anticlockwise seen from outside.
 */
export type Mesh = Readonly<{
  positions: Float32Array
  normals: Float32Array
  indices: Uint32Array
  /** Number of indices that belong to outside faces; the rest are section faces. */
  outsideCount: number
  /** Dark cut line: closed outlines of the section faces, as line segments [n][2][3] metres. */
  outline: Float32Array
}>

export type SectionPolygon = Readonly<{
  zone: string
  role: Role
  label: ZoneLabel
  /** False for parts seen beyond or left uncut (bars, bolts, post when whole). */
  cut: boolean
  /** [n][2] metres (along the section to the right, up), closed, anticlockwise. */
  points: readonly (readonly [number, number])[]
}>
