import { type BufferAttribute, type BufferGeometry, Group, Mesh as Body, Vector4 } from 'three'
import type { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js'
import { LineSegments2 } from 'three/examples/jsm/lines/LineSegments2.js'
import type { Mesh } from '../../../core/model/solid.ts'
import type { ZoneMaterials } from '../materials/zoneMaterials.ts'
import { toBufferGeometry, toLineGeometry } from '../toBufferGeometry.ts'
import type { LineSet } from './lineSet.ts'

/** One zone in the picture: its body, the dark line round its cut faces, thin lines on its hard edges. It owns what it made. */
export class ZoneObject {
  readonly group = new Group()
  private readonly body = new Body()
  private readonly cut: LineSegments2
  private readonly casing: LineSegments2
  private readonly edge: LineSegments2
  private readonly lit: LineSegments2
  private readonly rim: Body | null
  private share: Float32Array | null = null
  private geometry: BufferGeometry | null = null
  private outline: LineSegmentsGeometry | null = null
  private edges: LineSegmentsGeometry | null = null
  private materials: ZoneMaterials | null = null
  private key = ''
  /** Core mesh last shown: what pointing and labels read. */
  mesh: Mesh | null = null

  constructor(
    readonly id: string,
    lines: LineSet,
    isSteel = false,
  ) {
    this.rim = isSteel ? rimmed(lines) : null
    this.body.geometry.dispose()
    this.body.castShadow = true
    this.body.receiveShadow = true
    this.casing = new LineSegments2(undefined, lines.casing)
    this.cut = new LineSegments2(undefined, lines.cut)
    this.edge = new LineSegments2(undefined, lines.edge)
    this.lit = new LineSegments2(undefined, lines.lit)
    this.casing.renderOrder = 1
    this.edge.renderOrder = 2
    this.cut.renderOrder = 3
    this.lit.renderOrder = 5
    this.lit.visible = false
    this.group.add(this.body, this.casing, this.cut, this.edge, this.lit)
    if (this.rim) this.group.add(this.rim)
  }

  /** Swaps materials when the look has changed; `make` is asked only then. */
  dress(key: string, make: () => ZoneMaterials): void {
    if (key === this.key) return
    this.materials?.dispose()
    this.materials = make()
    this.body.material = [...this.materials.pair]
    this.key = key
  }

  /** `share`: how much of a bend each vertex takes part in, 0..1; null for what does not bend. */
  show(mesh: Mesh, edges: Float32Array, share: Float32Array | null = null): void {
    this.mesh = mesh
    this.share = share
    this.geometry = toBufferGeometry(mesh, this.geometry)
    this.body.geometry = this.geometry
    if (this.rim) this.rim.geometry = this.geometry
    this.outline = toLineGeometry(mesh.outline, this.outline)
    this.edges = toLineGeometry(edges, this.edges)
    this.cut.geometry = this.outline
    this.casing.geometry = this.outline
    this.edge.geometry = this.edges
    const isCut = mesh.outline.length > 0
    this.cut.visible = isCut
    this.casing.visible = isCut
    this.lit.geometry = isCut ? this.outline : this.edges
  }

  /** Writes the vertices anew, in place, bent up by `lift` [m] where they take part. */
  bend(lift: number): void {
    if (!this.share || !this.mesh || !this.geometry) return
    const place = this.geometry.getAttribute('position') as BufferAttribute
    const { positions } = this.mesh
    for (let i = 0; i < this.share.length; i++) place.array[3 * i + 1] = (positions[3 * i + 1] ?? 0) + (this.share[i] ?? 0) * lift
    place.needsUpdate = true
  }

  /** `amount` 0 plain … 1 pointed at. */
  setLit(amount: number): void {
    this.materials?.setLit(amount)
    this.lit.visible = amount > 0
  }

  setVisible(isVisible: boolean): void {
    this.group.visible = isVisible
  }

  /** 0 hard and dry … 1 just placed. */
  setFresh(amount: number): void {
    this.materials?.setFresh(amount)
  }

  setShadows(cast: boolean): void {
    this.body.castShadow = cast
  }

  dispose(): void {
    this.geometry?.dispose()
    this.outline?.dispose()
    this.edges?.dispose()
    this.materials?.dispose()
    this.group.removeFromParent()
  }
}

const view = new Vector4()

/** A body that draws the dark rim round steel, over the same geometry as the steel itself. */
function rimmed(lines: LineSet): Body {
  const rim = new Body()
  rim.geometry.dispose()
  rim.material = lines.rim
  rim.onBeforeRender = (renderer) => {
    renderer.getViewport(view)
    lines.rim.uniforms.uSize?.value.set(view.z, view.w)
    lines.rim.uniformsNeedUpdate = true
  }
  return rim
}
