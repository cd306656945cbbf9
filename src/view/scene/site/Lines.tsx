import { useMemo } from 'react'
import type { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js'
import type { DrawnPart, DrawnSheet } from '../pier/drawnPier.ts'
import { dashes, guideLines } from '../pier/lines.ts'
import type { LineSet } from '../pier/lineSet.ts'
import { isShown, offsetOf, type PlacedPier } from '../pier/placedPier.ts'
import { linesOnSite, writeLines } from './buffers.ts'
import { type SiteKit, useHeld } from './kit.ts'

type Props = Readonly<{ places: readonly PlacedPier[]; kit: SiteKit; pointedAt: string | null }>

const nowhere = { x: 0, y: 0, z: 0 } as const

/**
 * All lines of a site, each kind in one draw: dark round cut faces in a light casing, thin on hard edges, thick where the cut meets grade,
 * water blue and frost dashed, and when piers are taken apart the way of each part.
 */
export function Lines({ places, kit: { lines }, pointedAt }: Props) {
  const drawn = useMemo(() => {
    const whole = (of: (standing: PlacedPier) => Float32Array): Float32Array =>
      linesOnSite(places.map((standing) => ({ standing, segments: of(standing), off: nowhere })))
    const together = (of: (pier: PlacedPier['pier']) => Float32Array | undefined): Float32Array =>
      whole(({ pier, lift }) => (lift === 0 && of(pier)) || none)
    const sheet = (wanted: DrawnSheet['id']) => together(({ sheets }) => sheets.find(({ id }) => id === wanted)?.line)
    return {
      outlines: ofParts(places, ({ mesh }) => mesh.outline),
      edges: ofParts(places, ({ edges }) => edges),
      ground: together(({ ground }) => ground),
      water: sheet('water-table'),
      frost: sheet('frost-line'),
      guides: whole(({ pier: { result, offsets, look }, lift }) =>
        lift > 0 ? dashes(guideLines(result.zones, offsets, lift, look.cut), 0.03, 0.025) : none,
      ),
    }
  }, [places])
  const lit = useMemo(
    () => ofParts(places, ({ zone, mesh, edges }) => (zone.id !== pointedAt ? none : mesh.outline.length > 0 ? mesh.outline : edges)),
    [places, pointedAt],
  )
  const outlines = useLines(drawn.outlines)
  const water = useLines(drawn.water)
  const frost = useLines(drawn.frost)
  return (
    <>
      <Line geometry={outlines} material={lines.casing} order={1} />
      <Line geometry={useLines(drawn.edges)} material={lines.edge} order={2} />
      <Line geometry={useLines(drawn.guides)} material={lines.guide} order={2} />
      <Line geometry={outlines} material={lines.cut} order={3} />
      <Line geometry={useLines(drawn.ground)} material={lines.ground} order={4} />
      <Line geometry={useLines(lit)} material={lines.lit} order={5} />
      <Line geometry={water} material={lines.casing} order={6} />
      <Line geometry={frost} material={lines.casing} order={6} />
      <Line geometry={water} material={lines.water} order={7} />
      <Line geometry={frost} material={lines.frost} order={7} />
    </>
  )
}

const none = new Float32Array()

/** Lines of the parts that are shown, where each is now. */
const ofParts = (places: readonly PlacedPier[], of: (part: DrawnPart) => Float32Array): Float32Array =>
  linesOnSite(
    places.flatMap((standing) =>
      standing.pier.parts.flatMap((part) =>
        isShown(standing, part.zone) ? [{ standing, segments: of(part), off: offsetOf(standing, part) }] : [],
      ),
    ),
  )

const useLines = (segments: Float32Array): LineSegmentsGeometry =>
  useHeld(segments, (before: LineSegmentsGeometry | null) => writeLines(segments, before))

type LineProps = Readonly<{ geometry: LineSegmentsGeometry; material: LineSet['cut']; order: number }>

/** Lines of a set width on the screen, in the order in which kinds lie over each other. */
const Line = ({ geometry, material, order }: LineProps) => (
  <lineSegments2 geometry={geometry} material={material} renderOrder={order} frustumCulled={false} visible={geometry.instanceCount > 0} />
)
