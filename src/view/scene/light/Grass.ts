import {
  BufferAttribute,
  Color,
  DoubleSide,
  InstancedBufferAttribute,
  InstancedBufferGeometry,
  Mesh,
  MeshLambertMaterial,
  Vector4,
} from 'three'
import type { SharedUniforms } from '../materials/sharedUniforms.ts'

const most = 16000

/** A fixed scatter over the unit square, spread evenly, and two chances a blade. */
function scatter(): Float32Array {
  const spots = new Float32Array(most * 4)
  for (let i = 0; i < most; i++) {
    spots[4 * i] = 2 * ((0.5 + i * 0.7548776662466927) % 1) - 1
    spots[4 * i + 1] = 2 * ((0.5 + i * 0.5698402909980532) % 1) - 1
    spots[4 * i + 2] = (i * 0.6180339887498949) % 1
    spots[4 * i + 3] = (i * 0.3819660112501051 + 0.17 * ((i * 7) % 13)) % 1
  }
  return spots
}

/**
 * Short blades on the ground, so that turf has an edge where it is cut. Placed once; the vertex shader stands each blade on
 * grade and folds away those in the opened sector or on the bare ring, so that turning the cut costs nothing here.
 */
export class Grass {
  readonly mesh: Mesh<InstancedBufferGeometry, MeshLambertMaterial>
  private readonly own = { uCut: { value: new Vector4(0, 0, 0, 0) }, uBlade: { value: new Vector4(1, 0.3, 0.03, 0.005) } }

  constructor(shared: SharedUniforms) {
    const geometry = new InstancedBufferGeometry()
    geometry.setAttribute('position', new BufferAttribute(new Float32Array([-0.5, 0, 0, 0.5, 0, 0, 0.12, 1, 0]), 3))
    geometry.setAttribute('normal', new BufferAttribute(new Float32Array([0, 1, 0, 0, 1, 0, 0, 1, 0]), 3))
    geometry.setAttribute('spot', new InstancedBufferAttribute(scatter(), 4))
    const material = new MeshLambertMaterial({ color: new Color('#7c8f45'), side: DoubleSide })
    material.onBeforeCompile = (shader) => {
      Object.assign(shader.uniforms, { uGround: shared.uGround, ...this.own })
      shader.vertexShader = shader.vertexShader
        .replace(
          '#include <common>',
          `#include <common>
attribute vec4 spot;
uniform vec4 uCut; uniform vec4 uBlade; uniform vec4 uGround;
varying vec2 vTint;`,
        )
        .replace(
          '#include <begin_vertex>',
          `vec2 at = spot.xy * uBlade.x;
float turnTo = mod(atan(at.y, at.x) - uCut.x + 9.42477796, 6.28318531) - 3.14159265;
float shown = step(uBlade.y + 0.07 * spot.z, length(at)) * step(uCut.y, abs(turnTo));
float spin = spot.w * 6.2832;
float tall = uBlade.z * (0.45 + 0.75 * spot.z) * shown;
vec3 transformed = vec3(at.x + cos(spin) * position.x * uBlade.w * shown + (spot.w - 0.5) * position.y * tall * 0.8,
  uGround.x + uGround.y * at.x + uGround.z * at.y + position.y * tall,
  at.y + sin(spin) * position.x * uBlade.w * shown + (spot.z - 0.5) * position.y * tall * 0.8);
vTint = vec2(position.y, spot.z);`,
        )
      shader.fragmentShader = shader.fragmentShader
        .replace('#include <common>', '#include <common>\nvarying vec2 vTint;')
        .replace(
          '#include <color_fragment>',
          'diffuseColor.rgb *= mix(0.42, 1.05, vTint.x) * mix(vec3(0.82, 0.96, 0.7), vec3(1.15, 1.06, 0.95), vTint.y);',
        )
        .replace(
          '#include <normal_fragment_begin>',
          'float faceDirection = 1.0; vec3 normal = normalize(vNormal); vec3 nonPerturbedNormal = normal;',
        )
    }
    material.customProgramCacheKey = () => 'grass'
    this.mesh = new Mesh(geometry, material)
    this.mesh.frustumCulled = false
    this.mesh.receiveShadow = true
  }

  /** `half` side of the block, `bare` radius without grass [m]; `facing` and `open` of the cut [rad]. */
  place(half: number, bare: number, facing: number, open: number): void {
    this.own.uBlade.value.set(half * 0.995, bare, Math.min(0.04, 0.03 * half + 0.008), Math.min(0.007, 0.006 * half + 0.001))
    this.own.uCut.value.set(facing, open > 0 ? open / 2 + 0.002 : -1, 0, 0)
    const count = Math.round(Math.min(most, 11000 * half * half + 900))
    this.mesh.geometry.instanceCount = count
  }

  dispose(): void {
    this.mesh.geometry.dispose()
    this.mesh.material.dispose()
  }
}
