import { Group, type Vector3 } from 'three'
import { LineSegments2 } from 'three/examples/jsm/lines/LineSegments2.js'
import type { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js'
import { cutMeshes, specialAngles } from '../../../core/geometry/cutMeshes.ts'
import { planAngles } from '../../../core/geometry/planAngles.ts'
import { plane } from '../../../core/geometry/surface.ts'
import type { LettingGo } from '../../../core/derive/lettingGo.ts'
import type { PierResult } from '../../../core/model/result.ts'
import type { Cut, Role } from '../../../core/model/solid.ts'
import type { Zone } from '../../../core/model/zone.ts'
import { radians } from '../../../core/units/quantity.ts'
import { noWater, type SharedUniforms } from '../materials/sharedUniforms.ts'
import { lookKey, zoneMaterials } from '../materials/zoneMaterials.ts'
import { toLineGeometry } from '../toBufferGeometry.ts'
import { bentRods } from '../pull/bentRods.ts'
import { partZone } from '../pull/partZone.ts'
import { bentZone } from '../pull/pullState.ts'
import { dashes } from './dashes.ts'
import { groundLine } from './groundLine.ts'
import { guideLines } from './guideLines.ts'
import { hardEdges } from './hardEdges.ts'
import { liftedOffsets, type Offset } from './lifted.ts'
import type { LineSet } from './lineSet.ts'
import { postBounds } from './postBounds.ts'
import { SheetObject } from './SheetObject.ts'
import { showWet } from './showWet.ts'
import { ZoneObject } from './ZoneObject.ts'

export type ModelView = Readonly<{
  cut: Cut
  cutPost: boolean
  quality: 'full' | 'light'
  water: boolean
  frost: boolean
  soil: boolean
  wetness?: boolean
}>

const nativeRoles: ReadonlySet<Role> = new Set(['topsoil', 'soil', 'soil-lower'])
export const isNative = (role: Role): boolean => nativeRoles.has(role)

/** Uniform segments to the full turn. */
export const segments = 96

/** The pier as three objects. It is told what to show; it makes, reuses and disposes what is drawn. Nothing here knows React or the store. */
export class PierModel {
  readonly root = new Group()
  readonly zones = new Map<string, ZoneObject>()
  private readonly sheets = new Map<string, SheetObject>()
  private readonly ground: LineSegments2
  private groundGeometry: LineSegmentsGeometry | null = null
  private readonly guide: LineSegments2
  private guideGeometry: LineSegmentsGeometry | null = null
  private readonly bare = { value: 0 }
  private offsets: ReadonlyMap<string, Offset> = new Map()
  private lift = 0
  /** How the pier lets go, and how far what goes stands up now [m]. */
  private way: LettingGo | null = null
  private rise = 0
  private going: ReadonlySet<string> = new Set()
  /** Pieces that leave a zone of which the rest stays, by that zone's id. */
  readonly riders = new Map<string, ZoneObject>()
  /** Zones that are not there yet. */
  private hidden: ReadonlySet<string> = new Set()
  private hasSoil = true
  private fresh = 0
  private all: readonly ZoneObject[] = []
  private cutAt: Cut = { open: radians(0), facing: radians(0) }
  result: PierResult | null = null

  constructor(
    private readonly shared: SharedUniforms,
    private readonly lines: LineSet,
  ) {
    this.ground = new LineSegments2(undefined, lines.ground)
    this.ground.renderOrder = 4
    this.guide = new LineSegments2(undefined, lines.guide)
    this.guide.renderOrder = 2
    this.guide.visible = false
    this.root.add(this.ground, this.guide)
  }

  show(result: PierResult, view: ModelView): void {
    const { zones, spec } = result
    this.result = result
    this.cutAt = view.cut
    this.hasSoil = view.soil
    const meshes = cutMeshes(zones, view.cut, { segments, cutPost: view.cutPost })
    const special = specialAngles(zones)
    const angles = planAngles(special, view.cut, segments)
    const uncut = view.cutPost ? angles : planAngles(special, { open: radians(0), facing: view.cut.facing }, segments)
    this.setShared(result, view)
    const post = postBounds(zones)
    const postHalf = (post?.width ?? 0) / 2
    showWet(this.shared, spec, zones, view.wetness === true)
    const bent = this.way ? bentZone(this.way.how) : null
    const parted = new Set<string>()
    for (const zone of zones) {
      const mesh = meshes.get(zone.id)
      if (!mesh) continue
      const key = lookKey(zone.role, spec, view.quality, post)
      const make = () => zoneMaterials(zone.role, spec, this.shared, this.bare, view.quality, post)
      const zoneAngles = zone.role === 'wood' ? uncut : angles
      const drawn = { mesh, edges: hardEdges(zone, zoneAngles) }
      const parting = this.way?.parts.find((part) => part.zone === zone.id)
      const pieces = parting ? partZone(zone, drawn, parting, zoneAngles, postHalf) : null
      const object = this.zones.get(zone.id) ?? this.addZone(zone)
      object.dress(key, make)
      if (zone.id === bent && zone.build === 'placed') {
        const { mesh: slices, share } = bentRods(zone, zones, postHalf)
        object.show(slices, drawn.edges, share)
      } else object.show(pieces?.stays.mesh ?? mesh, pieces?.stays.edges ?? drawn.edges)
      object.setShadows(view.quality === 'full')
      object.setFresh(this.fresh)
      object.group.visible = this.isShown(zone)
      if (!pieces) continue
      parted.add(zone.id)
      const rider = this.riders.get(zone.id) ?? this.addRider(zone)
      rider.dress(key, make)
      rider.show(pieces.goes.mesh, pieces.goes.edges)
      rider.setShadows(view.quality === 'full')
      rider.group.visible = object.group.visible
    }
    for (const [id, rider] of this.riders)
      if (!parted.has(id)) {
        rider.dispose()
        this.riders.delete(id)
      }
    for (const [id, object] of this.zones)
      if (!meshes.has(id)) {
        object.dispose()
        this.zones.delete(id)
      }
    this.all = [...this.zones.values()]
    this.showSheets(result, view, special)
    this.showGround(result, view)
    this.offsets = liftedOffsets(zones, spec.hole.depth)
    this.setLift(this.lift)
  }

  /** Leaves out the zones that are not there yet; bodies stay made. */
  setHidden(hidden: ReadonlySet<string>): void {
    if (hidden === this.hidden) return
    this.hidden = hidden
    for (const zone of this.result?.zones ?? []) this.zones.get(zone.id)?.setVisible(this.isShown(zone))
  }

  /** How fresh what sets in the ground is: 0 hard and dry … 1 just placed. */
  setFresh(amount: number): void {
    if (amount === this.fresh) return
    this.fresh = amount
    for (let i = 0; i < this.all.length; i++) this.all[i]?.setFresh(amount)
  }

  private isShown({ id, role }: Zone): boolean {
    return (this.hasSoil || !isNative(role)) && !this.hidden.has(id)
  }

  /** How the pier lets go, null while it holds. Takes effect with the next `show`. */
  setWay(way: LettingGo | null): void {
    this.way = way
    this.going = new Set(way?.moves ?? [])
    if (!way) this.rise = 0
  }

  /** Raises what goes by `rise` [m]; steel that bends bends with it. */
  setRise(rise: number): void {
    this.rise = rise
    this.setLift(this.lift)
  }

  /** How far up what goes stands now [m]; 0 while it holds. */
  get risen(): number {
    return this.rise
  }

  /** What has left its place, has parted or has bent, by zone id: read off what is drawn. */
  moved(): Readonly<{ displaced: string[]; parted: string[]; bent: string[] }> {
    const bent = this.way && this.rise > 0 ? bentZone(this.way.how) : null
    const displaced: string[] = []
    for (const [id, { group }] of this.zones) if (group.position.y > (this.offsets.get(id)?.[1] ?? 0) * this.lift + 1e-9) displaced.push(id)
    return { displaced, parted: this.rise > 0 ? [...this.riders.keys()] : [], bent: bent !== null && this.zones.has(bent) ? [bent] : [] }
  }

  /** 0 together … 1 apart. */
  setLift(lift: number): void {
    this.lift = lift
    for (const [id, object] of this.zones) {
      const [x, y, z] = this.offsets.get(id) ?? [0, 0, 0]
      object.group.position.set(x * lift, y * lift + (this.going.has(id) ? this.rise : 0), z * lift)
      this.riders.get(id)?.group.position.set(x * lift, y * lift + this.rise, z * lift)
    }
    const bent = this.way ? bentZone(this.way.how) : null
    if (bent !== null) this.zones.get(bent)?.bend(this.rise)
    this.showGuides(lift)
    this.ground.visible = lift === 0 && this.groundGeometry !== null
    for (const sheet of this.sheets.values()) sheet.group.visible = lift === 0
  }

  /** Where a zone has been lifted to [m]. */
  offsetOf(id: string, into: Vector3): Vector3 {
    const position = this.zones.get(id)?.group.position
    return position ? into.copy(position) : into.set(0, 0, 0)
  }

  /** How far up the highest part stands lifted now [m]. */
  highestLift(): number {
    let most = 0
    for (const id of this.zones.keys()) most = Math.max(most, (this.offsets.get(id)?.[1] ?? 0) * this.lift)
    return most
  }

  /** How far up a zone stands lifted now [m]. */
  heightLifted(id: string): number {
    return this.zones.get(id)?.group.position.y ?? 0
  }

  setPointed(id: string | null): void {
    for (const objects of [this.zones, this.riders]) for (const [key, object] of objects) object.setLit(key === id ? 1 : 0)
  }

  dispose(): void {
    for (const object of this.zones.values()) object.dispose()
    for (const rider of this.riders.values()) rider.dispose()
    this.riders.clear()
    for (const sheet of this.sheets.values()) sheet.dispose()
    this.zones.clear()
    this.sheets.clear()
    this.groundGeometry?.dispose()
    this.guideGeometry?.dispose()
  }

  private addZone(zone: Zone): ZoneObject {
    const object = this.newObject(zone)
    this.zones.set(zone.id, object)
    return object
  }

  private addRider(zone: Zone): ZoneObject {
    const rider = this.newObject(zone)
    this.riders.set(zone.id, rider)
    return rider
  }

  private newObject({ id, role }: Zone): ZoneObject {
    const object = new ZoneObject(id, this.lines, role === 'bar' || role === 'steel')
    this.root.add(object.group)
    return object
  }

  private setShared({ spec }: PierResult, { cut, water }: ModelView): void {
    const { slope, downhill, waterTable } = spec.site
    this.shared.uGround.value.set(0, -slope * Math.cos(downhill), -slope * Math.sin(downhill), 0)
    this.shared.uWater.value = water && waterTable !== null ? -waterTable : noWater
    this.shared.uRight.value.set(Math.sin(cut.facing), -Math.cos(cut.facing))
    const mouth = Math.max(spec.hole.diameter, spec.hole.flare?.diameter ?? 0) / 2
    this.bare.value = mouth + 0.04
  }

  /** From where each part stood to where it is lifted, at the edge of its foot. */
  private showGuides(lift: number): void {
    this.guide.visible = lift > 0 && this.result !== null
    if (!this.guide.visible || !this.result) return
    const segmentsOfGuides = guideLines(this.result.zones, this.offsets, lift, this.cutAt)
    this.guideGeometry = toLineGeometry(dashes(segmentsOfGuides, 0.03, 0.025), this.guideGeometry)
    this.guide.geometry = this.guideGeometry
  }

  private showSheets({ sheets }: PierResult, view: ModelView, special: readonly number[]): void {
    const wanted = sheets.filter(({ id }) => (id === 'water-table' ? view.water : view.frost))
    for (const sheet of wanted) {
      const object = this.sheets.get(sheet.id) ?? new SheetObject(sheet.id, this.lines)
      if (!this.sheets.has(sheet.id)) {
        this.sheets.set(sheet.id, object)
        this.root.add(object.group)
      }
      object.show(sheet, view.cut, segments, special)
    }
    for (const [id, object] of this.sheets)
      if (!wanted.some((sheet) => sheet.id === id)) {
        object.dispose()
        this.sheets.delete(id)
      }
  }

  private showGround({ zones, spec }: PierResult, view: ModelView): void {
    const { slope, downhill } = spec.site
    const grade = plane(0, -slope * Math.cos(downhill), -slope * Math.sin(downhill))
    const native = zones.flatMap(({ id, role }) =>
      view.soil && isNative(role) ? [this.zones.get(id)?.mesh?.outline ?? new Float32Array()] : [],
    )
    const segmentsOfGround = groundLine(native, grade)
    this.groundGeometry = toLineGeometry(segmentsOfGround, this.groundGeometry)
    this.ground.geometry = this.groundGeometry
  }
}
