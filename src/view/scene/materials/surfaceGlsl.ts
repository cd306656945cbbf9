/** What every solid material shares: the place in the material itself, marks on cut faces, wetness, bump, the accent. */
export const vertexPars = `
varying vec3 vPlace;
varying vec3 vFace;
`
export const vertexMain = `
vPlace = position;
vFace = normal;
`

export const fragmentPars = `
varying vec3 vPlace;
varying vec3 vFace;
uniform sampler3D uNoise;
uniform float uSection;
uniform int uHatch;
uniform vec3 uInk;
uniform float uInkShare;
uniform vec3 uPaperScale;
uniform vec2 uRight;
uniform vec3 uAccent;
uniform float uLit;
uniform vec4 uGround;
uniform float uWater;
const mat3 tilt = mat3(0.8, 0.36, -0.48, -0.6, 0.48, -0.64, 0.0, 0.8, 0.6);
const mat3 lean = mat3(0.36, 0.48, -0.8, -0.8, 0.6, 0.0, 0.48, 0.64, 0.6);
float depthBelowGround(){ return uGround.x + uGround.y * vPlace.x + uGround.z * vPlace.z - vPlace.y; }
vec2 onCutFace(){ float r = length(vPlace.xz); return vec2(dot(vPlace.xz, uRight) < 0.0 ? -r : r, vPlace.y); }
float inkAt(){
  vec2 h = onCutFace();
  vec2 wide = fwidth(h);
  float pixel = 0.5 * (wide.x + wide.y);
  float ink = hatchMarks(h / uPaperScale.x, pixel / uPaperScale.x, uHatch);
  if (uPaperScale.z > 0.0) ink = mix(ink, hatchMarks(h / uPaperScale.y, pixel / uPaperScale.y, uHatch), uPaperScale.z);
  return ink;
}
float wetness(float fringe){
  return 1.0 - smoothstep(uWater - 0.01, uWater + 0.05 + 0.12 * fringe, vPlace.y);
}
float waterMarks(){
  vec2 h = onCutFace();
  float below = (uWater - h.y) / uPaperScale.x;
  if (below < 0.0) return 0.0;
  float px = fwidth(h.y) / uPaperScale.x;
  float across = h.x / uPaperScale.x / 17.0;
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
 * Ends every material: marks in an ink that reads on the ground they lie on, water, then the accent. Reads and writes `tone`.
 * The small lift answers the tone mapping, which takes a little off every dark colour and would leave soils too rich.
 */
export const inkAndAccent = `
if (uSection > 0.5) {
  if (uHatch > 0) {
    float lightness = dot(tone, vec3(0.2126, 0.7152, 0.0722));
    vec3 ink = mix(vec3(0.66, 0.56, 0.4), uInk, smoothstep(0.055, 0.095, lightness));
    tone = mix(tone, ink, inkAt() * uInkShare);
  }
  if (uWater > -1e3) tone = mix(tone, vec3(0.045, 0.33, 0.62), waterMarks());
}
tone = mix(tone * 0.97 + 0.022, uAccent, 0.22 * uLit);
`
