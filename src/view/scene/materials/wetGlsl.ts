/** Most bands that a post's colours are told in; a profile has fewer. */
export const mostBands = 12

/**
 * Wetness of the wood, and a dry pour as it might have turned out: colour and marks at a place of the solid. Classes are told apart
 * by marks as well as by tone: none, dots, close strokes. Over the years pale stripes come where decay is found: as wide, of their
 * distance, as the share of such posts that may no longer be sound; dark in them the share that is not. Marks are fixed in the
 * material, in paper millimetres.
 */
export const wetPars = `
uniform float uWet;
uniform vec2 uGone;
uniform vec3 uZoneFrom;
uniform vec3 uZoneTo;
uniform int uWetCount;
uniform vec4 uWetTo[${mostBands}];
uniform vec4 uWetSide;
uniform vec2 uWetLean;
float levelAt(vec3 levels, float across){ return across < 0.0 ? mix(levels.y, levels.x, -across) : mix(levels.y, levels.z, across); }
vec3 wetWood(vec3 c){
  if (uWet < 0.5) return c;
  float across = clamp((dot(vPlace.xz, uWetSide.xy) - uWetLean.x - uWetLean.y * vPlace.y) * uWetSide.z, -1.0, 1.0);
  float kind = 0.0;
  for (int i = 0; i < ${mostBands}; i++) {
    if (i >= uWetCount) break;
    vec4 band = uWetTo[i];
    if (vPlace.y <= levelAt(band.xyz, across)) kind = band.w;
  }
  float wet = floor(kind + 0.01);
  float airy = step(0.25, kind - wet);
  vec2 h = vec2(abs(vFace.x) > abs(vFace.z) ? vPlace.z : vPlace.x, vPlace.y) / uPaperScale.x;
  float px = 0.5 * (fwidth(h.x) + fwidth(h.y));
  if (wet > 1.5) {
    float stroke = abs(fract((h.x + h.y) / 1.5) - 0.5) * 1.5;
    float ink = 1.0 - smoothstep(0.2, 0.2 + 1.2 * px, stroke);
    c = mix(c, vec3(0.09, 0.15, 0.205), 0.8);
    c = mix(c, vec3(0.018, 0.036, 0.055), 0.75 * ink);
  } else if (wet > 0.5) {
    vec2 cell = vec2(h.x / 2.4 + 0.5 * step(0.5, fract(h.y / 4.8)), h.y / 2.4);
    float spot = length(fract(cell) - 0.5) * 2.4;
    float ink = 1.0 - smoothstep(0.26, 0.26 + 1.2 * px, spot);
    c = mix(c, vec3(0.27, 0.36, 0.43), 0.66);
    c = mix(c, vec3(0.07, 0.125, 0.175), 0.75 * ink);
  }
  bool watched = vPlace.y > levelAt(uZoneFrom, across) && vPlace.y < levelAt(uZoneTo, across);
  if (airy < 0.5 || uGone.x <= 0.0 || !watched) return c;
  float at = fract((h.x - h.y) / 5.0) * 5.0;
  float pale = 5.0 * uGone.x;
  float open = uGone.x > 0.995 ? 1.0 : 1.0 - smoothstep(pale - px, pale + px, at);
  float edge = 1.0 - smoothstep(0.2, 0.2 + 1.2 * px, uGone.x > 0.995 ? 1.0 : min(min(at, 5.0 - at), abs(at - pale)));
  float fine = abs(fract((h.x + h.y) / 1.7) - 0.5) * 1.7;
  vec3 blank = mix(vec3(0.82, 0.79, 0.72), vec3(0.06, 0.06, 0.065), 0.75 * (1.0 - smoothstep(0.13, 0.13 + 1.2 * px, fine)));
  c = mix(c, blank, 0.96 * open);
  c = mix(c, vec3(0.02, 0.022, 0.024), (1.0 - smoothstep(5.0 * uGone.y - px, 5.0 * uGone.y + px, at)) * step(0.004, uGone.y));
  return mix(c, vec3(0.05, 0.052, 0.055), 0.8 * edge);
}
`

export const scatterPars = `
uniform float uScattered;
uniform float uWetPour;
uniform vec4 uWetSide;
uniform vec4 uPour;
uniform sampler2D uScatter;
vec3 scattered(vec3 c){
  if (uScattered * uWetPour < 0.5) return c;
  float down = (uPour.z - vPlace.y) / max(uPour.z - uPour.w, 1e-4);
  float across = clamp((length(vPlace.xz) - uPour.x) / max(uPour.y - uPour.x, 1e-4), 0.0, 1.0);
  float hand = dot(vPlace.xz, uWetSide.xy) < 0.0 ? -across : across;
  float kind = texture(uScatter, vec2(0.5 + 0.498 * hand, clamp(down, 0.002, 0.998))).r * 255.0 / 80.0;
  vec3 weak = vec3(0.30, 0.285, 0.26);
  vec3 to = kind < 1.0 ? mix(vec3(0.185, 0.185, 0.185), weak, kind)
    : kind < 2.0 ? mix(weak, vec3(0.50, 0.43, 0.31), kind - 1.0)
    : mix(vec3(0.50, 0.43, 0.31), vec3(0.66, 0.60, 0.48), kind - 2.0);
  return mix(c, to * (0.72 + 0.56 * dot(c, vec3(0.9))), 0.82);
}
`
