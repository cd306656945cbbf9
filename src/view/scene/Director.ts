import type { AppState, ViewSettings } from '../../state/appState.ts'
import { shownResult } from '../../state/derived.ts'
import { hiddenZones } from '../../state/hiddenZones.ts'
import { shownLayers } from '../../state/shownLayers.ts'
import type { PierStore } from '../../state/store.ts'
import { CameraRig } from './camera/CameraRig.ts'
import { framed } from './camera/framing.ts'
import { focalPixels, type Pose, type Viewport } from './camera/lens.ts'
import { partExtent } from './camera/pierExtent.ts'
import { aimAt } from './camera/viewpoints.ts'
import type { PullReading } from '../app/probe.ts'
import { Pace } from './Pace.ts'
import type { Overlay, Playground } from './playground.ts'
import { PaperScale } from './materials/paperScale.ts'
import { pullState } from './pull/pullState.ts'
import { Rising } from './pull/Rising.ts'
import { player } from '../time/player.ts'
import { Stage, type Tones } from './Stage.ts'

/** Below this width [px] labels and the whole block do not fit side by side: the hole is framed instead. */
export const narrowWidth = 560

/** Keeps the picture in step with the store: hears the store, tells stage, camera and overlay, and asks for frames. Nothing here is React. */
export class Director {
  readonly stage: Stage
  readonly rig: CameraRig
  private readonly paperScale = new PaperScale()
  private viewport: Viewport = { width: 1, height: 1 }
  private shown: AppState | null = null
  /** Named view that the camera stands at, until a hand moves it. */
  private standsAt: ViewSettings['viewpoint']['name'] | null = null
  private heardPull: number | null = null
  private readonly rising = new Rising()
  private toSettle = true
  private handleHeld = false
  private readonly pace: Pace
  private readonly unsubscribe: () => void
  private over: Overlay | null = null
  private hidden: ReadonlySet<string> = new Set()

  constructor(
    private readonly ground: Playground,
    store: PierStore,
  ) {
    this.stage = new Stage(ground.renderer, ground.scene)
    this.pace = new Pace(ground.setSharpness, ground.needFrame)
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
    player.setPump(ground.needFrame)
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
    this.keepPace()
    this.moveOn()
    player.tick(performance.now())
    this.stage.setMoment(player.stretch, player.place)
    this.rig.frame()
    const pose = this.rig.pose()
    this.stage.frame(this.ground.camera.back)
    const perPixel = pose.distance / focalPixels(this.viewport.height)
    if (this.paperScale.update(perPixel, performance.now(), this.stage.shared.uPaperScale.value)) this.ground.needFrame()
    if (this.toSettle && !this.rig.isMoving && !this.isDragging && !this.rising.isRunning) {
      this.toSettle = false
      this.over?.settle(pose, this.viewport)
      if (this.pace.isCoarse) this.ground.needFrame()
    } else if (!this.isOnlyPlaying) this.over?.track(pose, this.viewport)
  }

  /** What has let go goes on rising. */
  private moveOn(): void {
    if (!this.rising.isRunning) return
    this.rising.frame(performance.now())
    this.stage.raise(this.rising.share)
    if (!this.rising.isRunning) this.toSettle = true
    this.ground.needFrame()
  }

  /** What the pull has done to the picture: state, and the zones that stand elsewhere, read off what is drawn. */
  readPull(): PullReading {
    const { pulled } = this.stage
    const way = pulled.kind === 'letting-go' ? pulled.way : null
    return {
      kind: pulled.kind,
      link: way?.link ?? null,
      how: way?.how ?? null,
      isMoving: this.rising.isRunning,
      ...this.stage.model.moved(),
    }
  }

  /** Time passes in a picture that stands still: what lies over it stays as it is. */
  private get isOnlyPlaying(): boolean {
    return player.isRunning && !this.toSettle && !this.rig.isMoving && !this.isDragging && !this.rising.isRunning
  }

  /** What waits to be laid out is laid out before pixels come back. */
  private keepPace(): void {
    const isBusy = this.rig.isMoving || this.isDragging || this.rising.isRunning || player.isRunning
    if (isBusy || !this.toSettle) this.pace.tick(isBusy, performance.now())
  }

  /** The drawing context came back: the same picture is made again. */
  restore(): void {
    this.stage.restore()
    this.reSettle()
  }

