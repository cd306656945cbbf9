import { BufferAttribute, BufferGeometry, Color, Group, Mesh, ShaderMaterial, Vector2 } from 'three'
import type { Cut } from '../../../core/model/solid.ts'
import { sunCast } from './Daylight.ts'

/** Signed distance [m] to the block's foot in plan: its square, less the sector of the cut, whose sides' normals look into it. */
const footPars = `
uniform float uHalf; uniform vec2 uSideA; uniform vec2 uSideB; uniform float uWide;
float toFoot(vec2 p){
  vec2 q = abs(p) - vec2(uHalf);
  float square = length(max(q, 0.0)) + min(max(q.x, q.y), 0.0);
  float a = dot(p, uSideA); float b = dot(p, uSideB);
  float opened = uWide < 0.0 ? -1e3 : uWide > 0.5 ? max(a, b) : min(a, b);
  return max(square, opened);
}`

/** The shadow is worked out at the corners of the floor's net: it is soft everywhere, and so costs nothing by the pixel. */
const floorVertex = `${footPars}
uniform float uReach; uniform float uTop; uniform vec2 uSun;
varying vec2 vAt; varying float vShadow;
void main(){
  vAt = position.xz * uReach;
  float shadow = 0.0;
  for (int k = 0; k < 14; k++) {
    float h = uTop * (float(k) + 0.5) / 14.0;
    float soft = 0.12 * uHalf + 0.24 * h;
    float inside = smoothstep(-soft, soft, -toFoot(vAt + uSun * h));
    shadow = max(shadow, inside * exp(-0.55 * h / uTop));
  }
  vShadow = shadow;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}`
const floorFragment = `${footPars}
uniform vec3 uTone; uniform vec3 uDeep; uniform float uReach; uniform float uDepth; uniform float uShade;
varying vec2 vAt; varying float vShadow;
void main(){
  float d = max(toFoot(vAt), 0.0);
  float away = length(vAt);
  float pool = 1.0 - smoothstep(0.15 * uReach, uReach, away);
  float contact = uDepth * (0.62 * exp(-d / (0.055 * uHalf)) + 0.38 * exp(-d / (0.32 * uHalf)));
  float dark = max(contact, 1.0 - (1.0 - contact * 0.6) * (1.0 - uShade * vShadow));
  gl_FragColor = vec4(mix(uTone, uDeep, dark), max(pool * 0.9, dark) * pool);
  #include <colorspace_fragment>
}`

const columns = 96
/** Shares of the floor's reach, closer together where the block stands. */
const rings = [0, 0.08, 0.13, 0.17, 0.2, 0.225, 0.25, 0.275, 0.3, 0.325, 0.35, 0.38, 0.42, 0.47, 0.54, 0.63, 0.75, 1]

/** A round net in the ground's plane, of radius 1, its middle at the origin. */
function net(): BufferGeometry {
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
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', new BufferAttribute(Float32Array.from(places), 3))
  geometry.setIndex(faces)
  return geometry
}

/** The pale floor the block stands on: a pool of light that fades into the page, darker where the block touches it and where it keeps the sun off. */
export class Floor {
  readonly root = new Group()
  private readonly own = {
    uTone: { value: new Color() },
    uDeep: { value: new Color() },
    uHalf: { value: 1 },
    uReach: { value: 4 },
    uTop: { value: 1 },
    uDepth: { value: 0.5 },
    uShade: { value: 0.5 },
    uSideA: { value: new Vector2() },
    uSideB: { value: new Vector2() },
    uWide: { value: -1 },
    uSun: { value: new Vector2() },
  }
  private readonly pool = new Mesh(
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
  private shade = 0.5
  private hasShadow = true

  constructor() {
    this.pool.renderOrder = -2
    this.root.add(this.pool)
  }

  /**
   * `half` side of the block, `y` its underside and `top` its height on the axis [m]; the cut takes its sector out of the shadow.
   */
  place(half: number, y: number, { facing, open }: Cut, top: number): void {
    const [a, b] = [facing - open / 2, facing + open / 2]
    this.own.uSideA.value.set(-Math.sin(a), Math.cos(a))
    this.own.uSideB.value.set(Math.sin(b), -Math.cos(b))
    this.own.uWide.value = open < 1e-3 ? -1 : open > Math.PI ? 1 : 0
    this.own.uSun.value.set(...sunCast(facing))
    const reach = half * 4.2
    this.root.position.y = y - 0.002
    this.root.scale.setScalar(reach)
    this.own.uHalf.value = half
    this.own.uReach.value = reach
    this.own.uTop.value = top - y
  }

  setTheme(isDark: boolean): void {
    this.own.uTone.value.set(isDark ? '#2b2d2f' : '#f7f5ee')
    this.own.uDeep.value.set(isDark ? '#050505' : '#6f6a60')
    this.own.uDepth.value = isDark ? 0.85 : 0.6
    this.shade = isDark ? 0.7 : 0.6
    this.setShadows(this.hasShadow)
  }

  setShadows(on: boolean): void {
    this.hasShadow = on
    this.own.uShade.value = on ? this.shade : 0
  }

  dispose(): void {
    this.pool.geometry.dispose()
    this.pool.material.dispose()
  }
}
