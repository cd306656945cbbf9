import type { PierResult } from '../../core/model/result.ts'
import type { Cut } from '../../core/model/solid.ts'
import type { PierDocument } from '../../core/model/spec.ts'
import type { Moment } from '../../state/appState.ts'
import { picture } from './opening.ts'

export type RendererInfo = Readonly<{
  geometries: number
  textures: number
  programs: number
  /** Frames drawn since the page opened. */
  frames: number
}>

/** What a pull on the post has done to the 3D picture: zones by id that stand elsewhere, that have parted, that have bent. */
export type PullReading = Readonly<{
  kind: 'none' | 'unverified' | 'holding' | 'letting-go'
  link: string | null
  how: string | null
  isMoving: boolean
  displaced: readonly string[]
  parted: readonly string[]
  bent: readonly string[]
}>

/** The moment on show, and where it stands between two whole steps, days or years while it plays. */
export type TimeReading = Readonly<{ time: Moment | null; playing: boolean; place: number }>

/** What a test may read of the running page, as `window.pierglass`. Reading is all it does. */
export type Probe = Readonly<{
  /** The first picture stands, or the drawn section has taken its place. */
  ready(): boolean
  document(): PierDocument
  /** Of the draft while a drag goes on. */
  result(): PierResult
  /** Null without a 3D picture. */
  rendererInfo(): RendererInfo | null
  /** Null without a 3D picture. */
  pullState(): PullReading | null
  cutState(): Cut
  /** Null before the time strip has been fetched. */
  timeState(): TimeReading | null
  /** Zones that are drawn, by id; null without a 3D picture. */
  shownParts(): readonly string[] | null
}>

declare global {
  interface Window {
    readonly pierglass?: Probe
  }
}

let readRenderer: (() => RendererInfo) | null = null

/** The scene hands in how its renderer is read once its first frame is drawn, and takes it back with null. */
export const offerRenderer = (read: (() => RendererInfo) | null): void => {
  readRenderer = read
  if (read) picture.pass()
}

let readPull: (() => PullReading) | null = null

/** The scene hands in how its pull is read while it stands, and takes it back with null. */
export const offerPull = (read: (() => PullReading) | null): void => {
  readPull = read
}

let readTime: (() => TimeReading) | null = null

/** The time strip hands in how its moment is read, once it is there. */
export const offerTime = (read: () => TimeReading): void => {
  readTime = read
}

let readParts: (() => readonly string[]) | null = null

/** The scene hands in how the zones that it draws are read while it stands, and takes it back with null. */
export const offerParts = (read: (() => readonly string[]) | null): void => {
  readParts = read
}

/** Called once, when the page starts. */
export const installProbe = (page: Omit<Probe, 'rendererInfo' | 'pullState' | 'timeState' | 'shownParts'>): void => {
  const probe: Probe = Object.freeze({
    ...page,
    rendererInfo: () => readRenderer?.() ?? null,
    pullState: () => readPull?.() ?? null,
    timeState: () => readTime?.() ?? null,
    shownParts: () => readParts?.() ?? null,
  })
  Object.defineProperty(window, 'pierglass', { value: probe, configurable: true })
}
