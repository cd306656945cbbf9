import type { Zone } from '../../../core/model/zone.ts'
import type { Mesh } from '../../../core/model/solid.ts'
import type { Pixel } from '../../section/ink.ts'
import type { Side } from '../../section/labelColumns.ts'
import { type FacePlace, sectionAnchors } from '../../section/sectionAnchors.ts'

/** A point of a part that a leader may end on. On a cut face it is kept as such, so that it goes along when the cut turns. */
export type Anchor = Readonly<{ face: Side | null; place: FacePlace }>

export type Seen = Readonly<{
  faces: Readonly<Record<Side, number>> | null
  /** Pixel of a place of this zone, lifted as it stands now. */
  project(zone: string, place: FacePlace): Pixel
  /** Is this zone the first thing under the pixel? */
  isFirst(zone: string, at: Pixel): boolean
  /** Lowest point worth pointing at [m]. */
  floor: number
  reach?: number | undefined
}>

/** Points of a zone that can be seen, the best first: on its cut faces if they show, else on its outside. */
export function visibleAnchors(zone: Zone, mesh: Mesh, seen: Seen): Anchor[] {
  const found: Anchor[] = []
  if (seen.faces)
    for (const face of ['left', 'right'] as const) {
      const place = sectionAnchors(zone, seen.faces[face], seen.floor, seen.reach).find((one) =>
        seen.isFirst(zone.id, seen.project(zone.id, one)),
      )
      if (place) found.push({ face: zone.build === 'swept' ? face : null, place })
    }
  return found.length > 0 ? found : outsideAnchors(zone.id, mesh, seen)
}

const tries = 36
/** A leader ends this far inside what is seen of a part [px]; on a thin part less far, and on what is seen edge-on nowhere. */
const [wellInside, justInside] = [7, 1.5]

/** The middle of an outside face that can be seen, inside what is seen of the part and nearest to the middle of all that can. */
function outsideAnchors(id: string, { positions, indices, outsideCount }: Mesh, seen: Seen): Anchor[] {
  const triangles = outsideCount / 3
  const step = Math.max(1, Math.floor(triangles / tries))
  const shown: { place: FacePlace; at: Pixel }[] = []
  for (let t = Math.floor(step / 2); t < triangles; t += step) {
    const [a, b, c] = [0, 1, 2].map((k) => 3 * (indices[3 * t + k] as number)) as [number, number, number]
    const middle = [0, 1, 2].map(
      (k) => ((positions[a + k] as number) + (positions[b + k] as number) + (positions[c + k] as number)) / 3,
    ) as [number, number, number]
    const place: FacePlace = [Math.atan2(middle[2], middle[0]), Math.hypot(middle[0], middle[2]), middle[1]]
    const at = seen.project(id, place)
    if (seen.isFirst(id, at)) shown.push({ place, at })
  }
  if (shown.length === 0) return []
  const x = shown.reduce((sum, s) => sum + s.at[0], 0) / shown.length
  const y = shown.reduce((sum, s) => sum + s.at[1], 0) / shown.length
  shown.sort((p, q) => Math.hypot(p.at[0] - x, p.at[1] - y) - Math.hypot(q.at[0] - x, q.at[1] - y))
  const isInside = ([px, py]: Pixel, by: number): boolean =>
    [-by, by].every((step) => seen.isFirst(id, [px + step, py]) && seen.isFirst(id, [px, py + step]))
  const best = shown.find(({ at }) => isInside(at, wellInside)) ?? shown.find(({ at }) => isInside(at, justInside))
  return best ? [{ face: null, place: best.place }] : []
}
