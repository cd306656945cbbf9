import type { CubicMetres, SquareMetres } from '../units/quantity.ts'
import type { Measure, Role } from './solid.ts'
import type { LeaningPost } from '../geometry/leaningPost.ts'
import type { ZoneLabel } from './saidIds.ts'
import type { Corner } from '../geometry/corner.ts'
import type { ConvexSolid } from '../geometry/placed.ts'

/** A body swept about the axis: one polygon of fixed corners in the (r, y) half-plane at every plan angle. */
export type SweptZone = Readonly<{
  build: 'swept'
  id: string
  role: Role
  /** Key into the text table ("zones"). */
  label: ZoneLabel
  corners: readonly Corner[]
  /** Plan angles [rad] at which followed corners change their stretch, besides the corners of rectangles. */
  breaks: readonly number[]
  /** Zone of which this is a piece: shown and named as that one. */
  partOf?: string
  /** Volume of record, bars not taken off. */
  volume: Measure<CubicMetres>
  /** The share of `volume` below grade and inside the hole. 0 for native soil. */
  inHole: CubicMetres
  /** Area of the whole boundary. */
  surface: Measure<SquareMetres>
}>

/**
 * A convex part shown whole: bar, bolt, plate, leg, a post off plumb. Quantities take it off its host; the host's mesh keeps it in.
 */
export type PlacedZone = Readonly<{
  build: 'placed'
  id: string
  role: Role
  label: ZoneLabel
  solids: readonly ConvexSolid[]
  volume: Measure<CubicMetres>
  surface: Measure<SquareMetres>
  /** The share of `volume` below grade, inside the hole and in no other zone. 0 for steel, which lies in what holds it. */
  inHole: CubicMetres
  /** Zone id to the part of this zone's volume that lies inside that zone. */
  displaces: Readonly<Record<string, CubicMetres>>
  /** The post that it is, off plumb. */
  leaning?: LeaningPost
}>

export type Zone = SweptZone | PlacedZone

/** A clipped sheet, not a body: a level or a plane parallel to grade, from the hole's middle to the block's edge. */
export type Sheet = Readonly<{ id: 'water-table' | 'frost-line'; corners: readonly [Corner, Corner] }>
