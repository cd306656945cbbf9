import type { Point3 } from '../../../core/geometry/placed.ts'
import { nativeRoles } from '../../../core/model/solid.ts'
import type { Zone } from '../../../core/model/zone.ts'
import type { PierExtent } from '../camera/pierExtent.ts'
import { bentZone } from '../pull/pullState.ts'
import type { Target } from '../pointing/sightLines.ts'
import type { DrawnPart, DrawnPier } from './drawnPier.ts'

/**
 * How a pier stands in the picture: where its axis meets grade on the site [m], how far its plan is turned there [rad], what of it is not
 * there yet, how far apart it is (0..1), and how far up what has let go stands [m].
 */
export type PlacedPier = Readonly<{
  at: Point3
  turn: number
  pier: DrawnPier
  hidden: ReadonlySet<string>
  lift: number
  rise: number
}>

/** The place of a pier that stands alone. */
export const alone = { at: [0, 0, 0], turn: 0 } as const

/** Where a point of a pier is on the site [m]. */
export function onSite({ at, turn }: Pick<PlacedPier, 'at' | 'turn'>, [x, y, z]: Point3): Point3 {
  const [c, s] = [Math.cos(turn), Math.sin(turn)]
  return [at[0] + c * x - s * z, at[1] + y, at[2] + s * x + c * z]
}

export const isShown = ({ pier, hidden }: PlacedPier, { id, role }: Zone): boolean =>
  (pier.look.soil || !nativeRoles.has(role)) && !hidden.has(id)

type Place = Readonly<{ x: number; y: number; z: number }>

/** How far a part is from where it stands in the ground [m]. */
export function offsetOf({ pier, lift, rise }: PlacedPier, { zone, goes }: Pick<DrawnPart, 'zone' | 'goes'>): Place {
  const [x, y, z] = pier.offsets.get(zone.id) ?? [0, 0, 0]
  return { x: x * lift, y: y * lift + (goes ? rise : 0), z: z * lift }
}

/** The body of a zone, without the piece that leaves it; undefined for a zone that is not drawn. */
export const bodyOf = ({ parts }: DrawnPier, id: string): DrawnPart | undefined =>
  parts.find(({ zone, isPiece }) => zone.id === id && !isPiece)

/** Bodies that can be seen and pointed at. */
export const targetsOf = (standing: PlacedPier): Target[] =>
  standing.pier.parts.flatMap((part) =>
    isShown(standing, part.zone) ? [{ id: part.zone.id, mesh: part.mesh, offset: offsetOf(standing, part) }] : [],
  )

/** Sizes of the pier with its parts lifted as they are. */
export function placedExtent({ pier, lift }: PlacedPier): PierExtent {
  if (lift === 0) return pier.extent
  const highest = pier.parts.reduce((most, { zone }) => Math.max(most, (pier.offsets.get(zone.id)?.[1] ?? 0) * lift), 0)
  return { ...pier.extent, lifted: highest }
}

/** What has left its place, has parted or has bent, by zone id: read off what is drawn. */
export function movedIn({ pier, rise }: PlacedPier): Readonly<{ displaced: string[]; parted: string[]; bent: string[] }> {
  if (rise <= 0) return { displaced: [], parted: [], bent: [] }
  const ids = (wanted: (part: DrawnPart) => boolean): string[] => pier.parts.filter(wanted).map(({ zone }) => zone.id)
  const bent = pier.way ? bentZone(pier.way.how) : null
  return {
    displaced: ids(({ goes, isPiece }) => goes && !isPiece),
    parted: ids(({ isPiece }) => isPiece),
    bent: ids(({ zone, isPiece }) => zone.id === bent && !isPiece),
  }
}
