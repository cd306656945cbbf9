import { Vector3 } from 'three'
import { formatText } from '../../../core/units/format.ts'
import type { Zone } from '../../../core/model/zone.ts'
import type { AppState, Viewpoint } from '../../../state/appState.ts'
import { shownResult } from '../../../state/derived.ts'
import { shownLayers } from '../../../state/shownLayers.ts'
import { hiddenZones, withoutZones } from '../../../state/hiddenZones.ts'
import { annotate, type Annotated, type Say, type Sight } from '../../section/annotate.ts'
import type { Box, Pixel } from '../../section/ink.ts'
import type { LabelWish, Side } from '../../section/labelColumns.ts'
import { mostNames, namedZones, widestName, wishFor } from '../../section/nameWishes.ts'
import type { FacePlace } from '../../section/sectionAnchors.ts'
import { tallyRoom } from '../../section/tallyRoom.ts'
import { typeSize, type TypeSize } from '../../section/typeSize.ts'
import type { SafeArea } from '../camera/framing.ts'
import { focalPixels, type Pose, project, type Viewport } from '../camera/lens.ts'
import type { Overlay } from '../playground.ts'
import { isNative } from '../model/PierModel.ts'
import { postBounds } from '../model/postBounds.ts'
import type { Stage } from '../Stage.ts'
import { type Anchor, visibleAnchors } from './anchors.ts'
import { InkPainter } from './InkPainter.ts'
import { arcPath, barHeight, type Frame, groundPixel, handleBoxes, handleRoom, nameColumns, pierBoxes } from './obstacles.ts'
import { overlaid, type PullInk, pullInk } from './pullInk.ts'
import { SightLines } from './SightLines.ts'

const narrow = 560
const leastOpen = 0.04
/** A leader needs this much room between its name and its end [px]. */
const elbowRoom = 18

/** Names, dimensions and marks over the 3D picture. Laid out when the camera rests; tied to their points while it moves. */
export class PictureOverlay implements Overlay {
  private readonly painter: InkPainter
  private state: AppState | null = null
  private named: readonly Zone[] = []
  private anchors = new Map<string, Partial<Record<Side, Anchor>>>()
  private annotated: Annotated | null = null
  private readonly sightLines: SightLines
  private readonly offset = new Vector3()
  /** Told after each frame, for what React places itself: handles, the plate at the pointer. */
  onFrame: ((frame: Frame) => void) | null = null

  constructor(
    svg: SVGSVGElement,
    private readonly stage: Stage,
  ) {
    this.painter = new InkPainter(svg)
    this.sightLines = new SightLines(() => stage.targets())
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
    this.sightLines.forget()
    this.lay({ pose, viewport }, true)
  }

  track(pose: Pose, viewport: Viewport): void {
    this.lay({ pose, viewport }, this.annotated === null)
  }

  /** The first zone under a pixel, or null. */
  zoneAt(at: Pixel, frame: Frame): string | null {
    return this.sightLines.firstUnder(at, frame)
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
      withoutZones(shownResult(state), hiddenZones(state)).zones.filter(({ role }) => layers.soil || !isNative(role)),
      mostNames(isNarrow, state.view.time?.stretch === 'years'),
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
    const { spec } = shownResult(state)
    const isApart = view.explode > 0
    const faces = this.faces()
    const bounds = { x: 4, y: 4, width: frame.viewport.width - 8, height: frame.viewport.height - barHeight - 8 }
    const handles = handleBoxes(view.cut, extent, frame)
    const tally = view.time?.stretch === 'years' ? [tallyRoom(frame.viewport, view.theme, view.mistakes.length > 0)] : []
    const pull = this.pullInk(state, frame, bounds, handles, size)
    // Lengths belong to the pier as it stands.
    const shown = shownLayers(view)
    const layers = stage.pulled.kind === 'letting-go' ? { ...shown, dimensions: false, wetness: false } : shown
    const sight: Sight = {
      point: (theta, r, y) => groundPixel(theta, r, y, frame),
      isShown: (theta, r, y) => this.sightLines.isShown(theta, r, y, frame),
      faces,
      isFlat: Math.abs(view.cut.open - Math.PI) < 0.5,
      half: extent.half,
      perMetre: focalPixels(frame.viewport.height) / frame.pose.distance,
      pier: [...pierBoxes(extent, spec.hole.diameter / 2, frame), ...handles, ...tally, ...(pull?.boxes ?? [])],
    }
    const say: Say = {
      length: (value) => formatText(value, 'length', view.units),
      slope: (value) => formatText(value, 'slope', view.units),
    }
    this.annotated = annotate({
      result: withoutZones(shownResult(state), hiddenZones(state)),
      sight,
      layers: isApart ? { ...layers, dimensions: false, water: false, frost: false, wetness: false } : layers,
      say,
      size,
      isNarrow,
      wishes: this.wishes(frame, size),
      columns: nameColumns(view.cut, extent, frame, widestName(this.named, size.name), isNarrow, tally),
      sides: this.annotated?.sides ?? new Map(),
      bounds,
      isInYears: view.time?.stretch === 'years',
      kept: anew ? null : this.annotated,
    })
    if (faces) {
      const { ink } = this.annotated
      this.annotated = { ...this.annotated, ink: { ...ink, paths: { ...ink.paths, arc: arcPath(view.cut, extent, frame) } } }
    }
    this.painter.paint(pull ? overlaid(this.annotated.ink, pull.ink) : this.annotated.ink, size)
    this.onFrame?.(frame)
  }

  private pullInk(state: AppState, frame: Frame, bounds: Box, taken: readonly Box[], size: TypeSize): PullInk | null {
    const { extent, model, pulled } = this.stage
    if (!extent || pulled.kind === 'none') return null
    const half = (postBounds(shownResult(state).zones)?.width ?? 0.14) / 2
    const foot = groundPixel(frame.pose.azimuth - Math.PI / 2, half, Math.max(0, extent.pierTop) + model.risen, frame)
    const figure = formatText(state.view.pull ?? 0, 'force', state.view.units)
    return pullInk(pulled, { foot, bounds, taken, size, figure })
  }

  private findAnchors(state: AppState, frame: Frame, isNarrow: boolean): void {
    this.named = this.zonesToName(state, isNarrow)
    this.anchors.clear()
    if (!state.view.layers.labels) return
    const { extent } = this.stage
    if (!extent) return
    const axis = groundPixel(0, 0, 0, frame)[0]
    const targets = this.stage.targets()
    const widest = widestName(this.named, typeSize(state.view.theme, isNarrow).name)
    const { left, right } = nameColumns(state.view.cut, extent, frame, widest, isNarrow)
    const clearOfNames = ([x]: Pixel): boolean => x > left + elbowRoom && (isNarrow || x < right - elbowRoom)
    const seen = {
      faces: this.faces(),
      project: (id: string, place: FacePlace) => this.pixel(id, place, frame),
      isFirst: (id: string, at: Pixel) =>
        this.isInside(at, frame) && clearOfNames(at) && this.sightLines.firstUnder(at, frame, targets) === id,
      floor: extent.bottom,
      reach: isNarrow ? extent.holeRadius * 1.5 : undefined,
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
}
