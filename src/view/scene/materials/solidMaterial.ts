import { type IUniform, MeshStandardMaterial } from 'three'
import { hatchGlsl } from './hatchGlsl.ts'
import type { SharedUniforms } from './sharedUniforms.ts'
import { fragmentPars, inkAndAccent, vertexMain, vertexPars } from './surfaceGlsl.ts'
import { metalPars, mineralPars, woodPars } from './toneGlsl.ts'

/** Three families, three programs; everything else about a material is a uniform. */
export type Family = 'mineral' | 'wood' | 'metal'

const pars: Readonly<Record<Family, string>> = { mineral: mineralPars, wood: woodPars, metal: metalPars }
const rough: Readonly<Record<Family, string>> = { mineral: 'mineralRough', wood: '0.78', metal: 'metalRough' }
const height: Readonly<Record<Family, string>> = { mineral: 'mineralHeight', wood: 'woodHeight', metal: 'metalHeight' }

export type OwnUniforms = Record<string, IUniform>

/**
 * A standard material whose colour, roughness and relief come from the place in the solid, so that a cut shows the inside.
 * Pushed back a little in depth so that lines drawn on its faces stay whole.
 */
export function solidMaterial(family: Family, shared: SharedUniforms, own: OwnUniforms): MeshStandardMaterial {
  const material = new MeshStandardMaterial({
    metalness: family === 'metal' ? 0.12 : 0,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  })
  material.onBeforeCompile = (shader) => {
    Object.assign(shader.uniforms, shared, own)
    shader.vertexShader = shader.vertexShader
      .replace('#include <common>', `#include <common>${vertexPars}`)
      .replace('#include <begin_vertex>', `#include <begin_vertex>${vertexMain}`)
    shader.fragmentShader = shader.fragmentShader
      .replace(
        '#include <clipping_planes_pars_fragment>',
        `#include <clipping_planes_pars_fragment>${hatchGlsl}${fragmentPars}${pars[family]}`,
      )
      .replace('#include <map_fragment>', `vec3 tone = ${family}Tone();${inkAndAccent} diffuseColor.rgb = tone;`)
      .replace('#include <roughnessmap_fragment>', `float roughnessFactor = clamp(${rough[family]}, 0.25, 1.0);`)
      .replace('#include <normal_fragment_maps>', `normal = bumped(normal, ${height[family]}, uSection > 0.5 ? 0.55 : 1.0, faceDirection);`)
      .replace('#include <emissivemap_fragment>', 'totalEmissiveRadiance += uAccent * 0.16 * uLit;')
  }
  material.customProgramCacheKey = () => `solid-${family}`
  return material
}
