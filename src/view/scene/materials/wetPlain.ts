import type { MeshLambertMaterial } from 'three'
import type { Role } from '../../../core/model/solid.ts'
import type { SharedUniforms } from './sharedUniforms.ts'
import { vertexMain, vertexPars } from './surfaceGlsl.ts'
import { scatterPars, wetPars } from './wetGlsl.ts'

/** Lets a plain material of wood or of a dry pour show what the full ones show of water. */
export function wetPlain(material: MeshLambertMaterial, role: Role, shared: SharedUniforms): void {
  const isWood = role === 'wood'
  material.onBeforeCompile = (shader) => {
    Object.assign(shader.uniforms, shared, { uScattered: { value: 1 } })
    shader.vertexShader = shader.vertexShader
      .replace('#include <common>', `#include <common>${vertexPars}`)
      .replace('#include <begin_vertex>', `#include <begin_vertex>${vertexMain}`)
    const pars = `\nvarying vec3 vPlace; varying vec3 vFace; uniform vec3 uPaperScale;${isWood ? wetPars : scatterPars}`
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <clipping_planes_pars_fragment>', `#include <clipping_planes_pars_fragment>${pars}`)
      .replace('#include <map_fragment>', `diffuseColor.rgb = ${isWood ? 'wetWood' : 'scattered'}(diffuseColor.rgb);`)
  }
  material.customProgramCacheKey = () => (isWood ? 'plain-wood' : 'plain-dry-pour')
}
