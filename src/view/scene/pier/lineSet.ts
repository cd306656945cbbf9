import { BackSide, Color, ShaderMaterial, Vector2, Vector4, type WebGLRenderer } from 'three'
import { LineMaterial } from 'three/examples/jsm/lines/LineMaterial.js'

const ink = '#16181b'

/** The lines of the drafting notes (2.1): width in CSS pixels, colour, opacity. */
const kinds = {
  /** Outline of a cut face. */
  cut: [2.2, ink, 1],
  /** Light casing under it, so that it reads on dark ground. */
  casing: [4.4, '#f6f3ea', 0.62],
  /** Ground line where the cut meets grade. */
  ground: [3, ink, 1],
  /** Hard edges beyond the cut. */
  edge: [1.1, ink, 0.62],
  /** Outline of what is pointed at. */
  lit: [3.4, '#7a1f5c', 1],
  water: [2.2, '#0072b2', 1],
  frost: [1.6, '#2a2d31', 1],
  /** From where a part stood to where it was lifted. */
  guide: [1, ink, 0.75],
} as const
type LineKind = keyof typeof kinds
const rimPixels = 1.3

/**
 * A thin dark rim round a part, as a draughtsman inks its outline: the back faces, pushed out by `uWidth` pixels. The size of the picture
 * [px] is written into `uSize` before each draw.
 */
const createRim = () => {
  const uniforms = { uWidth: { value: rimPixels }, uSize: { value: new Vector2(1, 1) } }
  const material = new ShaderMaterial({
    side: BackSide,
    uniforms,
    vertexShader: `
uniform float uWidth; uniform vec2 uSize;
void main() {
  vec4 at = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  vec2 way = normalMatrix[0].xy * normal.x + normalMatrix[1].xy * normal.y + normalMatrix[2].xy * normal.z;
  float reach = length(way);
  if (reach > 1e-5) at.xy += way / reach * 2.0 * uWidth / uSize * at.w;
  gl_Position = at;
}`,
    fragmentShader: 'void main() { gl_FragColor = vec4(0.055, 0.06, 0.07, 1.0); }',
  })
  return { material, uniforms }
}

/** Lines of a set width on the screen, and the rim of steel, shared by all that one canvas shows. */
export type LineSet = ReturnType<typeof createLineSet>

export function createLineSet() {
  // All in the transparent pass, so that renderOrder alone says which lies over which.
  const line = (kind: LineKind): LineMaterial => {
    const [linewidth, colour, opacity] = kinds[kind]
    return new LineMaterial({ color: new Color(colour).getHex(), linewidth, transparent: true, opacity, depthWrite: false, fog: true })
  }
  const names = Object.keys(kinds) as LineKind[]
  const lines = Object.fromEntries(names.map((kind) => [kind, line(kind)])) as Readonly<Record<LineKind, LineMaterial>>
  const rim = createRim()
  const picture = new Vector4()
  return {
    ...lines,
    rim: rim.material,
    /** Before each body that is drawn with the rim. */
    sizeRim: (renderer: WebGLRenderer): void => {
      renderer.getViewport(picture)
      rim.uniforms.uSize.value.set(picture.z, picture.w)
      rim.material.uniformsNeedUpdate = true
    },
    /** Draws lines `factor` times as wide. */
    scale: (factor: number): void => {
      for (const kind of names) lines[kind].linewidth = kinds[kind][0] * factor
      rim.uniforms.uWidth.value = rimPixels * factor
    },
    dispose: (): void => {
      for (const material of [...Object.values(lines), rim.material]) material.dispose()
    },
  }
}
