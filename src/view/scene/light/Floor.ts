import { CircleGeometry, Color, Group, Mesh, ShaderMaterial, ShadowMaterial, Vector2 } from 'three'

import type { Cut } from '../../../core/model/solid.ts'

const contactFragment = `
uniform vec3 uTone; uniform vec3 uDeep; uniform float uHalf; uniform float uReach; uniform float uDepth; uniform vec2 uCut;
varying vec2 vAt;
void main(){
  vec2 q = abs(vAt) - vec2(uHalf);
  float d = length(max(q, 0.0)) + min(max(q.x, q.y), 0.0);
  float turnTo = mod(atan(-vAt.y, vAt.x) - uCut.x + 9.42477796, 6.28318531) - 3.14159265;
  float inside = uCut.y - abs(turnTo);
  if (inside > 0.0) d = max(d, length(vAt) * sin(min(inside, 1.5708)));
  float pool = 1.0 - smoothstep(0.15 * uReach, uReach, length(vAt));
  float contact = uDepth * (0.62 * exp(-max(d, 0.0) / (0.055 * uHalf)) + 0.38 * exp(-max(d, 0.0) / (0.32 * uHalf)));
  float a = max(pool * 0.9, contact);
  gl_FragColor = vec4(mix(uTone, uDeep, contact), a * pool);
  #include <colorspace_fragment>
}`
const contactVertex = `varying vec2 vAt; uniform float uReach;
void main(){ vAt = position.xy * uReach; gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0); }`

/** The pale floor the block stands on: a pool of light that fades into the page, darker where the block touches it, and the sun's shadow. */
export class Floor {
  readonly root = new Group()
  private readonly pool: Mesh<CircleGeometry, ShaderMaterial>
  private readonly shade: Mesh<CircleGeometry, ShadowMaterial>
  private readonly own = {
    uTone: { value: new Color() },
    uDeep: { value: new Color() },
    uHalf: { value: 1 },
    uReach: { value: 4 },
    uDepth: { value: 0.5 },
    uCut: { value: new Vector2() },
  }

  constructor() {
    const disc = new CircleGeometry(1, 72)
    this.pool = new Mesh(
      disc,
      new ShaderMaterial({
        vertexShader: contactVertex,
        fragmentShader: contactFragment,
        transparent: true,
        depthWrite: false,
        toneMapped: false,
        uniforms: this.own,
      }),
    )
    this.shade = new Mesh(disc, new ShadowMaterial({ opacity: 0.2, depthWrite: false, fog: false }))
    this.shade.receiveShadow = true
    this.pool.renderOrder = -2
    this.shade.renderOrder = -1
    this.root.add(this.pool, this.shade)
    this.root.rotation.x = -Math.PI / 2
  }

  /** `half` side of the block [m], `y` its underside; the cut takes its sector out of the contact shadow. */
  place(half: number, y: number, { facing, open }: Cut): void {
    this.own.uCut.value.set(facing, open / 2)
    const reach = half * 4.2
    this.root.position.y = y - 0.002
    this.root.scale.setScalar(reach)
    this.own.uHalf.value = half
    this.own.uReach.value = reach
  }

  setTheme(isDark: boolean): void {
    this.own.uTone.value.set(isDark ? '#2b2d2f' : '#f7f5ee')
    this.own.uDeep.value.set(isDark ? '#050505' : '#6f6a60')
    this.own.uDepth.value = isDark ? 0.85 : 0.6
    this.shade.material.opacity = isDark ? 0.5 : 0.2
  }

  setShadows(on: boolean): void {
    this.shade.visible = on
  }

  dispose(): void {
    this.pool.geometry.dispose()
    this.pool.material.dispose()
    this.shade.material.dispose()
  }
}