  /** Draws the picture once at another size and hands it over as a PNG file; null when the browser makes none. */
  capture(width: number, height: number): Promise<Blob | null> {
    const { renderer, scene, camera } = this.ground
    const before = { viewport: this.viewport, ratio: renderer.getPixelRatio(), pose: this.rig.pose() }
    const draw = (viewport: Viewport, ratio: number, pose: Pose): void => {
      renderer.setPixelRatio(ratio)
      renderer.setSize(viewport.width, viewport.height, false)
      this.rig.setViewport(viewport)
      this.rig.goTo(pose, true)
      this.rig.frame()
      renderer.render(scene, camera)
    }
    const share = height / before.viewport.height
    const marks = this.stage.shared.uPaperScale.value
    const marksBefore = marks.clone()
    // Lines grow with the picture; marks half as much, so that a large picture shows more of them.
    const rung = PaperScale.rungFor((before.pose.distance / focalPixels(height)) * Math.sqrt(share))
    this.stage.lines.scale(share)
    marks.set(rung, rung, 0)
    draw({ width, height }, 1, { ...before.pose, shift: [before.pose.shift[0] * share, before.pose.shift[1] * share] })
    const made = new Promise<Blob | null>((done) => renderer.domElement.toBlob(done, 'image/png'))
    this.stage.lines.scale(1)
    marks.copy(marksBefore)
    draw(before.viewport, before.ratio, before.pose)
    this.reSettle()
    return made
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
    player.setPump(null)
    this.unsubscribe()
    this.rig.dispose()
    this.stage.dispose()
  }

  private hear(state: AppState): void {
    const before = this.shown
    this.shown = state
    const { view } = state
    const isNewPier = before === null || shownResult(before) !== shownResult(state)
    const hasWay = this.hearPull(state, isNewPier)
    const hasOtherParts = this.hearTime(state)
    const isNewPicture =
      isNewPier ||
      hasWay ||
      before.view.cut !== view.cut ||
      before.view.cutPost !== view.cutPost ||
      shownLayers(before.view) !== shownLayers(view) ||
      before.view.quality !== view.quality
    if (isNewPicture) {
      this.stage.show(shownResult(state), view)
      this.stage.raise(this.rising.share)
    } else {
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
    // A pull that only grows moves its arrow, and a day or a year that passes its tones; all words stay where they are.
    const passes =
      before !== null &&
      before.view.time?.stretch === view.time?.stretch &&
      (before.view.time !== view.time || before.view.playing !== view.playing) &&
      !hasOtherParts
    if (passes && !isNewPicture) {
      this.ground.needFrame()
      return
    }
    if (isNewPicture || before?.view.pull === view.pull || (before?.view.pull === null) !== (view.pull === null)) this.toSettle = true
    this.ground.needFrame()
  }

  /** True when other parts of the pier stand than before: a step of building it. */
  private hearTime(state: AppState): boolean {
    const hidden = hiddenZones(state)
    if (hidden === this.hidden) return false
    this.hidden = hidden
    this.stage.setHidden(hidden)
    return true
  }

  /** True when what lets go is another than before. */
  private hearPull(state: AppState, isNewPier: boolean): boolean {
    const { pull } = state.view
    if (!isNewPier && this.heardPull === pull) return false
    this.heardPull = pull
    const before = this.stage.pulled
    const pulled = pullState(shownResult(state), pull)
    const way = pulled.kind === 'letting-go' ? pulled.way : null
    const had = before.kind === 'letting-go' ? before.way : null
    // The same link of the same pier goes on as it is, under another pull.
    if (!isNewPier && way && way.link === had?.link) return false
    this.stage.setPull(pulled)
    if (!isNewPier && !way && !had) return false
    if (!way) this.rising.end()
    else if (way.link !== had?.link) this.rising.begin(performance.now(), prefersStill())
    return true
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
    const { spec, checks } = shownResult(state)
    // A close-up is of the part whose link is open.
    const where = checks.find((check) => check.id === state.view.openLink)?.where ?? []
    const part = partExtent(where, (id) => this.stage.model.zones.get(id)?.mesh ?? null)
    const aim = aimAt(this.standsAt, extent, cut.facing, spec.site.downhill, this.viewport.width < narrowWidth, part)
    const { width, height } = this.viewport
    const safe = this.over?.safeArea(this.viewport, state, this.standsAt) ?? { left: 12, top: 0, right: width - 12, bottom: height - 12 }
    const pose = framed(aim, this.viewport, safe)
    this.rig.setLimits(pose.distance, extent.half, extent.bottom, Math.max(extent.groundTop, extent.pierTop) + extent.half)
    this.rig.goTo(pose, atOnce || prefersStill())
  }
}

export const prefersStill = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches
