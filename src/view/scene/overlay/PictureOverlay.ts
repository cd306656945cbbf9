import { Vector3 } from 'three'
import { formatText } from '../../../core/units/format.ts'
import type { Zone } from '../../../core/model/zone.ts'
import type { AppState, Viewpoint } from '../../../state/appState.ts'
import { shownResult } from '../../../state/derived.ts'
import { annotate, type Annotated, type Say, type Sight } from '../../section/annotate.ts'
import { type Box, InkPot, type Pixel } from '../../section/ink.ts'
import type { LabelWish, Side } from '../../section/labelColumns.ts'
import { namedZones, widestName, wishFor } from '../../section/nameWishes.ts'
import type { FacePlace } from '../../section/sectionAnchors.ts'
import { typeSize, type TypeSize } from '../../section/typeSize.ts'
import type { SafeArea } from '../camera/framing.ts'
import { focalPixels, type Pose, project, rayThrough, type Viewport } from '../camera/lens.ts'
import { handlePixels, turnArc } from '../handles/handlePlaces.ts'
import { type Hit, nearestHit, type Target } from '../pointing/nearestHit.ts'
import type { Overlay } from '../Director.ts'
import { isNative } from '../model/PierModel.ts'
import type { Stage } from '../Stage.ts'
import { type Anchor, visibleAnchors } from './anchors.ts'
import { InkPainter } from './InkPainter.ts'

/** Height that the view bar takes at the foot of the picture, and room for the cut's handles [px]. */
export const barHeight = 52
const handleRoom = 30
const narrow = 560
const leastOpen = 0.04
/** A leader needs this much room between its name and its end [px]. */
const elbowRoom = 18

type Frame = Readonly<{ pose: Pose; viewport: Viewport }>

/** Names, dimensions and marks over the 3D picture. Laid out when the camera rests; tied to their points while it moves. */
export class PictureOverlay implements Overlay {
  private readonly painter: InkPainter
  private state: AppState | null = null
  private named: readonly Zone[] = []
  private anchors = new Map<string, Partial<Record<Side, Anchor>>>()
  private annotated: Annotated | null = null
  private shown = new Map<string, boolean>()
  private readonly ray = new Float64Array(6)
  private readonly hit: Hit = { id: null, distance: 0 }
  private readonly offset = new Vector3()
  /** Told after each frame, for what React places itself: handles, the plate at the pointer. */
  onFrame: ((frame: Frame) => void) | null = null

  constructor(
    svg: SVGSVGElement,
    private readonly stage: Stage,
  ) {
    this.painter = new InkPainter(svg)
  }

  safeArea({ width, height }: Viewport, state: AppState, name: Viewpoint): SafeArea {
    const isNarrow = width < narrow
    const size = typeSize(state.view.theme, isNarrow)
    const column = state.view.layers.labels ? widestName(this.zonesToName(state, isNarrow), size.name) + 26 : 8
    const bottom = height - barHeight - handleRoom
    if (isNarrow && name !== 'section' && name !== 'three-quarter') return { left: 14, top: 12, right: width - 14, bottom }
    const side = column + (isNarrow ? 0 : handleRoom)
    return { left: side, top: name === 'plan' ? 16 : 0, right: width - (isNarrow ? 128 : side), bottom }
  }

  refresh(state: AppState): void {
    this.state = state
    this.painter.setLit(state.view.pointedAt)
  }

  grab(): void {}

  settle(pose: Pose, viewport: Viewport): void {
    this.shown.clear()
    this.lay({ pose, viewport }, true)
  }

  track(pose: Pose, viewport: Viewport): void {
    this.lay({ pose, viewport }, this.annotated === null)
  }

  /** The first zone under a pixel, or null. */
  zoneAt(at: Pixel, frame: Frame): string | null {
    return this.firstUnder(at, frame, this.targets())
  }

  /** Where a zone's leader ends now, for a plate beside it. */
  anchorPixel(id: string, frame: Frame): Pixel | null {
    const sides = this.anchors.get(id)
    const anchor = sides?.right ?? sides?.left
    return anchor ? this.pixel(id, this.placeOf(anchor), frame) : null
  }

  private zonesToName(state: AppState, isNarrow: boolean): Zone[] {
    const { layers } = state.view
    return namedZones(
      shownResult(state).zones.filter(({ role }) => layers.soil || !isNative(role)),
      isNarrow ? 6 : 9,
    )
  }

  private faces(): Record<Side, number> | null {
    const cut = this.state?.view.cut
    return cut && cut.open > leastOpen ? { left: cut.facing + cut.open / 2, right: cut.facing - cut.open / 2 } : null
  }

