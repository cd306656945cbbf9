import { Color, type Data3DTexture, Fog, type Scene, type Texture, type WebGLRenderer } from 'three'
import type { LettingGo } from '../../core/derive/lettingGo.ts'
import type { PierResult } from '../../core/model/result.ts'
import type { Role } from '../../core/model/solid.ts'
import { lastDay } from '../../state/actions/time.ts'
import type { Stretch, ViewSettings } from '../../state/appState.ts'
import { type Gone, goneBy } from '../../state/goneBy.ts'
import { shownLayers } from '../../state/shownLayers.ts'
import { type PierExtent, pierExtent } from './camera/pierExtent.ts'
import { Daylight } from './light/Daylight.ts'
import { makeEnvironment } from './light/environment.ts'
import { Floor } from './light/Floor.ts'
import { Grass } from './light/Grass.ts'
import { createSharedUniforms, type SharedUniforms } from './materials/sharedUniforms.ts'
import { createLineSet, type LineSet } from './model/lineSet.ts'
import { isNative, PierModel } from './model/PierModel.ts'
import { type PullState, shownRise } from './pull/pullState.ts'
import type { Target } from './pointing/nearestHit.ts'

/** What the scene takes from the page's style sheet. */
export type Tones = Readonly<{ paper: string; ink: string; accent: string; isDark: boolean }>

/** How much of the sky's light falls on the pier. */
const environmentShare = 0.5

/** What several stages on one renderer share. Whoever lends it disposes of it. `environment` is null in the light profile. */
export type Lent = Readonly<{ noise: Data3DTexture; environment: Texture | null }>

/** The pier with its light and floor. Knows three and the core; nothing of React, the store or the page. */
export class Stage {
  readonly shared: SharedUniforms
  readonly lines: LineSet = createLineSet()
  readonly model: PierModel
  private readonly daylight = new Daylight()
  private readonly floor = new Floor()
  private readonly grass: Grass
  private environment: ReturnType<typeof makeEnvironment> | null = null
  private readonly background = new Color('#efece4')
  private readonly fog = new Fog('#efece4', 1, 10)
  extent: PierExtent | null = null
  pulled: PullState = { kind: 'none' }
  private way: LettingGo | null = null
  private readonly gone: Gone = { least: 0, most: 0 }

  constructor(
    private readonly renderer: WebGLRenderer,
    private readonly scene: Scene,
    private lent: Lent | null = null,
  ) {
    this.shared = createSharedUniforms(lent?.noise)
    this.model = new PierModel(this.shared, this.lines)
    this.grass = new Grass(this.shared)
    if (lent) this.daylight.drawShadowsOnlyWhenAsked()
    scene.background = this.background
    scene.fog = this.fog
    scene.add(this.model.root, this.daylight.root, this.floor.root, this.grass.mesh)
  }

  show(result: PierResult, view: ViewSettings): void {
    const { cut, cutPost, quality, layers } = view
    const { water, frost, soil, wetness } = shownLayers(view)
    this.model.show(result, { cut, cutPost, quality, water, frost, soil, wetness })
    this.extent = pierExtent(result, (id) => this.model.zones.get(id)?.mesh ?? null)
    const { half, bottom, groundTop, pierTop, postTop, holeRadius } = this.extent
    const top = Math.min(postTop, Math.max(groundTop, pierTop) + half)
    const isFull = quality === 'full'
    this.daylight.aim(cut.facing, Math.hypot(half * Math.SQRT2, (top - bottom) / 2) * 1.02, (top + bottom) / 2)
    this.daylight.setShadows(isFull)
    this.floor.place(half, bottom, cut)
    this.floor.setShadows(isFull)
    this.floor.root.visible = layers.soil
    this.grass.mesh.visible = isFull && layers.soil && !this.way?.parts.some(({ zone }) => isSoil(roleOf(result, zone)))
    this.grass.place(half, holeRadius + 0.05, cut.facing, cut.open)
    this.lift(view.explode)
    this.model.setPointed(view.pointedAt)
    if (this.lent) this.scene.environment = isFull ? this.lent.environment : null
    else if (isFull && !this.environment) this.makeEnvironment()
    this.scene.environmentIntensity = environmentShare
  }

