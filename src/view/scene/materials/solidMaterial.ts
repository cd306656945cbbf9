import { type IUniform, MeshLambertMaterial, type MeshLambertMaterialParameters } from 'three'
import type { SharedUniforms } from './sharedUniforms.ts'
import { fragmentPars, inkAndAccent, vertexMain, vertexPars } from './surfaceGlsl.ts'
import { metalPars, mineralPars, woodPars } from './toneGlsl.ts'

/** Three families; everything else about a material is a uniform. */
export type Family = 'mineral' | 'wood' | 'metal'
/** Faces as they stand, faces that the cut made, and such faces with marks on them. */
export type Faces = 'outside' | 'cut' | 'marked'

const pars: Readonly<Record<Family, string>> = { mineral: mineralPars, wood: woodPars, metal: metalPars }
const defines: Readonly<Record<Faces, Record<string, string>>> = {
  outside: {},
  cut: { CUT_FACE: '' },
  marked: { CUT_FACE: '', MARKED: '' },
}

export type OwnUniforms = Record<string, IUniform>

/** Pushed back a little in depth so that lines drawn on a face stay whole. */
export const behindLines: MeshLambertMaterialParameters = { polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 }

/**
 * A matt material whose colour and relief come from the place in the solid, so that a cut shows the inside. `own` is asked when the
 * material is first drawn.
 */
export function solidMaterial(family: Family, faces: Faces, shared: SharedUniforms, own: () => OwnUniforms): MeshLambertMaterial {
  const material = new MeshLambertMaterial(behindLines)
  material.defines = { ...defines[faces] }
  material.onBeforeCompile = (shader) => {
    Object.assign(shader.uniforms, shared, own())
    shader.vertexShader = shader.vertexShader
      .replace('#include <common>', `#include <common>${vertexPars}`)
      .replace('#include <begin_vertex>', `#include <begin_vertex>${vertexMain}`)
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <clipping_planes_pars_fragment>', `#include <clipping_planes_pars_fragment>${fragmentPars}${pars[family]}`)
      .replace('#include <map_fragment>', `vec3 tone = ${family}Tone();${inkAndAccent} diffuseColor.rgb = tone;`)
      .replace('#include <normal_fragment_maps>', 'normal = bumped(normal, relief, 1.0, faceDirection);')
      .replace('#include <emissivemap_fragment>', 'totalEmissiveRadiance += uAccent * 0.16 * uLit;')
  }
  material.customProgramCacheKey = () => `solid-${family}-${faces}`
  return material
}
