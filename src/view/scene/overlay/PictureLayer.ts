import type { Cut } from '../../../core/model/solid.ts'
import { pointAt } from '../../../state/actions/view.ts'
import type { AppState } from '../../../state/appState.ts'
import { hiddenZones } from '../../../state/shown.ts'
import { pierStore } from '../../../state/store.ts'
import { player } from '../../live/player.ts'
import type { Pixel } from '../../section/ink.ts'
import type { Frame } from '../camera/lens.ts'
import type { HandleId } from '../handles/handlePlaces.ts'
import { angleDragged, handlePixels, isFar } from '../handles/handlePlaces.ts'
import type { LivePicture } from '../PierColumns.tsx'
import { barHeight } from './obstacles.ts'
import { PictureOverlay } from './PictureOverlay.ts'

const tapSlack = 6

/** Ties what lies over the canvas to the picture: lays out words when it rests, moves handles and plate with each frame, and finds the part under the pointer. */
export class PictureLayer {
  readonly overlay: PictureOverlay
  /** The picture while it stands. */
  picture: LivePicture | null = null
  /** Something of the pier itself is moving. */
  isStirring = false
  private frame: Frame | null = null
  private toSettle = true
  private isHeld = false
  private readonly handles = new Map<HandleId, HTMLElement>()
  private plate: HTMLElement | null = null
  private pointer: Pixel | null = null
  private asked = 0
  private pressedAt: Pixel | null = null
  private readonly unsubscribe: () => void

  /** `onHeld`: a handle is taken, or let go. */
  constructor(
    svg: SVGSVGElement,
    private readonly onHeld: (isHeld: boolean) => void,
  ) {
    this.overlay = new PictureOverlay(svg)
    this.overlay.refresh(pierStore.getState())
    this.unsubscribe = pierStore.subscribe((state, before) => this.hear(state, before))
  }

  dispose(): void {
    this.unsubscribe()
    cancelAnimationFrame(this.asked)
    this.asked = 0
  }

  /** What is written over the picture is laid out anew as soon as it rests. */
  readonly settle = (): void => {
    this.toSettle = true
    this.picture?.state.invalidate()
  }

  /** After each frame. */
  readonly drawn = (frame: Frame): void => {
    this.frame = frame
    const isMoving = this.picture?.eye.isMoving() || this.isDragging || this.isStirring
    if (this.toSettle && !isMoving) {
      this.toSettle = false
      this.overlay.settle(frame)
    } else if (isMoving || !player.isRunning || this.toSettle) this.overlay.track(frame)
    else return
    this.placeHandles(frame)
    this.placePlate(frame)
  }

  /** The cut, or a length of the pier, is being dragged: words stay where they are until it is let go. */
  private get isDragging(): boolean {
    return this.isHeld || pierStore.getState().draft !== null
  }

  /** A pull that only grows moves its arrow, and a day or a year that passes its tones; all words stay where they are. */
  private hear(state: AppState, before: AppState): void {
    this.overlay.refresh(state)
    const [now, was] = [state.view, before.view]
    const isSamePier = state.document === before.document && state.draft === before.draft && state.looking === before.looking
    const passes =
      isSamePier &&
      now.time?.stretch === was.time?.stretch &&
      (now.time !== was.time || now.playing !== was.playing) &&
      hiddenZones(state) === hiddenZones(before)
    const grows = isSamePier && now.pull !== was.pull && now.pull !== null && was.pull !== null
    if (!passes && !grows) this.toSettle = true
    this.picture?.state.invalidate()
  }

  /** Takes over the element of a handle, to be moved with the picture. */
  register(handle: HandleId, element: HTMLElement | null): void {
    if (element) this.handles.set(handle, element)
    else this.handles.delete(handle)
    if (this.frame) this.placeHandles(this.frame)
  }

  readonly registerPlate = (element: HTMLElement | null): void => {
    this.plate = element
  }

  angleDragged(from: Pixel, to: Pixel, cut: Cut, handle: HandleId): number {
    const { extent } = this.overlay
    return extent && this.frame ? angleDragged(from, to, cut, handle, extent, this.frame.pose, this.frame.viewport) : 0
  }

  hold(isHeld: boolean): void {
    this.isHeld = isHeld
    this.onHeld(isHeld)
    if (!isHeld) this.settle()
  }

  /** The mouse is over the picture, or has left it. The part under it is looked up at most once a frame. */
  pointerMoved(at: Pixel | null): void {
    const had = this.pointer !== null
    this.pointer = at
    if (at === null) {
      if (had) pointAt(pierStore, null)
      return
    }
    if (this.asked === 0)
      this.asked = requestAnimationFrame(() => {
        this.asked = 0
        this.lookUnder()
      })
  }

  pressed(at: Pixel): void {
    this.pressedAt = at
  }

  /** A tap names the part under it; a tap beside all parts clears. */
  released(at: Pixel, kind: string): void {
    const from = this.pressedAt
    this.pressedAt = null
    if (kind === 'mouse' || !from || !this.frame || Math.hypot(at[0] - from[0], at[1] - from[1]) > tapSlack) return
    this.pointer = at
    pointAt(pierStore, this.overlay.zoneAt(at, this.frame))
    this.pointer = at
  }

  private lookUnder(): void {
    if (!this.frame || !this.pointer || this.picture?.eye.isMoving() || this.isDragging) return
    pointAt(pierStore, this.overlay.zoneAt(this.pointer, this.frame))
    this.placePlate(this.frame)
  }

  private placeHandles({ pose, viewport }: Frame): void {
    const { extent } = this.overlay
    if (!extent) return
    const places = handlePixels(pierStore.getState().view.cut, extent, pose, viewport, barHeight)
    for (const [id, element] of this.handles) {
      const at = places[id]
      element.toggleAttribute('data-far', isFar(pierStore.getState().view.cut, id, pose))
      element.style.visibility = at || element === document.activeElement ? '' : 'hidden'
      if (at) element.style.transform = `translate(${at[0].toFixed(1)}px, ${at[1].toFixed(1)}px)`
    }
  }

  private placePlate(frame: Frame): void {
    const { pointedAt } = pierStore.getState().view
    if (!this.plate || pointedAt === null) return
    const at = this.pointer ?? this.overlay.anchorPixel(pointedAt, frame) ?? [16, 16]
    const { width, height } = frame.viewport
    const [w, h] = [this.plate.offsetWidth || 160, this.plate.offsetHeight || 44]
    const x = at[0] + 18 + w > width - 8 ? at[0] - 18 - w : at[0] + 18
    const y = Math.min(Math.max(8, at[1] - h - 10), height - barHeight - h - 8)
    this.plate.style.transform = `translate(${Math.max(8, x).toFixed(0)}px, ${y.toFixed(0)}px)`
  }
}
