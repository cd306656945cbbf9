import type { PierResult } from '../../core/model/result.ts'
import type { Cut } from '../../core/model/solid.ts'
import type { PierDocument } from '../../core/model/spec.ts'

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
}

let readPull: (() => PullReading) | null = null

/** The scene hands in how its pull is read while it stands, and takes it back with null. */
export const offerPull = (read: (() => PullReading) | null): void => {
  readPull = read
}

/** Called once, when the page starts. */
export const installProbe = (page: Omit<Probe, 'rendererInfo' | 'pullState'>): void => {
  const probe: Probe = Object.freeze({ ...page, rendererInfo: () => readRenderer?.() ?? null, pullState: () => readPull?.() ?? null })
  Object.defineProperty(window, 'pierglass', { value: probe, configurable: true })
}
