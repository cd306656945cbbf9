import { memo, useLayoutEffect } from 'react'
import type { BufferAttribute } from 'three'
import { useHeld } from '../site/kit.ts'
import { cornerShade, noWater } from '../materials/sharedUniforms.ts'
import { lookKey, type ZoneMaterials, zoneMaterials } from '../materials/zoneMaterials.ts'
import type { PierKit } from '../site/kit.ts'
import { toBufferGeometry, toLineGeometry } from './buffers.ts'
import type { DrawnPart, DrawnPier, DrawnSheet } from './drawnPier.ts'
import { dashes, guideLines } from './lines.ts'
import { showWet } from './showWet.ts'
import { isShown, offsetOf, type PlacedPier } from './placedPier.ts'

type Props = Readonly<{ standing: PlacedPier; kit: PierKit; isFull: boolean; pointedAt: string | null }>

/** A pier: its bodies, the lines where its cut meets grade, water and frost, and when it is taken apart the way of each part. */
export function Pier({ standing, kit, isFull, pointedAt }: Props) {
  const { pier, lift, rise } = standing
  useWhatMaterialsRead(pier, kit)
  return (
    <>
      {pier.parts.map((part) => (
        <Part
          key={`${part.zone.id} ${part.isPiece}`}
          pier={pier}
          part={part}
          kit={kit}
          isFull={isFull}
          isVisible={isShown(standing, part.zone)}
          isLit={part.zone.id === pointedAt}
          bend={part.share ? rise : 0}
          {...offsetOf(standing, part)}
        />
      ))}
      <Lines segments={pier.ground} material={kit.lines.ground} order={4} isVisible={lift === 0} />
      {pier.sheets.map((sheet) => (
        <SheetLine key={sheet.id} sheet={sheet} kit={kit} isVisible={lift === 0} />
      ))}
      {lift > 0 && <Guides pier={pier} lift={lift} kit={kit} />}
    </>
  )
}

/** Writes what all materials of a pier read into the values they share. */
function useWhatMaterialsRead({ result, look, post }: DrawnPier, { shared, bare }: PierKit): void {
  const { spec, zones } = result
  useLayoutEffect(() => {
    const { slope, downhill, waterTable } = spec.site
    shared.uGround.value.set(0, -slope * Math.cos(downhill), -slope * Math.sin(downhill), 0)
    shared.uWater.value = look.water && waterTable !== null ? -waterTable : noWater
    shared.uCorner.value = cornerShade(look.cut.open)
    shared.uRight.value.set(Math.sin(look.cut.facing), -Math.cos(look.cut.facing))
    bare.value = Math.max(spec.hole.diameter, spec.hole.flare?.diameter ?? 0) / 2 + 0.04
  }, [spec, look, shared, bare])
  useLayoutEffect(() => showWet(shared, spec, zones, post, look.wetness), [shared, spec, zones, post, look.wetness])
}

type PartProps = Readonly<{
  pier: DrawnPier
  part: DrawnPart
  kit: PierKit
  isFull: boolean
  isVisible: boolean
  isLit: boolean
  /** How far up steel is bent [m]. */
  bend: number
  x: number
  y: number
  z: number
}>

/** One body: its faces, the dark line round its cut faces in a light casing, thin lines on its hard edges, and a rim round steel. */
const Part = memo(function Part({ pier, part, kit, isFull, isVisible, isLit, bend, x, y, z }: PartProps) {
  const { zone, mesh } = part
  const { lines } = kit
  const materials = useMaterials(part, pier, kit, isFull)
  const body = useHeld(mesh, (before: ReturnType<typeof toBufferGeometry> | null) => toBufferGeometry(mesh, before))
  const outline = useLineGeometry(mesh.outline)
  const edges = useLineGeometry(part.edges)
  const isCut = mesh.outline.length > 0
  useLayoutEffect(() => materials.setLit(isLit ? 1 : 0), [materials, isLit])
  useLayoutEffect(() => {
    if (part.share) bendUp(body.getAttribute('position') as BufferAttribute, part.mesh.positions, part.share, bend)
  }, [body, part, bend])
  return (
    <group position={[x, y, z]} visible={isVisible}>
      <mesh geometry={body} material={materials.pair as [...ZoneMaterials['pair']]} castShadow={isFull} receiveShadow />
      <lineSegments2 geometry={outline} material={lines.casing} renderOrder={1} visible={isCut} />
      <lineSegments2 geometry={edges} material={lines.edge} renderOrder={2} />
      <lineSegments2 geometry={outline} material={lines.cut} renderOrder={3} visible={isCut} />
      <lineSegments2 geometry={isCut ? outline : edges} material={lines.lit} renderOrder={5} visible={isLit} />
      {(zone.role === 'bar' || zone.role === 'steel') && <mesh geometry={body} material={lines.rim} onBeforeRender={lines.sizeRim} />}
    </group>
  )
})

/** The materials of a part, swapped when its look has changed, and as fresh as the moment on show. */
function useMaterials(
  { zone }: DrawnPart,
  { result: { spec }, post }: DrawnPier,
  { shared, bare, worn }: PierKit,
  isFull: boolean,
): ZoneMaterials {
  const quality = isFull ? 'full' : 'light'
  const materials = useHeld(lookKey(zone.role, spec, quality, post), (before: ZoneMaterials | null) => {
    before?.dispose()
    return zoneMaterials(zone.role, spec, shared, bare, quality, post)
  })
  useLayoutEffect(() => {
    materials.setFresh(shared.uFresh.value)
    worn.add(materials)
    return () => void worn.delete(materials)
  }, [materials, shared, worn])
  return materials
}

/** Writes the vertices anew, in place, bent up by `lift` [m] where they take part. */
function bendUp(places: BufferAttribute, positions: Float32Array, share: Float32Array, lift: number): void {
  for (let i = 0; i < share.length; i++) places.array[3 * i + 1] = (positions[3 * i + 1] ?? 0) + (share[i] ?? 0) * lift
  places.needsUpdate = true
}

const useLineGeometry = (segments: Float32Array) =>
  useHeld(segments, (before: ReturnType<typeof toLineGeometry> | null) => toLineGeometry(segments, before))

type LineProps = Readonly<{ segments: Float32Array; material: PierKit['lines']['cut']; order: number; isVisible: boolean }>

/** Lines of a set width on the screen, written in place. */
function Lines({ segments, material, order, isVisible }: LineProps) {
  const geometry = useLineGeometry(segments)
  return <lineSegments2 geometry={geometry} material={material} renderOrder={order} visible={isVisible && segments.length > 0} />
}

/** Where a sheet meets the cut faces: water a blue line (the ground below it is tinted by its own materials), frost a dashed one, in a light casing. */
function SheetLine({ sheet, kit, isVisible }: Readonly<{ sheet: DrawnSheet; kit: PierKit; isVisible: boolean }>) {
  const geometry = useLineGeometry(sheet.line)
  const material = sheet.id === 'water-table' ? kit.lines.water : kit.lines.frost
  return (
    <group visible={isVisible}>
      <lineSegments2 geometry={geometry} material={kit.lines.casing} renderOrder={6} />
      <lineSegments2 geometry={geometry} material={material} renderOrder={7} />
    </group>
  )
}

/** From where each part stood to where it is lifted, at the edge of its foot. */
function Guides({ pier: { result, offsets, look }, lift, kit }: Readonly<{ pier: DrawnPier; lift: number; kit: PierKit }>) {
  const segments = dashes(guideLines(result.zones, offsets, lift, look.cut), 0.03, 0.025)
  return <Lines segments={segments} material={kit.lines.guide} order={2} isVisible />
}
