import { Color, type ShaderMaterial, Vector4, type WebGLRenderer } from 'three'
import { LineMaterial } from 'three/examples/jsm/lines/LineMaterial.js'
import { createRimMaterial } from '../materials/rimMaterial.ts'

/** The widths of the drafting notes (2.1), in CSS pixels, shared by all zones. */
export type LineSet = Readonly<{
  /** Outline of a cut face. */
  cut: LineMaterial
  /** Light casing under it, so that it reads on dark ground. */
  casing: LineMaterial
  /** Ground line where the cut meets grade. */
  ground: LineMaterial
  /** Hard edges beyond the cut. */
  edge: LineMaterial
  /** Outline of what is pointed at. */
  lit: LineMaterial
  water: LineMaterial
  frost: LineMaterial
  /** From where a part stood to where it was lifted. */
  guide: LineMaterial
  /** Rim of bars, bolts and bracket steel. */
  rim: ShaderMaterial
  /** Before each body that is drawn with the rim. */
  sizeRim(renderer: WebGLRenderer): void
  /** Draws lines `factor` times as wide. */
  scale(factor: number): void
  dispose(): void
}>

export const lineInk = '#16181b'
export const waterBlue = '#0072b2'

const pixels = { cut: 2.2, casing: 4.4, ground: 3, edge: 1.1, lit: 3.4, water: 2.2, frost: 1.6, guide: 1 } as const
const rimPixels = 1.3

export function createLineSet(): LineSet {
  // All in the transparent pass, so that renderOrder alone says which lies over which.
  const line = (colour: string, width: number, opacity = 1) =>
    new LineMaterial({ color: new Color(colour).getHex(), linewidth: width, transparent: true, opacity, depthWrite: false, fog: true })
  const cut = line(lineInk, pixels.cut)
  const casing = line('#f6f3ea', pixels.casing, 0.62)
  const ground = line(lineInk, pixels.ground)
  const edge = line(lineInk, pixels.edge, 0.62)
  const lit = line('#7a1f5c', pixels.lit)
  const water = line(waterBlue, pixels.water)
  const frost = line('#2a2d31', pixels.frost)
  const guide = line(lineInk, pixels.guide, 0.75)
  const all = { cut, casing, ground, edge, lit, water, frost, guide }
  const rim = createRimMaterial([0.055, 0.06, 0.07], rimPixels)
  const rimWidth = rim.uniforms.uWidth
  const picture = new Vector4()
  return {
    ...all,
    rim,
    sizeRim: (renderer) => {
      renderer.getViewport(picture)
      rim.uniforms.uSize?.value.set(picture.z, picture.w)
      rim.uniformsNeedUpdate = true
    },
    scale: (factor) => {
      for (const [name, width] of Object.entries(pixels)) all[name as keyof typeof pixels].linewidth = width * factor
      if (rimWidth) rimWidth.value = rimPixels * factor
    },
    dispose: () => {
      for (const material of Object.values(all)) material.dispose()
      rim.dispose()
    },
  }
}
