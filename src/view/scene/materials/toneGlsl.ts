import { mineralTile, mostRelief, turfTile, woodTile } from './bakedTiles.ts'
import { scatterPars, wetPars } from './wetGlsl.ts'

const number = (value: number): string => value.toFixed(6)

export const mineralPars = `${scatterPars}
uniform sampler2D uGrain; uniform sampler2D uTurf;
uniform float uContrast;
uniform float uGrass;
uniform float uSets; uniform float uFresh;
float relief = 0.0;
vec3 mineralTone(){
  vec4 grain = laid(uGrain, vec2(${number(1 / mineralTile)}));
  vec4 broad = laid(uCloud, vec2(0.12, 0.55));
  vec3 c = grain.rgb;
  relief = ${number(mostRelief)} * grain.a;
#ifdef CUT_FACE
  relief *= 0.6;
#endif
  c *= 1.0 + uContrast * (broad.r + broad.g - 1.0);
  c *= 1.0 - 0.16 * smoothstep(0.0, 1.4, vDeep);
  c = scattered(c);
  if (vWater > -1e3) c = moistened(c, wetness(1.4 * broad.g - 0.2) * step(-0.5, vDeep));
  c *= mix(vec3(1.0), vec3(0.5, 0.51, 0.54), uSets * uFresh);
#ifndef CUT_FACE
  if (uGrass > 0.5 && vFace.y > 0.5) {
    vec4 turf = laid(uTurf, vec2(${number(1 / turfTile)}));
    float lawn = smoothstep(vBare, vBare + 0.05, length(vPlace.xz) + 0.16 * (laid(uCloud, vec2(0.9)).b - 0.5));
    c = mix(c * 1.12, turf.rgb * (0.75 + 0.5 * broad.r), lawn);
    relief = mix(relief, ${number(mostRelief)} * turf.a, lawn);
  }
#endif
  return c;
}
`
export const woodPars = `${wetPars}
uniform sampler2D uGrain;
uniform vec4 uPost; uniform float uRound;
float relief = 0.0;
vec3 woodTone(){
  vec3 p = vPlace;
  float plies = uPost.z;
  float across = p.x / uPost.x + 0.5;
  float ply = plies > 1.5 ? clamp(floor(across * plies), 0.0, plies - 1.0) : 0.0;
  float own = fract(sin(ply * 12.9898 + 4.1) * 43758.5453);
  vec2 pith = uRound > 0.5 ? vec2(0.006, -0.004)
    : plies > 1.5 ? vec2(uPost.x * ((ply + 0.5) / plies - 0.5) + (own - 0.5) * 0.02, (own > 0.5 ? 1.0 : -1.0) * uPost.y * (0.62 + 0.3 * own))
    : vec2(-0.21, 0.17) * uPost.xy * 2.0;
  vec4 drift = texture(uCloud, vec2(0.31 + own, p.y * 0.21)) - 0.5;
  float radius = length(p.xz - pith - drift.rg * vec2(0.05, 0.034)) + 0.012 * drift.b;
  float end = abs(vFace.y);
  vec4 grain = texture(uGrain, vec2(radius * ${number(1 / woodTile.across)}, p.y * ${number(1 / woodTile.along)} + own));
  vec3 c = grain.rgb * mix(1.0, 0.84, end);
  relief = ${number(mostRelief)} * grain.a * (1.0 - 0.7 * end);
  if (plies > 1.5) {
    float seam = abs(fract(across * plies + 0.5) - 0.5) / plies * uPost.x;
    float pixel = fwidth(across) * uPost.x;
    c *= 1.0 - 0.62 * (1.0 - smoothstep(0.0006, 0.0014 + pixel, seam)) * step(0.02, across) * step(across, 0.98);
  }
  if (vWater > -1e3) c = moistened(c, 0.55 * wetness(drift.a + 0.5));
  return wetWood(c);
}
`
export const metalPars = `
uniform vec3 uMetal; uniform vec3 uMetalB; uniform float uRust; uniform float uRib;
float relief = 0.0;
vec3 metalTone(){
  vec4 cloud = laid(uCloud, vec2(1.6));
  vec3 c = mix(uMetal, uMetalB, smoothstep(0.35, 0.7, cloud.b + 0.3 * (cloud.a - 0.5))) * (0.93 + 0.14 * cloud.a);
  relief = uRust * 0.0012 * cloud.a;
  if (uRib > 0.0) {
    float along = uRib * (vPlace.x + 0.62 * vPlace.z + 0.8 * vPlace.y);
    float shown = 1.0 - smoothstep(0.2, 0.45, fwidth(along));
    float rib = smoothstep(0.25, 0.75, abs(fract(along) - 0.5) * 2.0);
    c *= 1.0 - 0.5 * shown * (1.0 - rib);
    relief += 0.0016 * rib * shown;
  }
  return c;
}
`
