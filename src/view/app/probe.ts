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

/** What a test may read of the running page, as `window.pierglass`. Reading is all it does. */
export type Probe = Readonly<{
  /** The first picture stands, or the drawn section has taken its place. */
  ready(): boolean
  document(): PierDocument
  /** Of the draft while a drag goes on. */
  result(): PierResult
  /** Null without a 3D picture. */
  rendererInfo(): RendererInfo | null
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

/** Called once, when the page starts. */
export const installProbe = (page: Omit<Probe, 'rendererInfo'>): void => {
  const probe: Probe = Object.freeze({ ...page, rendererInfo: () => readRenderer?.() ?? null })
  Object.defineProperty(window, 'pierglass', { value: probe, configurable: true })
}