  private lay(frame: Frame, anew: boolean): void {
    const { state, stage } = this
    const { extent } = stage
    if (!state || !extent || frame.viewport.width < 2) return
    const isNarrow = frame.viewport.width < narrow
    const size = typeSize(state.view.theme, isNarrow)
    if (anew) this.findAnchors(state, frame, isNarrow)
    const { view } = state
    const isApart = view.explode > 0
    const faces = this.faces()
    const sight: Sight = {
      point: (theta, r, y) => this.groundPixel(theta, r, y, frame),
      isShown: (theta, r, y) => this.isShown(theta, r, y, frame),
      faces,
      isFlat: Math.abs(view.cut.open - Math.PI) < 0.5,
      half: extent.half,
      perMetre: focalPixels(frame.viewport.height) / frame.pose.distance,
      pier: [...this.pierBoxes(frame), ...this.handleBoxes(frame)],
    }
    const say: Say = {
      length: (value) => formatText(value, 'length', view.units),
      slope: (value) => formatText(value, 'slope', view.units),
    }
    this.annotated = annotate({
      result: shownResult(state),
      sight,
      layers: isApart ? { ...view.layers, dimensions: false, water: false, frost: false } : view.layers,
      say,
      size,
      isNarrow,
      wishes: this.wishes(frame, size),
      columns: this.columns(frame, size, isNarrow),
      sides: this.annotated?.sides ?? new Map(),
      bounds: { x: 4, y: 4, width: frame.viewport.width - 8, height: frame.viewport.height - barHeight - 8 },
      kept: anew ? null : this.annotated,
    })
    this.drawArc(frame)
    this.painter.paint(this.annotated.ink, size)
    this.onFrame?.(frame)
  }

  private findAnchors(state: AppState, frame: Frame, isNarrow: boolean): void {
    this.named = this.zonesToName(state, isNarrow)
    this.anchors.clear()
    if (!state.view.layers.labels) return
    const axis = this.groundPixel(0, 0, 0, frame)[0]
    const targets = this.targets()
    const { left, right } = this.columns(frame, typeSize(state.view.theme, isNarrow), isNarrow)
    const clearOfNames = ([x]: Pixel): boolean => x > left + elbowRoom && (isNarrow || x < right - elbowRoom)
    const seen = {
      faces: this.faces(),
      project: (id: string, place: FacePlace) => this.pixel(id, place, frame),
      isFirst: (id: string, at: Pixel) => this.isInside(at, frame) && clearOfNames(at) && this.firstUnder(at, frame, targets) === id,
      floor: this.stage.extent?.bottom ?? -2,
      reach: isNarrow ? (this.stage.extent?.holeRadius ?? 1) * 1.5 : undefined,
    }
    for (const zone of this.named) {
      const mesh = this.stage.model.zones.get(zone.id)?.mesh
      if (!mesh) continue
      const sides: Partial<Record<Side, Anchor>> = {}
      for (const anchor of visibleAnchors(zone, mesh, seen)) {
        const side: Side = isNarrow || this.pixel(zone.id, this.placeOf(anchor), frame)[0] < axis ? 'left' : 'right'
        sides[side] ??= anchor
      }
      this.anchors.set(zone.id, sides)
    }
  }

  private wishes(frame: Frame, size: TypeSize): LabelWish[] {
    return this.named.flatMap((zone) => {
      const sides = this.anchors.get(zone.id)
      if (!sides) return []
      const pixels: Partial<Record<Side, Pixel>> = {}
      for (const side of ['left', 'right'] as const) {
        const anchor = sides[side]
        if (anchor) pixels[side] = this.pixel(zone.id, this.placeOf(anchor), frame)
      }
      return [wishFor(zone, pixels, size.name)]
    })
  }

  private columns(frame: Frame, size: TypeSize, isNarrow: boolean) {
    const { width, height } = frame.viewport
    const column = widestName(this.named, size.name)
    const edges = this.blockEdges(frame)
    const gap = handleRoom
    const left = isNarrow ? column + 8 : Math.min(Math.max(edges[0] - gap, column + 8), width / 2 - 40)
    const right = Math.max(Math.min(edges[1] + gap, width - column - 8), width / 2 + 40)
    return {
      left,
      right,
      top: 10,
      bottom: height - barHeight - 10,
      taken: this.handlesIn(frame, left, isNarrow ? width : right),
    }
  }

  /** Stretches of height that handles take up in the columns of names. */
  private handlesIn(frame: Frame, left: number, right: number): Record<Side, [number, number][]> {
    const taken: Record<Side, [number, number][]> = { left: [], right: [] }
    for (const { x, y, width, height } of this.handleBoxes(frame)) {
      if (x < left) taken.left.push([y, y + height])
      if (x + width > right) taken.right.push([y, y + height])
    }
    return taken
  }

  /** Left and right edge of the block on the screen. */
  private blockEdges(frame: Frame): [number, number] {
    const { extent } = this.stage
    if (!extent) return [0, frame.viewport.width]
    let left = Infinity
    let right = -Infinity
    for (const n of [1, 3, 5, 7])
      for (const y of [extent.bottom, 0]) {
        const [x] = this.groundPixel((n * Math.PI) / 4, extent.half * Math.SQRT2, y, frame)
        left = Math.min(left, x)
        right = Math.max(right, x)
      }
    return [left, right]
  }

  private handleBoxes({ pose, viewport }: Frame): Box[] {
    const { extent } = this.stage
    if (!extent || !this.state) return []
    return Object.values(handlePixels(this.state.view.cut, extent, pose, viewport, barHeight)).flatMap((at): Box[] =>
      at ? [{ x: at[0] - 18, y: at[1] - 18, width: 36, height: 36 }] : [],
    )
  }

  /** The arc on the floor that the turning handle runs along. */
  private drawArc({ pose, viewport }: Frame): void {
    const cut = this.state?.view.cut
    const { extent } = this.stage
    if (!cut || !extent || !this.annotated || cut.open < leastOpen) return
    const pot = new InkPot()
    pot.line('arc', ...turnArc(cut, extent).map((point): Pixel => [project(pose, viewport, point)[0], project(pose, viewport, point)[1]]))
    this.annotated = { ...this.annotated, ink: { ...this.annotated.ink, paths: { ...this.annotated.ink.paths, arc: pot.paths.arc } } }
  }

  private pierBoxes(frame: Frame): Box[] {
    const { extent } = this.stage
    if (!extent) return []
    // As wide as it stands across the sight line, in the plane through the axis.
    const across = frame.pose.azimuth - Math.PI / 2
    const box = (radius: number, low: number, high: number): Box => {
      const points = [across, across + Math.PI].flatMap((theta) => [
        this.groundPixel(theta, radius, low, frame),
        this.groundPixel(theta, radius, high, frame),
      ])
      const xs = points.map((p) => p[0])
      const ys = points.map((p) => p[1])
      const x = Math.min(...xs)
      const y = Math.min(...ys)
      return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y }
    }
    const shaft = (this.stage.model.result?.spec.hole.diameter ?? 0.5) / 2
    return [box(shaft, extent.holeBottom, Math.max(0, extent.pierTop)), box(0.08, 0, extent.postTop)]
  }

  private targets(): Target[] {
    return this.stage.targets()
  }

  private firstUnder([x, y]: Pixel, { pose, viewport }: Frame, targets: readonly Target[]): string | null {
    rayThrough(pose, viewport, x, y, this.ray)
    return nearestHit(targets, this.ray, this.hit).id
  }

  /** Nothing stands before this point, give or take a finger's breadth. Asked once between two rests. */
  private isShown(theta: number, r: number, y: number, { pose, viewport }: Frame): boolean {
    const key = `${theta.toFixed(3)} ${r.toFixed(3)} ${y.toFixed(3)}`
    const known = this.shown.get(key)
    if (known !== undefined) return known
    const point = [r * Math.cos(theta), y, r * Math.sin(theta)] as const
    const [px, py] = project(pose, viewport, point)
    rayThrough(pose, viewport, px, py, this.ray)
    const [ex, ey, ez] = this.ray as unknown as [number, number, number]
    const toPoint = Math.hypot(point[0] - ex, point[1] - ey, point[2] - ez)
    const along = Math.hypot(this.ray[3] as number, this.ray[4] as number, this.ray[5] as number)
    const isShown = nearestHit(this.targets(), this.ray, this.hit).distance * along > toPoint - 0.03
    this.shown.set(key, isShown)
    return isShown
  }

  private isInside([x, y]: Pixel, { viewport }: Frame): boolean {
    return x > 2 && y > 2 && x < viewport.width - 2 && y < viewport.height - barHeight
  }

  private placeOf({ face, place }: Anchor): FacePlace {
    const faces = this.faces()
    return face && faces ? [faces[face], place[1], place[2]] : place
  }

  private pixel(id: string, [theta, r, y]: FacePlace, { pose, viewport }: Frame): Pixel {
    this.stage.model.offsetOf(id, this.offset)
    const [px, py] = project(pose, viewport, [r * Math.cos(theta) + this.offset.x, y + this.offset.y, r * Math.sin(theta) + this.offset.z])
    return [px, py]
  }

  private groundPixel(theta: number, r: number, y: number, { pose, viewport }: Frame): Pixel {
    const [px, py] = project(pose, viewport, [r * Math.cos(theta), y, r * Math.sin(theta)])
    return [px, py]
  }
}
