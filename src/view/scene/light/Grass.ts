import {
  BufferAttribute,
  Color,
  DoubleSide,
  InstancedBufferAttribute,
  InstancedBufferGeometry,
  Mesh,
  MeshLambertMaterial,
  Vector3,
} from 'three'
import { gradeOf } from '../camera/pierExtent.ts'
import type { PlacedPier } from '../pier/placedPier.ts'
import { writeEach } from './Floor.ts'

const most = 16000
/** Blades on a block of this half side [m]. */
const bladesOn = (half: number): number => Math.round(11000 * half * half + 900)

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
 * Short blades on the ground, so that turf has an edge where it is cut. The vertex shader stands each blade on grade and folds away those
 * in the opened sector or on the bare ring, so that turning the cut costs nothing here. Many piers share the blades that one may have.
 */
export class Grass {
  readonly mesh: Mesh<InstancedBufferGeometry, MeshLambertMaterial>
  private readonly own = { uCut: { value: new Vector3() } }

  constructor() {
    const geometry = new InstancedBufferGeometry()
    geometry.setAttribute('position', new BufferAttribute(new Float32Array([-0.5, 0, 0, 0.5, 0, 0, 0.12, 1, 0]), 3))
    geometry.setAttribute('normal', new BufferAttribute(new Float32Array([0, 1, 0, 0, 1, 0, 0, 1, 0]), 3))
    geometry.setAttribute('spot', new InstancedBufferAttribute(scatter(), 4))
    const material = new MeshLambertMaterial({ color: new Color('#7c8f45'), side: DoubleSide })
    material.onBeforeCompile = (shader) => {
      Object.assign(shader.uniforms, this.own)
      shader.vertexShader = shader.vertexShader
        .replace(
          '#include <common>',
          `#include <common>
attribute vec4 spot;
attribute vec4 axis;
attribute vec4 lie;
uniform vec3 uCut;
varying vec2 vTint;
vec2 turned(vec2 way, float by){ return vec2(cos(by) * way.x - sin(by) * way.y, sin(by) * way.x + cos(by) * way.y); }`,
        )
        .replace(
          '#include <begin_vertex>',
          `float edge = lie.x;
vec2 at = turned(spot.xy * edge * 0.995, axis.w);
float turnTo = mod(atan(at.y, at.x) - uCut.x + 9.42477796, 6.28318531) - 3.14159265;
float shown = step(lie.y + 0.07 * spot.z, length(at)) * step(uCut.y, abs(turnTo)) * step(mod(float(gl_InstanceID), uCut.z) + 0.5, 11000.0 * edge * edge + 900.0);
float spin = spot.w * 6.2832;
float wide = min(0.007, 0.006 * edge + 0.001) * shown;
float tall = min(0.04, 0.03 * edge + 0.008) * (0.45 + 0.75 * spot.z) * shown;
vec3 transformed = axis.xyz + vec3(at.x + cos(spin) * position.x * wide + (spot.w - 0.5) * position.y * tall * 0.8,
  lie.z * at.x + lie.w * at.y + position.y * tall,
  at.y + sin(spin) * position.x * wide + (spot.z - 0.5) * position.y * tall * 0.8);
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

  /** On the blocks of these piers; `lifted` says how far up the turf of each is [m]. */
  place(places: readonly PlacedPier[], lifted: (standing: PlacedPier) => number): void {
    const [first] = places
    const { geometry } = this.mesh
    geometry.instanceCount = 0
    if (!first) return
    const { cut } = first.pier.look
    const each = Math.floor(most / places.length)
    this.own.uCut.value.set(cut.facing + first.turn, cut.open > 0 ? cut.open / 2 + 0.002 : -1, each)
    writeEach(geometry, 'axis', 4, places, (one) => [one.at[0], one.at[1] + lifted(one), one.at[2], one.turn], each)
    const lie = ({ pier, turn }: PlacedPier): readonly number[] => {
      const { gx, gz } = gradeOf(pier.result.spec.site)
      const [c, s] = [Math.cos(turn), Math.sin(turn)]
      return [pier.extent.half, pier.extent.holeRadius + 0.05, c * gx - s * gz, s * gx + c * gz]
    }
    writeEach(geometry, 'lie', 4, places, lie, each)
    geometry.instanceCount = places.length > 1 ? each * places.length : Math.min(most, bladesOn(first.pier.extent.half))
  }

  dispose(): void {
    this.mesh.geometry.dispose()
    this.mesh.material.dispose()
  }
}
