import {
  BufferAttribute,
  Color,
  DynamicDrawUsage,
  InstancedBufferAttribute,
  InstancedBufferGeometry,
  Mesh,
  ShaderMaterial,
  Vector2,
} from 'three'
import type { PlacedPier } from '../pier/placedPier.ts'
import { sunCast } from './Daylight.ts'

/**
 * `vBlock`: half side and height of a block, its turn, and how far its floor reaches. Signed distance [m] to its foot in plan: its square, less the sector of the cut, whose
 * sides' normals look into it.
 */
const footPars = `
vec2 turned(vec2 way, float by){ return vec2(cos(by) * way.x - sin(by) * way.y, sin(by) * way.x + cos(by) * way.y); }
varying vec4 vBlock; uniform vec2 uSideA; uniform vec2 uSideB; uniform float uWide;
float toFoot(vec2 p){
  vec2 q = abs(turned(p, -vBlock.z)) - vec2(vBlock.x);
  float square = length(max(q, 0.0)) + min(max(q.x, q.y), 0.0);
  float a = dot(p, uSideA); float b = dot(p, uSideB);
  float opened = uWide < 0.0 ? -1e3 : uWide > 0.5 ? max(a, b) : min(a, b);
  return max(square, opened);
}`

/** The shadow is worked out at the corners of the floor's net: it is soft everywhere, and so costs nothing by the pixel. */
const floorVertex = `${footPars}
attribute vec3 at; attribute vec4 block;
uniform vec2 uSun;
varying vec2 vAt; varying float vShadow;
void main(){
  vBlock = block;
  vAt = position.xz * block.w;
  float shadow = 0.0;
  for (int k = 0; k < 14; k++) {
    float h = block.y * (float(k) + 0.5) / 14.0;
    float soft = 0.12 * block.x + 0.24 * h;
    float inside = smoothstep(-soft, soft, -toFoot(vAt + uSun * h));
    shadow = max(shadow, inside * exp(-0.55 * h / block.y));
  }
  vShadow = shadow;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(at + vec3(vAt.x, 0.0, vAt.y), 1.0);
}`
const floorFragment = `${footPars}
uniform vec3 uTone; uniform vec3 uDeep; uniform float uDepth; uniform float uShade;
varying vec2 vAt; varying float vShadow;
void main(){
  float d = max(toFoot(vAt), 0.0);
  float away = length(vAt);
  float pool = 1.0 - smoothstep(0.15 * vBlock.w, vBlock.w, away);
  float contact = uDepth * (0.62 * exp(-d / (0.055 * vBlock.x)) + 0.38 * exp(-d / (0.32 * vBlock.x)));
  float dark = max(contact, 1.0 - (1.0 - contact * 0.6) * (1.0 - uShade * vShadow));
  gl_FragColor = vec4(mix(uTone, uDeep, dark), max(pool * 0.9, dark) * pool);
  #include <colorspace_fragment>
}`

const columns = 96
/** Shares of the floor's reach, closer together where the block stands. */
const rings = [0, 0.08, 0.13, 0.17, 0.2, 0.225, 0.25, 0.275, 0.3, 0.325, 0.35, 0.38, 0.42, 0.47, 0.54, 0.63, 0.75, 1]

/** A round net in the ground's plane, of radius 1, its middle at the origin. */
function net(): InstancedBufferGeometry {
  const places = rings.flatMap((r) =>
    Array.from({ length: columns }, (_, k) => [
      r * Math.cos((2 * Math.PI * k) / columns),
      0,
      r * Math.sin((2 * Math.PI * k) / columns),
    ]).flat(),
  )
  const faces = rings.slice(1).flatMap((_, ring) =>
    Array.from({ length: columns }, (_, k) => {
      const [a, b] = [ring * columns + k, ring * columns + ((k + 1) % columns)]
      return [a, b, a + columns, b, b + columns, a + columns]
    }).flat(),
  )
  const geometry = new InstancedBufferGeometry()
  geometry.setAttribute('position', new BufferAttribute(Float32Array.from(places), 3))
  geometry.setIndex(faces)
  return geometry
}

/** The pale floor that blocks stand on: a pool of light that fades into the page, darker where a block touches it and where it keeps the sun off. */
export class Floor {
  private readonly own = {
    uTone: { value: new Color() },
    uDeep: { value: new Color() },
    uDepth: { value: 0.5 },
    uShade: { value: 0.5 },
    uSideA: { value: new Vector2() },
    uSideB: { value: new Vector2() },
    uWide: { value: -1 },
    uSun: { value: new Vector2() },
  }
  readonly pool = new Mesh(
    net(),
    new ShaderMaterial({
      vertexShader: floorVertex,
      fragmentShader: floorFragment,
      transparent: true,
      depthWrite: false,
      toneMapped: false,
      uniforms: this.own,
    }),
  )

  constructor() {
    this.pool.renderOrder = -2
    this.pool.frustumCulled = false
  }

  /** Under the blocks of piers; the cut, which opens toward the same side in all, takes its sector out of each shadow. */
  place(places: readonly [PlacedPier, ...PlacedPier[]]): void {
    const [{ pier, turn }] = places
    const { open } = pier.look.cut
    const facing = pier.look.cut.facing + turn
    const [a, b] = [facing - open / 2, facing + open / 2]
    this.own.uSideA.value.set(-Math.sin(a), Math.cos(a))
    this.own.uSideB.value.set(Math.sin(b), -Math.cos(b))
    this.own.uWide.value = open < 1e-3 ? -1 : open > Math.PI ? 1 : 0
    this.own.uSun.value.set(...sunCast(facing))
    writeEach(this.pool.geometry, 'at', 3, places, ({ at: [x, y, z], pier: { extent } }) => [x, y + extent.bottom - 0.002, z])
    writeEach(this.pool.geometry, 'block', 4, places, ({ turn: each, pier: { extent } }) => [
      extent.half,
      -extent.bottom,
      each,
      extent.half * 4.2,
    ])
    this.pool.geometry.instanceCount = places.length
  }

  setTheme(isDark: boolean, hasShadow: boolean): void {
    this.own.uTone.value.set(isDark ? '#2b2d2f' : '#f7f5ee')
    this.own.uDeep.value.set(isDark ? '#050505' : '#6f6a60')
    this.own.uDepth.value = isDark ? 0.85 : 0.6
    this.own.uShade.value = hasShadow ? (isDark ? 0.7 : 0.6) : 0
  }

  dispose(): void {
    this.pool.geometry.dispose()
    this.pool.material.dispose()
  }
}

/** Room for so many piers is made at once: how many instances there may be is asked by the renderer only when it draws the first time. */
const mostPiers = 1000

/** Writes a value for each pier; it holds for `times` instances of what is drawn. */
export function writeEach(
  geometry: InstancedBufferGeometry,
  name: string,
  size: number,
  places: readonly PlacedPier[],
  of: (standing: PlacedPier) => readonly number[],
  times = 1,
): void {
  const before = geometry.getAttribute(name) as InstancedBufferAttribute | undefined
  const isKept = before?.meshPerAttribute === times
  const attribute = isKept ? before : new InstancedBufferAttribute(new Float32Array(mostPiers * size), size, false, times)
  if (!isKept) geometry.setAttribute(name, attribute.setUsage(DynamicDrawUsage))
  attribute.array.set(places.flatMap((standing) => [...of(standing)]))
  attribute.needsUpdate = true
}
