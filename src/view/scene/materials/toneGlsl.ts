import { scatterPars, wetPars } from './wetGlsl.ts'

export const mineralPars = `${scatterPars}
uniform vec3 uBase; uniform vec3 uMottle; uniform vec3 uStoneA; uniform vec3 uStoneB;
uniform vec4 uScale; uniform vec4 uMix; uniform float uPacked;
uniform float uBump; uniform float uRough;
uniform float uGrass; uniform float uBare;
uniform float uSets; uniform float uFresh;
float mineralHeight = 0.0;
float mineralRough = 1.0;
float mineralBump = 1.0;
vec3 grassTone(vec2 at, float cloud){
  float broad = texture(uNoise, vec3(at * 0.42, 0.31)).r;
  float blades = texture(uNoise, vec3(at.x * 9.0, 0.4, at.y * 3.1)).r;
  float tufts = texture(uNoise, vec3(at.x * 2.3, 0.7, at.y * 2.3)).r;
  vec3 c = mix(vec3(0.075, 0.135, 0.024), vec3(0.16, 0.225, 0.05), smoothstep(0.3, 0.7, 0.55 * broad + 0.45 * tufts));
  c = mix(c, vec3(0.27, 0.29, 0.105), 0.4 * smoothstep(0.56, 0.74, broad + 0.2 * (cloud - 0.5)));
  return c * (0.55 + 0.9 * blades);
}
vec3 mineralTone(){
  vec3 p = vPlace;
  float cloud = texture(uNoise, p * uScale.x + 0.21).r;
  float grain = texture(uNoise, lean * p * uScale.y).r;
  float crumb = texture(uNoise, tilt * p * uScale.y * 0.43 + 0.4).r;
  vec3 c = mix(uBase, uMottle, uMix.x * smoothstep(0.36, 0.66, cloud + 0.22 * (grain - 0.5)));
  c *= 1.0 + uMix.y * ((grain - 0.5) * 1.3 + (crumb - 0.5) * 0.9);
  float strata = texture(uNoise, vec3(p.x * 0.21, p.y * 2.6 + 0.16 * cloud, p.z * 0.21)).r;
  c *= 1.0 + uMix.y * (uSection > 0.5 ? 0.5 : 0.9) * (strata - 0.5);
  vec4 coarse = texture(uNoise, tilt * p * uScale.z);
  vec4 fine = texture(uNoise, lean * p * uScale.w + 0.37);
  float clods = uSection > 0.5 ? 0.0 : uMix.y * (1.0 - uPacked);
  c *= 1.0 - clods * (0.34 * smoothstep(0.13, 0.02, coarse.a) + 0.22 * smoothstep(0.14, 0.02, fine.a)) * smoothstep(0.3, 0.62, crumb);
  float girth = 0.26 + 0.2 * fract(coarse.b * 13.7);
  float round1 = smoothstep(girth + 0.05, girth - 0.03, coarse.g + 0.42 * (fine.r - 0.5));
  float fitted = smoothstep(0.05, 0.15, coarse.a + 0.1 * (grain - 0.5));
  float isCoarse = mix(round1 * smoothstep(0.02, 0.08, coarse.a), fitted, uPacked) * step(1.0 - uMix.z, coarse.b * 0.998 + 0.001);
  float speck = smoothstep(0.26, 0.16, fine.g) * step(0.86, fract(fine.b * 31.7));
  c *= 1.0 - 0.5 * uMix.y * speck;
  float isFine = smoothstep(0.40, 0.30, fine.g) * smoothstep(0.02, 0.08, fine.a) * step(1.0 - uMix.w, fine.b * 0.998 + 0.001);
  c *= 1.0 - 0.5 * uPacked * (1.0 - fitted);
  float shade = fract(coarse.b * 7.31);
  c = mix(c, mix(uStoneB, uStoneA, fract(fine.b * 5.7)) * (0.9 + 0.2 * grain), 0.8 * isFine);
  c = mix(c, mix(uStoneB, uStoneA, shade) * (0.86 + 0.28 * cloud), isCoarse);
  float dome = isCoarse * (1.0 - coarse.g * 1.6);
  float relief = uSection > 0.5 ? 0.35 : 1.0;
  mineralHeight = (0.0022 * grain + 0.0026 * crumb + relief * (0.006 * dome + 0.002 * isCoarse) / uScale.z * 2.6 + relief * 0.0026 * isFine / uScale.w * 3.0) * uBump;
  mineralRough = uRough - 0.12 * isCoarse;
  mineralBump = 1.0;
  float below = depthBelowGround();
  float wet = wetness(cloud * 1.4 - 0.2);
  c *= 1.0 - 0.16 * smoothstep(0.0, 1.4, below);
  c = scattered(c);
  c = moistened(c, wet * step(0.0, below + 0.5));
  mineralRough -= 0.3 * wet;
  float fresh = uSets * uFresh;
  c *= mix(vec3(1.0), vec3(0.5, 0.51, 0.54), fresh);
  mineralRough -= 0.34 * fresh;
  if (uGrass > 0.5 && uSection < 0.5 && vFace.y > 0.5) {
    float r = length(p.xz);
    float ragged = texture(uNoise, vec3(p.x * 1.6, 0.5, p.z * 1.6)).r;
    float lawn = smoothstep(uBare, uBare + 0.05, r + 0.16 * (ragged - 0.5));
    c = mix(c * 1.12, grassTone(p.xz, cloud), lawn);
    mineralHeight = mix(mineralHeight, 0.012 * texture(uNoise, vec3(p.x * 9.0, 0.4, p.z * 3.1)).r, lawn);
  }
  return c;
}
`
export const woodPars = `${wetPars}
uniform vec3 uEarly; uniform vec3 uLate; uniform vec4 uPost; uniform float uRound;
float woodHeight = 0.0;
vec3 woodTone(){
  vec3 p = vPlace;
  float plies = uPost.z;
  float across = p.x / uPost.x + 0.5;
  float ply = plies > 1.5 ? clamp(floor(across * plies), 0.0, plies - 1.0) : 0.0;
  float own = fract(sin(ply * 12.9898 + 4.1) * 43758.5453);
  vec2 pith = uRound > 0.5 ? vec2(0.006, -0.004)
    : plies > 1.5 ? vec2(uPost.x * ((ply + 0.5) / plies - 0.5) + (own - 0.5) * 0.02, (own > 0.5 ? 1.0 : -1.0) * uPost.y * (0.62 + 0.3 * own))
    : vec2(-0.21, 0.17) * uPost.xy * 2.0;
  float drift = texture(uNoise, vec3(0.31 + own, p.y * 0.21, 0.5)).r - 0.5;
  float ripple = texture(uNoise, vec3(p.x * 3.0, p.y * 0.55, p.z * 3.0) + own).r - 0.5;
  vec2 from = p.xz - pith - vec2(drift * 0.05, drift * 0.034);
  float radius = length(from) + 0.016 * ripple + 0.004 * drift;
  float ring = radius / 0.0078;
  float year = floor(ring);
  float season = fract(ring);
  float strength = 0.55 + 0.45 * fract(sin(year * 78.233 + own * 9.0) * 43758.5453);
  float late = smoothstep(0.35, 0.86, season) * (1.0 - smoothstep(0.93, 1.0, season)) * strength;
  float blur = clamp(fwidth(ring) * 1.1 - 0.35, 0.0, 1.0);
  late = mix(late, 0.33, blur);
  float fibre = texture(uNoise, vec3(p.x * 26.0, p.y * 0.9, p.z * 26.0)).r;
  float streak = texture(uNoise, vec3(p.x * 5.0 + own, p.y * 0.23, p.z * 5.0)).r;
  vec3 c = mix(uEarly, uLate, late * 0.85);
  c *= 0.87 + 0.26 * fibre;
  c *= 0.9 + 0.2 * streak + 0.06 * (own - 0.5);
  float check = smoothstep(0.665, 0.70, texture(uNoise, vec3(p.x * 7.0, p.y * 0.12, p.z * 7.0) + 0.6).r) * (1.0 - abs(vFace.y));
  c *= 1.0 - 0.45 * check;
  if (plies > 1.5) {
    float seam = abs(fract(across * plies + 0.5) - 0.5) / plies * uPost.x;
    float pixel = fwidth(across) * uPost.x;
    c *= 1.0 - 0.62 * (1.0 - smoothstep(0.0006, 0.0014 + pixel, seam)) * step(0.02, across) * step(across, 0.98);
  }
  c *= mix(1.0, 0.84, abs(vFace.y));
  woodHeight = 0.0016 * fibre + 0.0009 * late - 0.004 * check;
  return wetWood(moistened(c, 0.55 * wetness(fibre)));
}
`
export const metalPars = `
uniform vec3 uMetal; uniform vec3 uMetalB; uniform float uRust; uniform float uRib;
float metalRough = 0.6;
float metalHeight = 0.0;
vec3 metalTone(){
  float cloud = texture(uNoise, vPlace * 6.0).r;
  float grain = texture(uNoise, lean * vPlace * 40.0).r;
  vec3 c = mix(uMetal, uMetalB, smoothstep(0.35, 0.7, cloud + 0.3 * (grain - 0.5)));
  c *= 0.93 + 0.14 * grain;
  metalRough = mix(0.5 + 0.2 * cloud, 0.95, uRust);
  metalHeight = uRust * 0.0012 * grain;
  if (uRib > 0.0) {
    float along = uRib * (vPlace.x + 0.62 * vPlace.z + 0.8 * vPlace.y);
    float shown = 1.0 - smoothstep(0.2, 0.45, fwidth(along));
    float rib = smoothstep(0.25, 0.75, abs(fract(along) - 0.5) * 2.0);
    c *= 1.0 - 0.5 * shown * (1.0 - rib);
    metalHeight += 0.0016 * rib * shown;
  }
  return c;
}
`
