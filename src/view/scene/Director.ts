import type { PerspectiveCamera, Scene, WebGLRenderer } from 'three'
import type { AppState, Viewpoint, ViewSettings } from '../../state/appState.ts'
import { shownResult } from '../../state/derived.ts'
import type { PierStore } from '../../state/store.ts'
import { CameraRig } from './camera/CameraRig.ts'
import { framed, type SafeArea } from './camera/framing.ts'
import { focalPixels, type Pose, type Viewport } from './camera/lens.ts'
import { aimAt } from './camera/viewpoints.ts'
import { PaperScale } from './materials/paperScale.ts'
import { Stage, type Tones } from './Stage.ts'

/** Below this width [px] labels and the whole block do not fit side by side: the hole is framed instead. */
export const narrowWidth = 560

/** What lies over the picture and wants to follow it. */
export type Overlay = Readonly<{
  /** Room the picture may fill, given the words that stand round it. */
  safeArea(viewport: Viewport, state: AppState, name: Viewpoint): SafeArea
  /** The state has changed. */
  refresh(state: AppState): void
  /** Each drawn frame: move what is tied to points. */
  track(pose: Pose, viewport: Viewport): void
  grab(): void
  /** The camera rests: lay everything out anew. */
  settle(pose: Pose, viewport: Viewport): void
}>

export type Playground = Readonly<{
  renderer: WebGLRenderer
  scene: Scene
  camera: PerspectiveCamera
  element: HTMLElement
  needFrame(): void
}>

/** Keeps the picture in step with the store: hears the store, tells stage, camera and overlay, and asks for frames. Nothing here is React. */
export class Director {
  readonly stage: Stage
  readonly rig: CameraRig
  private readonly paperScale = new PaperScale()
  private viewport: Viewport = { width: 1, height: 1 }
  private shown: AppState | null = null
  /** Named view that the camera stands at, until a hand moves it. */
  private standsAt: ViewSettings['viewpoint']['name'] | null = null
  private toSettle = true
  private handleHeld = false
  private readonly unsubscribe: () => void
  private over: Overlay | null = null

  constructor(
    private readonly ground: Playground,
    store: PierStore,
  ) {
    this.stage = new Stage(ground.renderer, ground.scene)
    this.rig = new CameraRig(ground.camera, ground.element, {
      needFrame: ground.needFrame,
      onGrab: () => {
        this.standsAt = null
        this.over?.grab()
      },
      onRest: () => {
        this.toSettle = true
        ground.needFrame()
      },
    })
    this.unsubscribe = store.subscribe((state) => this.hear(state))
    this.hear(store.getState())
  }

  /** Puts the overlay over the picture, and frames the pier in the room it leaves. */
  setOverlay(overlay: Overlay | null): void {
    this.over = overlay
    if (!overlay || !this.shown) return
    overlay.refresh(this.shown)
    this.reframe()
  }

  setViewport(viewport: Viewport): void {
    this.viewport = viewport
    this.rig.setViewport(viewport)
    this.look(true)
    this.toSettle = true
    this.ground.needFrame()
  }

  setTones(tones: Tones): void {
    this.stage.setTones(tones)
    this.ground.needFrame()
  }

  setMotion(isWanted: boolean): void {
    this.rig.setDamping(isWanted)
  }

  /** Before each frame is drawn. */
  frame(): void {
    this.rig.frame()
    const pose = this.rig.pose()
    this.stage.frame(this.ground.camera, pose.distance)
    const perPixel = pose.distance / focalPixels(this.viewport.height)
    if (this.paperScale.update(perPixel, performance.now(), this.stage.shared.uPaperScale.value)) this.ground.needFrame()
    if (this.toSettle && !this.rig.isMoving && !this.isDragging) {
      this.toSettle = false
      this.over?.settle(pose, this.viewport)
    } else this.over?.track(pose, this.viewport)
  }

  /** The cut, or a length of the pier, is being dragged: words stay where they are until it is let go. */
  get isDragging(): boolean {
    return this.handleHeld || this.shown?.draft != null
  }

  holdHandle(isHeld: boolean): void {
    this.handleHeld = isHeld
    if (!isHeld) this.reSettle()
  }

  reSettle(): void {
    this.toSettle = true
    this.ground.needFrame()
  }

  /** Room the overlay needs has changed: frame the pier anew where it is still framed. */
  reframe(): void {
    this.look(true)
    this.toSettle = true
    this.ground.needFrame()
  }

  dispose(): void {
    this.unsubscribe()
    this.rig.dispose()
    this.stage.dispose()
  }

  private hear(state: AppState): void {
    const before = this.shown
    this.shown = state
    const { view } = state
    const isNewPier = before === null || shownResult(before) !== shownResult(state)
    const isNewPicture =
      isNewPier ||
      before.view.cut !== view.cut ||
      before.view.cutPost !== view.cutPost ||
      before.view.layers !== view.layers ||
      before.view.quality !== view.quality
    if (isNewPicture) this.stage.show(shownResult(state), view)
    else {
      if (before.view.explode !== view.explode) {
        this.stage.lift(view.explode)
        this.look(true)
      }
      if (before.view.pointedAt !== view.pointedAt) this.stage.model.setPointed(view.pointedAt)
    }
    this.over?.refresh(state)
    if (before === null) this.standsAt = view.viewpoint.name
    else if (before.view.viewpoint.at !== view.viewpoint.at) this.lookFrom(view.viewpoint.name)
    else if (isNewPier && state.draft === null) this.look(false)
    this.toSettle = true
    this.ground.needFrame()
  }

  private lookFrom(name: ViewSettings['viewpoint']['name']): void {
    this.standsAt = name
    this.look(false)
  }

  /** Frames the view that the camera stands at; leaves a camera that a hand has moved where it is. */
  private look(atOnce: boolean): void {
    const { extent } = this.stage
    const state = this.shown
    if (!extent || !state || this.standsAt === null || this.viewport.width < 2) return
    const { cut } = state.view
    const { spec } = shownResult(state)
    const aim = aimAt(this.standsAt, extent, cut.facing, spec.site.downhill, this.viewport.width < narrowWidth)
    const { width, height } = this.viewport
    const safe = this.over?.safeArea(this.viewport, state, this.standsAt) ?? { left: 12, top: 0, right: width - 12, bottom: height - 12 }
    const pose = framed(aim.points, aim.azimuth, aim.pitch, this.viewport, safe)
    this.rig.setLimits(pose.distance, extent.half, extent.bottom, Math.max(extent.groundTop, extent.pierTop) + extent.half)
    this.rig.goTo(pose, atOnce || prefersStill())
  }
}

export const prefersStill = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches
