import { Color, Scene, type WebGLRenderer } from 'three'
import type { PierResult } from '../../../core/model/result.ts'
import type { AppState, ViewSettings } from '../../../state/appState.ts'
import type { PierStore } from '../../../state/store.ts'
import { CameraRig } from '../camera/CameraRig.ts'
import { framed } from '../camera/framing.ts'
import { focalPixels, type Viewport } from '../camera/lens.ts'
import type { PictureCamera } from '../camera/PictureCamera.ts'
import type { PierExtent } from '../camera/pierExtent.ts'
import { aimAt } from '../camera/viewpoints.ts'
import { narrowWidth, prefersStill } from '../Director.ts'
import { PaperScale } from '../materials/paperScale.ts'
import type { CompareInk } from './CompareInk.ts'
import { paperTones } from '../capturePicture.ts'
import { Lender } from './Lender.ts'
import { columnTally } from '../../section/tallyRoom.ts'
import { Stage, type Tones } from '../Stage.ts'
import { Pace } from '../Pace.ts'

/** Room [px] left free round the pier in its column. */
const margin = 10
/** Share of the height below the hole, so that the foot of the block is seen in a narrow column. */
const footRoom = 0.085

export type CompareGround = Readonly<{
  renderer: WebGLRenderer
  camera: PictureCamera
  element: HTMLElement
  needFrame(): void
  setSharpness(share: number): void
}>

type Column = { readonly scene: Scene; readonly stage: Stage; shown: PierResult | null }

/**
 * Several piers on one canvas: a scene each, one eye and one lens for all, so that scale, light and cut are the same in every
 * column. A column without a pier stays bare. Nothing here is React.
 */
export class CompareDirector {
  readonly rig: CameraRig
  private readonly lender: Lender
  private readonly columns: Column[] = []
  private readonly paperScale = new PaperScale()
  private readonly bare = new Scene()
  private readonly paper = new Color('#efece4')
  private readonly pace: Pace
  private piers: readonly (PierResult | null)[] = []
  private tones: Tones | null = null
  private size: Viewport = { width: 1, height: 1 }
  private view: ViewSettings
  private standsAt: ViewSettings['viewpoint']['name'] | null
  /** Year at which wet wood is shown; null: it is not. */
  private year: number | null = null
  private readonly unsubscribe: () => void

  constructor(
    private readonly ground: CompareGround,
    private readonly store: PierStore,
    private readonly ink: CompareInk,
  ) {
    this.view = store.getState().view
    this.standsAt = this.view.viewpoint.name
    this.lender = new Lender(ground.renderer, this.view.quality)
    this.pace = new Pace(ground.setSharpness, ground.needFrame)
    this.bare.background = this.paper
    this.rig = new CameraRig(ground.camera, ground.element, {
      needFrame: ground.needFrame,
      onGrab: () => {
        this.standsAt = null
      },
      onRest: ground.needFrame,
    })
    ground.renderer.autoClear = true
    this.unsubscribe = store.subscribe((state) => this.hear(state))
  }

  /** The piers from left to right; null for one that can't be built. */
  setPiers(piers: readonly (PierResult | null)[]): void {
    this.piers = piers
    while (this.columns.length < piers.length) this.columns.push(this.makeColumn())
    for (const column of this.columns.splice(piers.length)) column.stage.dispose()
    this.showAll(false)
    this.rig.setViewport(this.cell())
    this.frameAll(true)
    this.ground.needFrame()
  }

  /** Size of the whole canvas [px]. */
  setSize(size: Viewport): void {
    this.size = size
    this.rig.setViewport(this.cell())
    this.frameAll(true)
    this.ground.needFrame()
  }

  setTones(tones: Tones): void {
    this.tones = tones
    this.paper.set(tones.paper)
    for (const { stage } of this.columns) stage.setTones(tones)
    this.ground.needFrame()
  }

  /** Shows wet wood and the way of rain at a year, or neither. */
  setYear(year: number | null): void {
    const isSwitched = (this.year === null) !== (year === null)
    this.year = year
    if (year === null) this.ink.clear()
    if (isSwitched) {
      this.showAll(true)
      this.frameAll(true)
    } else this.setMoments()
    this.ground.needFrame()
  }

  setMotion(isWanted: boolean): void {
    this.rig.setDamping(isWanted)
  }

  /** Draws every column. Called once a frame, in place of the renderer's own drawing. */
  frame(): void {
    this.pace.tick(this.rig.isMoving, performance.now())
    this.rig.frame()
    const { renderer, camera } = this.ground
    const { distance } = this.rig.pose()
    const cell = this.cell()
    const perPixel = distance / focalPixels(cell.height)
    const scales = { set: (x: number, y: number, z: number) => this.setPaperScale(x, y, z) }
    if (this.paperScale.update(perPixel, performance.now(), scales)) this.ground.needFrame()
    renderer.setScissorTest(true)
    for (const [i, pier] of this.piers.entries()) {
      const column = this.columns[i]
      if (!column) continue
      renderer.setViewport(i * cell.width, 0, cell.width, cell.height)
      renderer.setScissor(i * cell.width, 0, cell.width, cell.height)
      column.stage.frame(camera.back)
      renderer.render(pier === null ? this.bare : column.scene, camera)
    }
    renderer.setScissorTest(false)
    this.drawInk()
  }

  /** Each column as it is seen, on white paper, as the address of a JPEG; null for a column without a pier. The screen keeps its own colours. */
  pictures(): readonly (string | null)[] {
    const { tones } = this
    const canvas = this.ground.renderer.domElement
    const count = Math.max(1, this.piers.length)
    const [width, height] = [Math.floor(canvas.width / count), canvas.height]
    if (width < 2 || height < 2) return this.piers.map(() => null)
    this.setTones(paperTones)
    // What a canvas shows can be read until the task ends in which it was drawn.
    this.frame()
    const copy = document.createElement('canvas')
    copy.width = width
    copy.height = height
    const pen = copy.getContext('2d')
    const taken = this.piers.map((pier, i) => {
      if (pier === null || !pen) return null
      pen.drawImage(canvas, i * width, 0, width, height, 0, 0, width, height)
      return copy.toDataURL('image/jpeg', 0.9)
    })
    if (tones) this.setTones(tones)
    return taken
  }

  /** The drawing context came back: what lived only on it is made anew. */
  restore(): void {
    this.lender.remake()
    for (const { stage } of this.columns) stage.restore(this.lender.lent)
    this.ground.needFrame()
  }

  dispose(): void {
    this.unsubscribe()
    this.rig.dispose()
    for (const { stage } of this.columns) stage.dispose()
    this.columns.length = 0
    this.ink.clear()
    this.lender.dispose()
  }

  private makeColumn(): Column {
    const scene = new Scene()
    const stage = new Stage(this.ground.renderer, scene, this.lender.lent)
    if (this.tones) stage.setTones(this.tones)
    return { scene, stage, shown: null }
  }

  private cell(): Viewport {
    return { width: this.size.width / Math.max(1, this.piers.length), height: this.size.height }
  }

  private setPaperScale(x: number, y: number, z: number): void {
    for (const { stage } of this.columns) stage.shared.uPaperScale.value.set(x, y, z)
  }

  private showAll(isAnew: boolean): void {
    for (const [i, pier] of this.piers.entries()) {
      const column = this.columns[i]
      if (!column || pier === null || (pier === column.shown && !isAnew)) continue
      column.stage.show(pier, { ...this.view, layers: { ...this.view.layers, wetness: this.year !== null }, time: null, pointedAt: null })
      column.shown = pier
    }
    this.setMoments()
  }

  private setMoments(): void {
    for (const { stage } of this.columns) stage.setMoment(this.year === null ? null : 'years', this.year ?? 0)
  }

  private drawInk(): void {
    if (this.year === null) return
    const { cut, theme, explode } = this.view
    const inked = this.piers.map((pier, i) => {
      const extent = this.columns[i]?.stage.extent
      return pier && extent && explode === 0 ? { result: pier, extent } : null
    })
    this.ink.draw(inked, { pose: this.rig.pose(), viewport: this.cell() }, cut, theme, this.rig.isMoving)
  }

  private hear({ view }: AppState): void {
    const before = this.view
    this.view = view
    const isNewPicture =
      before.cut !== view.cut || before.cutPost !== view.cutPost || before.layers !== view.layers || before.explode !== view.explode
    if (isNewPicture) this.showAll(true)
    if (before.viewpoint.at !== view.viewpoint.at) this.standsAt = view.viewpoint.name
    const isNewAim = before.viewpoint.at !== view.viewpoint.at || before.explode !== view.explode
    if (isNewAim) this.frameAll(false)
    if (isNewPicture || isNewAim) this.ground.needFrame()
  }

  /** One pose that holds every pier: none is drawn larger than another. Leaves a camera that a hand has moved where it is. */
  private frameAll(atOnce: boolean): void {
    const { width, height } = this.cell()
    const name = this.standsAt
    if (name === null || width < 2 || height < 2) return
    const { facing } = this.store.getState().view.cut
    const aims = this.columns.flatMap(({ stage: { extent }, shown }) =>
      extent && shown ? [{ extent, aim: aimAt(name, extent, facing, shown.spec.site.downhill, width < narrowWidth) }] : [],
    )
    const [first] = aims
    if (!first) return
    const points = aims.flatMap(({ aim }) => aim.points)
    const foot = Math.max(height * footRoom, this.year === null ? 0 : columnTally + margin)
    const safe = { left: margin, top: margin, right: width - margin, bottom: height - foot }
    const pose = framed({ ...first.aim, points }, { width, height }, safe)
    const most = (of: (one: PierExtent) => number) => Math.max(...aims.map(({ extent }) => of(extent)))
    const half = most((one) => one.half)
    this.rig.setLimits(pose.distance, half, -most((one) => -one.bottom), most((one) => Math.max(one.groundTop, one.pierTop)) + half)
    this.rig.goTo(pose, atOnce || prefersStill())
  }
}
