import type { Cut } from '../../../core/model/solid.ts'
import { pointAt } from '../../../state/actions/view.ts'
import { pierStore } from '../../../state/store.ts'
import type { Pixel } from '../../section/ink.ts'
import type { Director } from '../Director.ts'
import type { HandleGround } from '../handles/CutHandles.tsx'
import type { HandleId } from '../handles/cutDrag.ts'
import { angleDragged, handlePixels, isFar } from '../handles/handlePlaces.ts'
import { barHeight, type Frame } from './obstacles.ts'
import { PictureOverlay } from './PictureOverlay.ts'

const tapSlack = 6

/** Ties what lies over the canvas to the picture: moves handles and plate with each frame, and finds the part under the pointer. */
export class PictureLayer implements HandleGround {
  private director: Director | null = null
  private overlay: PictureOverlay | null = null
  private frame: Frame | null = null
  private readonly handles = new Map<HandleId, HTMLElement>()
  private plate: HTMLElement | null = null
  private pointer: Pixel | null = null
  private asked = 0
  private pressedAt: Pixel | null = null

  attach(svg: SVGSVGElement, director: Director): void {
    this.director = director
    this.overlay = new PictureOverlay(svg, director.stage)
    this.overlay.onFrame = (frame) => {
      this.frame = frame
      this.placeHandles(frame)
      this.placePlate(frame)
    }
    director.setOverlay(this.overlay)
  }

  detach(): void {
    cancelAnimationFrame(this.asked)
    this.asked = 0
    this.director?.setOverlay(null)
    this.director = null
    this.overlay = null
    this.frame = null
  }

  register(handle: HandleId, element: HTMLElement | null): void {
    if (element) this.handles.set(handle, element)
    else this.handles.delete(handle)
    if (this.frame) this.placeHandles(this.frame)
  }

  readonly registerPlate = (element: HTMLElement | null): void => {
    this.plate = element
  }

  angleDragged(from: Pixel, to: Pixel, cut: Cut, handle: HandleId): number {
    const extent = this.director?.stage.extent
    return extent && this.frame ? angleDragged(from, to, cut, handle, extent, this.frame.pose, this.frame.viewport) : 0
  }

  hold(isHeld: boolean): void {
    this.director?.holdHandle(isHeld)
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
    if (kind === 'mouse' || !from || !this.overlay || !this.frame || Math.hypot(at[0] - from[0], at[1] - from[1]) > tapSlack) return
    this.pointer = at
    pointAt(pierStore, this.overlay.zoneAt(at, this.frame))
    this.pointer = at
  }

  private lookUnder(): void {
    if (!this.overlay || !this.frame || !this.pointer || this.director?.rig.isMoving || this.director?.isDragging) return
    pointAt(pierStore, this.overlay.zoneAt(this.pointer, this.frame))
    this.placePlate(this.frame)
  }

  private placeHandles({ pose, viewport }: Frame): void {
    const extent = this.director?.stage.extent
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
    if (!this.plate || pointedAt === null || !this.overlay) return
    const at = this.pointer ?? this.overlay.anchorPixel(pointedAt, frame) ?? [16, 16]
    const { width, height } = frame.viewport
    const [w, h] = [this.plate.offsetWidth || 160, this.plate.offsetHeight || 44]
    const x = at[0] + 18 + w > width - 8 ? at[0] - 18 - w : at[0] + 18
    const y = Math.min(Math.max(8, at[1] - h - 10), height - barHeight - h - 8)
    this.plate.style.transform = `translate(${Math.max(8, x).toFixed(0)}px, ${y.toFixed(0)}px)`
  }
}
