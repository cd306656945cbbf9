/**
 * What every solid material shares: the place in the material itself, marks on cut faces, wetness, bump, the accent. Grain, relief and
 * marks are looked up in baked tiles; what is worked out for each pixel is only what depends on the pier, the water or the moment.
 */
export const vertexPars = `
attribute vec4 place;
attribute vec4 own;
varying vec3 vPlace;
varying vec3 vFace;
varying vec2 vFlat;
varying float vDeep;
varying float vWater;
varying float vBare;
varying float vLit;
uniform vec2 uRight;
uniform float uLit;
vec2 turned(vec2 way, float by){ return vec2(cos(by) * way.x - sin(by) * way.y, sin(by) * way.x + cos(by) * way.y); }
`
/** `vFlat`: across and up a cut face [m], across counted to the reader's right. `vFace`: the way a face looks in its own pier. */
export const vertexMain = `
vPlace = place.xyz;
vFace = vec3(turned(normal.xz, -place.w), normal.y).xzy;
vFlat = vec2(dot(turned(place.xz, place.w), uRight) < 0.0 ? -length(place.xz) : length(place.xz), place.y);
vDeep = own.x;
vWater = own.y;
vBare = own.z;
vLit = abs(own.w - uLit) < 0.5 ? 1.0 : 0.0;
`

export const fragmentPars = `
varying vec3 vPlace;
varying vec3 vFace;
varying vec2 vFlat;
varying float vDeep;
varying float vWater;
varying float vBare;
varying float vLit;
uniform sampler2D uCloud;
uniform vec3 uPaperScale;
uniform vec3 uAccent;
uniform float uCorner;
#ifdef CUT_FACE
uniform sampler2D uMarks;
uniform vec2 uMarksTile;
uniform vec3 uInk;
uniform float uInkShare;
#endif
float cover(float d, float px){ return 1.0 - smoothstep(-0.5 * px, 0.5 * px, d); }
float inkLine(float d, float halfWidth, float px){ return cover(abs(d) - max(halfWidth, 0.42 * px), px); }
float wetness(float fringe){ return 1.0 - smoothstep(vWater - 0.01, vWater + 0.05 + 0.12 * fringe, vPlace.y); }
/** A repeating tile laid on the face: flat on a cut, else from the side that the face looks to most. */
vec4 laid(sampler2D tile, vec2 perMetre){
#ifdef CUT_FACE
  return texture(tile, vFlat * perMetre);
#else
  vec3 turned = abs(vFace);
  vec3 dx = dFdx(vPlace); vec3 dy = dFdy(vPlace);
  if (turned.y > 0.6) return textureGrad(tile, vPlace.xz * perMetre, dx.xz * perMetre, dy.xz * perMetre);
  if (turned.x > turned.z) return textureGrad(tile, vPlace.zy * perMetre, dx.zy * perMetre, dy.zy * perMetre);
  return textureGrad(tile, vPlace.xy * perMetre, dx.xy * perMetre, dy.xy * perMetre);
#endif
}
float waterMarks(){
  float below = (vWater - vFlat.y) / uPaperScale.x;
  if (below < 0.0) return 0.0;
  float px = fwidth(vFlat.y) / uPaperScale.x;
  float across = vFlat.x / uPaperScale.x / 17.0;
  float ink = 0.0;
  for (int k = 0; k < 4; k++) {
    float n = float(k);
    float at = 2.0 + n * 2.2 + 0.35 * n * n;
    float share = 0.36 - 0.075 * n;
    float along = abs(fract(across + 0.37 * n) - 0.5);
    ink = max(ink, inkLine(below - at, 0.11, px) * step(along, share));
  }
  return max(0.13 * smoothstep(0.0, 0.4, below), 0.8 * ink);
}
vec3 moistened(vec3 c, float wet){
  float grey = dot(c, vec3(0.2126, 0.7152, 0.0722));
  return mix(c, mix(vec3(grey), c, 1.18) * 0.5, wet);
}
vec3 bumped(vec3 normal, float height, float strength, float facing){
  vec3 place = -vViewPosition;
  vec3 sx = dFdx(place); vec3 sy = dFdy(place);
  vec3 r1 = cross(sy, normal); vec3 r2 = cross(normal, sx);
  float det = dot(sx, r1) * facing;
  vec3 slope = sign(det) * (dFdx(height) * r1 + dFdy(height) * r2) * strength;
  return normalize(abs(det) * normal - slope);
}
`

/**
 * Ends every material: marks in an ink that reads on the ground they lie on, water, the shade in the corner of the cut, then the accent.
 * Reads and writes `tone`. The small lift answers the tone mapping, which takes a little off every dark colour and would leave soils
 * too rich.
 */
export const inkAndAccent = `
#ifdef CUT_FACE
#ifdef MARKED
  float lightness = dot(tone, vec3(0.2126, 0.7152, 0.0722));
  vec3 ink = mix(vec3(0.66, 0.56, 0.4), uInk, smoothstep(0.055, 0.095, lightness));
  float marks = texture(uMarks, vFlat / (uPaperScale.x * uMarksTile)).r;
  if (uPaperScale.z > 0.0) marks = mix(marks, texture(uMarks, vFlat / (uPaperScale.y * uMarksTile)).r, uPaperScale.z);
  tone = mix(tone, ink, min(1.0, 1.5 * marks) * uInkShare);
#endif
  if (vWater > -1e3) tone = mix(tone, vec3(0.045, 0.33, 0.62), waterMarks());
  tone *= 1.0 - uCorner * exp(-7.0 * abs(vFlat.x));
#endif
tone = mix(tone * 0.97 + 0.022, uAccent, 0.22 * vLit);
`
