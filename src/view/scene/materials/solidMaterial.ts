import { type IUniform, MeshLambertMaterial } from 'three'
import type { SharedUniforms } from './sharedUniforms.ts'
import { fragmentPars, inkAndAccent, vertexMain, vertexPars } from './surfaceGlsl.ts'
import { metalPars, mineralPars, woodPars } from './toneGlsl.ts'
import { scatterPars, wetPars } from './wetGlsl.ts'

/** Three families of materials, and two plain ones for weak machines; everything else about a material is a uniform. */
export type Family = 'mineral' | 'wood' | 'metal' | 'plain' | 'plainWood'
/** Faces as they stand, faces that the cut made, and such faces with marks on them. */
export type Faces = 'outside' | 'cut' | 'marked'

const plainPars = `varying vec3 vPlace; varying vec3 vFace; varying float vLit; uniform vec3 uPaperScale; uniform vec3 uAccent; uniform vec3 uTone;`
const pars: Readonly<Record<Family, string>> = {
  mineral: fragmentPars + mineralPars,
  wood: fragmentPars + woodPars,
  metal: fragmentPars + metalPars,
  plain: `${plainPars}${scatterPars} uniform float uSets; uniform float uFresh;
vec3 plainTone(){ return scattered(uTone) * mix(1.0, 0.52, uSets * uFresh); }`,
  plainWood: `${plainPars}${wetPars}
vec3 plainWoodTone(){ return wetWood(uTone); }`,
}
const defines: Readonly<Record<Faces, Record<string, string>>> = {
  outside: {},
  cut: { CUT_FACE: '' },
  marked: { CUT_FACE: '', MARKED: '' },
}

export type OwnUniforms = Record<string, IUniform>

/**
 * A matt material whose colour and relief come from the place in the solid, so that a cut shows the inside. `own` is asked when the
 * material is first drawn. It is pushed back a little in depth so that lines drawn on a face stay whole.
 */
export function solidMaterial(family: Family, faces: Faces, shared: SharedUniforms, own: () => OwnUniforms): MeshLambertMaterial {
  const isPlain = family === 'plain' || family === 'plainWood'
  const material = new MeshLambertMaterial({ polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 })
  material.defines = { ...defines[faces] }
  material.onBeforeCompile = (shader) => {
    Object.assign(shader.uniforms, shared, own())
    shader.vertexShader = shader.vertexShader
      .replace('#include <common>', `#include <common>${vertexPars}`)
      .replace('#include <begin_vertex>', `#include <begin_vertex>${vertexMain}`)
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <clipping_planes_pars_fragment>', `#include <clipping_planes_pars_fragment>\n${pars[family]}`)
      .replace('#include <map_fragment>', `vec3 tone = ${family}Tone();${isPlain ? '' : inkAndAccent} diffuseColor.rgb = tone;`)
      .replace('#include <normal_fragment_maps>', isPlain ? '' : 'normal = bumped(normal, relief, 1.0, faceDirection);')
      .replace('#include <emissivemap_fragment>', `totalEmissiveRadiance += uAccent * ${isPlain ? '0.5' : '0.16'} * vLit;`)
  }
  material.customProgramCacheKey = () => `solid-${family}-${faces}`
  return material
}