  /** Leaves out the zones that are not there yet. */
  setHidden(hidden: ReadonlySet<string>): void {
    this.model.setHidden(hidden)
    this.daylight.askForShadows()
  }

  /** A moment, between whole steps, days and years too; null for none. Called with each frame that is played: it makes nothing. */
  setMoment(stretch: Stretch | null, place: number): void {
    const fresh = freshness(stretch, place)
    this.shared.uFresh.value = fresh
    this.model.setFresh(fresh)
    const spec = this.model.result?.spec
    if (stretch !== 'years' || !spec || !goneBy(spec, place, this.gone)) this.shared.uGone.value.set(0, 0)
    else this.shared.uGone.value.set(this.gone.most, this.gone.least)
  }

  /** What a pull does. How the pier lets go takes effect with the next `show`. */
  setPull(pulled: PullState): void {
    this.pulled = pulled
    const way = pulled.kind === 'letting-go' ? pulled.way : null
    if (way === this.way) return
    this.way = way
    this.model.setWay(way)
  }

  /** 0 as it stands … 1 as far up as the picture shows what has let go. */
  raise(share: number): void {
    if (!this.way || !this.model.result) return
    this.model.setRise(share * shownRise(this.way.how, this.model.result.spec.hole.depth))
    this.daylight.askForShadows()
  }

  lift(amount: number): void {
    this.model.setLift(amount)
    if (this.extent) this.extent = { ...this.extent, lifted: this.model.highestLift() }
    this.grass.mesh.position.y = this.model.heightLifted('topsoil') || this.model.heightLifted('soil')
    this.daylight.askForShadows()
  }

  /** Bodies that can be seen and pointed at. */
  targets(): Target[] {
    const list: Target[] = []
    for (const objects of [this.model.zones, this.model.riders])
      for (const { id, mesh, group } of objects.values()) if (mesh && group.visible) list.push({ id, mesh, offset: group.position })
    return list
  }

  setTones({ paper, accent, isDark }: Tones): void {
    this.background.set(paper)
    this.fog.color.set(paper)
    this.shared.uAccent.value.set(accent)
    this.lines.lit.color.set(accent)
    this.daylight.setTheme(isDark)
    this.floor.setTheme(isDark)
  }

  /** Before each frame: haze by distance from the eye [m]. */
  frame(distance: number): void {
    const reach = this.extent?.half ?? 1
    this.fog.near = distance - reach * 0.2
    this.fog.far = distance + reach * 14
  }

  /** After the drawing context came back: what lived only on it is made anew. */
  restore(lent: Lent | null = null): void {
    if (this.environment) this.makeEnvironment()
    if (lent) {
      this.lent = lent
      this.scene.environment = lent.environment
    }
    this.daylight.askForShadows()
  }

  dispose(): void {
    this.scene.remove(this.model.root, this.daylight.root, this.floor.root, this.grass.mesh)
    this.scene.environment = null
    this.environment?.dispose()
    this.model.dispose()
    this.daylight.dispose()
    this.floor.dispose()
    this.grass.dispose()
    this.lines.dispose()
    this.shared.uScatter.value.dispose()
    if (!this.lent) this.shared.uNoise.value.dispose()
  }

  private makeEnvironment(): void {
    this.environment = makeEnvironment(this.renderer)
    this.scene.environment = this.environment.texture
  }
}

/** Just placed while it is built; over its first month it grows light, fast at first. For the eye, no measure. */
function freshness(stretch: Stretch | null, place: number): number {
  if (stretch === 'build') return 1
  return stretch === 'month' ? Math.max(0, 1 - place / lastDay) ** 1.6 : 0
}

const isSoil = (role: Role | null): boolean => role !== null && isNative(role)
const roleOf = ({ zones }: PierResult, id: string): Role | null => zones.find((zone) => zone.id === id)?.role ?? null
