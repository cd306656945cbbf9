import { formatText } from '../../../core/units/format.ts'
import { nativeRoles } from '../../../core/model/solid.ts'
import type { Zone } from '../../../core/model/zone.ts'
import type { AppState, Viewpoint } from '../../../state/appState.ts'
import { shownResult } from '../../../state/derived.ts'
import { shownLayers } from '../../../state/shown.ts'
import { hiddenZones, withoutZones } from '../../../state/shown.ts'
import { annotate, type Annotated, type Say, type Sight } from '../../section/annotate.ts'
import type { Box, Pixel } from '../../section/ink.ts'
import type { LabelWish, Side } from '../../section/labelColumns.ts'
import { mostNames, namedZones, widestName, wishFor } from '../../section/nameWishes.ts'
import type { FacePlace } from '../../section/sectionAnchors.ts'
import { tallyRoom } from '../../section/tallyRoom.ts'
import { typeSize, type TypeSize } from '../../section/typeSize.ts'
import { waterNow } from '../../section/useWater.ts'
import type { SafeArea } from '../camera/framing.ts'
import { type Frame, projectPoint, type Viewport } from '../camera/lens.ts'
import type { PierExtent } from '../camera/pierExtent.ts'
import { narrowWidth } from '../camera/viewpoints.ts'
import { bodyOf, offsetOf, type PlacedPier, placedExtent, targetsOf } from '../pier/placedPier.ts'
import type { PullState } from '../pull/pullState.ts'
import { type Anchor, visibleAnchors } from './anchors.ts'
import { InkPainter } from './InkPainter.ts'
import { arcPath, barHeight, facesOf, groundPixel, handleBoxes, handleRoom, nameColumns, sightOf } from './obstacles.ts'
import { overlaid, type PullInk, pullInk } from './pullInk.ts'
import { SightLines } from '../pointing/sightLines.ts'

/** A leader needs this much room between its name and its end [px]. */
const elbowRoom = 18

/** What words and lines are laid over: the pier as it stands, and what a pull does to it. */
type Under = Readonly<{ standing: PlacedPier; pulled: PullState; extent: PierExtent }>

/** Names, dimensions and marks over the 3D picture. Laid out when the camera rests; tied to their points while it moves. */
export class PictureOverlay {
  private readonly painter: InkPainter
  private state: AppState | null = null
  private under: Under | null = null
  private named: readonly Zone[] = []
  private anchors = new Map<string, Partial<Record<Side, Anchor>>>()
  private annotated: Annotated | null = null
  private readonly sightLines = new SightLines(() => (this.under ? targetsOf(this.under.standing) : []))

  constructor(svg: SVGSVGElement) {
    this.painter = new InkPainter(svg)
  }

  /** Sizes of the pier on show. */
  get extent(): PierExtent | null {
    return this.under?.extent ?? null
  }

  safeArea({ width, height }: Viewport, state: AppState, name: Viewpoint): SafeArea {
    const isNarrow = width < narrowWidth
    const size = typeSize(state.view.theme, isNarrow)
    const column = state.view.layers.labels ? widestName(this.zonesToName(state, isNarrow), size.name) + 26 : 8
    const bottom = height - barHeight - handleRoom
    if (isNarrow && name !== 'section' && name !== 'three-quarter') return { left: 14, top: 12, right: width - 14, bottom }
    const side = column + (isNarrow ? 0 : handleRoom)
    return { left: side, top: name === 'plan' ? 16 : 0, right: width - (isNarrow ? 128 : side), bottom }
  }

  /** The state has changed. */
  refresh(state: AppState): void {
    this.state = state
    this.painter.setLit(state.view.pointedAt)
  }

  /** Another pier stands in the picture, or stands otherwise. */
  show(standing: PlacedPier, pulled: PullState): void {
    this.under = { standing, pulled, extent: placedExtent(standing) }
  }

  /** The camera rests: lays everything out anew. */
  settle(frame: Frame): void {
    this.sightLines.forget()
    this.lay(frame, true)
  }

  /** With each drawn frame: moves what is tied to points. */
  track(frame: Frame): void {
    this.lay(frame, this.annotated === null)
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
      withoutZones(shownResult(state), hiddenZones(state)).zones.filter(({ role }) => layers.soil || !nativeRoles.has(role)),
      mostNames(isNarrow, state.view.time?.stretch === 'years'),
    )
  }

  private faces(): Readonly<Record<Side, number>> | null {
    return this.state && facesOf(this.state.view.cut)
  }

  private lay(frame: Frame, anew: boolean): void {
    const { state, under } = this
    if (!state || !under || frame.viewport.width < 2) return
    const { extent, pulled } = under
    const isNarrow = frame.viewport.width < narrowWidth
    const size = typeSize(state.view.theme, isNarrow)
    if (anew) this.findAnchors(state, under, frame, isNarrow)
    const { view } = state
    const { spec } = shownResult(state)
    const isApart = view.explode > 0
    const bounds = { x: 4, y: 4, width: frame.viewport.width - 8, height: frame.viewport.height - barHeight - 8 }
    const handles = handleBoxes(view.cut, extent, frame)
    const tally = view.time?.stretch === 'years' ? [tallyRoom(frame.viewport, view.theme, view.mistakes.length > 0)] : []
    const pull = this.pullInk(state, under, frame, bounds, handles, size)
    // Lengths belong to the pier as it stands.
    const shown = shownLayers(view)
    const layers = pulled.kind === 'letting-go' ? { ...shown, dimensions: false, wetness: false } : shown
    const seen = sightOf(frame, view.cut, extent, spec.hole.diameter / 2)
    const sight: Sight = {
      ...seen,
      isShown: (theta, r, y) => this.sightLines.isShown(theta, r, y, frame),
      pier: [...seen.pier, ...handles, ...tally, ...(pull?.boxes ?? [])],
    }
    const say: Say = {
      length: (value) => formatText(value, 'length', view.units),
      slope: (value) => formatText(value, 'slope', view.units),
    }
    this.annotated = annotate({
      result: withoutZones(shownResult(state), hiddenZones(state)),
      sight,
      layers: isApart ? { ...layers, dimensions: false, water: false, frost: false, wetness: false } : layers,
      drawWet: waterNow()?.drawWet ?? null,
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
    if (sight.faces) {
      const { ink } = this.annotated
      this.annotated = { ...this.annotated, ink: { ...ink, paths: { ...ink.paths, arc: arcPath(view.cut, extent, frame) } } }
    }
    this.painter.paint(pull ? overlaid(this.annotated.ink, pull.ink) : this.annotated.ink, size)
  }

  private pullInk(
    state: AppState,
    { extent, pulled, standing }: Under,
    frame: Frame,
    bounds: Box,
    taken: readonly Box[],
    size: TypeSize,
  ): PullInk | null {
    if (pulled.kind === 'none') return null
    const half = (standing.pier.post?.width ?? 0.14) / 2
    const foot = groundPixel(frame.pose.azimuth - Math.PI / 2, half, Math.max(0, extent.pierTop) + standing.rise, frame)
    const figure = formatText(state.view.pull ?? 0, 'force', state.view.units)
    return pullInk(pulled, { foot, bounds, taken, size, figure })
  }

  private findAnchors(state: AppState, { extent, standing }: Under, frame: Frame, isNarrow: boolean): void {
    this.named = this.zonesToName(state, isNarrow)
    this.anchors.clear()
    if (!state.view.layers.labels) return
    const axis = groundPixel(0, 0, 0, frame)[0]
    const targets = targetsOf(standing)
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
      const mesh = bodyOf(standing.pier, zone.id)?.mesh
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
    const { standing } = this.under ?? {}
    const part = standing && bodyOf(standing.pier, id)
    const off = standing && part ? offsetOf(standing, part) : { x: 0, y: 0, z: 0 }
    const [px, py] = projectPoint(pose, viewport, [r * Math.cos(theta) + off.x, y + off.y, r * Math.sin(theta) + off.z])
    return [px, py]
  }
}
