import { hatches } from '../../section/hatch.ts'

const names = hatches.map((name, n) => `#define HATCH_${name.replace('-', '_').toUpperCase()} ${n}`).join('\n')

/**
 * Drafting marks as a function of the place on the cut face, in paper millimetres (across, up).
 * `hatchMarks(h, px, kind)` gives the ink's cover 0..1; `px` is the size of a pixel in the same millimetres.
 */
export const hatchGlsl = `
${names}
uvec3 scramble(uvec3 v){
  v = v * 1664525u + 1013904223u;
  v.x += v.y * v.z; v.y += v.z * v.x; v.z += v.x * v.y;
  v ^= v >> 16u;
  v.x += v.y * v.z; v.y += v.z * v.x; v.z += v.x * v.y;
  return v;
}
vec3 chance(vec2 cell, float seed){
  return vec3(scramble(uvec3(ivec3(ivec2(cell), int(seed))))) * (1.0 / 4294967295.0);
}
float cover(float d, float px){ return 1.0 - smoothstep(-0.5 * px, 0.5 * px, d); }
float inkLine(float d, float halfWidth, float px){
  float w = max(halfWidth, 0.42 * px);
  return cover(abs(d) - w, px);
}
vec2 turned(vec2 v, float a){ float c = cos(a), s = sin(a); return vec2(c * v.x + s * v.y, -s * v.x + c * v.y); }
float dots(vec2 h, float cell, float radius, float seed, float px){
  vec2 q = h / cell; vec2 id = floor(q); vec3 r = chance(id, seed);
  vec2 f = (fract(q) - 0.5 - (r.xy - 0.5) * 0.62) * cell;
  float size = max(radius * (0.75 + 0.5 * r.z), 0.45 * px);
  return cover(length(f) - size, px);
}
float triangles(vec2 h, float cell, float share, float seed, float px){
  vec2 q = h / cell; vec2 id = floor(q); vec3 r = chance(id, seed); vec3 t = chance(id, seed + 7.0);
  if (r.z > share) return 0.0;
  float side = mix(0.55, 1.0, t.x) * 0.95;
  vec2 p = turned((fract(q) - 0.5 - (r.xy - 0.5) * 0.45) * cell, t.y * 6.2832);
  float k = 1.7320508; float a = side;
  p.x = abs(p.x) - a; p.y = p.y + a / k;
  if (p.x + k * p.y > 0.0) p = vec2(p.x - k * p.y, -k * p.x - p.y) / 2.0;
  p.x -= clamp(p.x, -2.0 * a, 0.0);
  float d = -length(p) * sign(p.y);
  return inkLine(d, 0.09, px);
}
float strokes(vec2 p, float halfLength, float gap, float px){
  float k = clamp(round(p.y / gap), -1.0, 1.0);
  float ends = abs(p.x) - halfLength * (1.0 - 0.08 * k);
  return inkLine(p.y - k * gap, 0.12, px) * cover(ends, px);
}
float earth(vec2 h, float across, float up, float halfLength, float gap, float spread, float seed, float px){
  float row = floor(h.y / up);
  vec2 q = vec2(h.x / across + 0.5 * mod(row, 2.0) + 0.13 * row, h.y / up);
  vec2 id = floor(q); vec3 r = chance(id, seed);
  vec2 f = (fract(q) - 0.5 - (r.xy - 0.5) * vec2(0.26, 0.2)) * vec2(across, up);
  float lean = mod(id.x + row, 2.0) < 0.5 ? 0.7854 : -0.7854;
  return strokes(turned(f, lean + (r.z - 0.5) * spread), halfLength, gap, px);
}
float dashes(vec2 h, float rowGap, float repeat, float dash, float seed, float px){
  float row = floor(h.y / rowGap);
  float x = h.x / repeat + chance(vec2(row, 3.0), seed).x * 7.0;
  vec3 r = chance(vec2(floor(x), row), seed);
  float along = (fract(x) - 0.5 - (r.x - 0.5) * 0.2) * repeat;
  float y = (fract(h.y / rowGap) - 0.5) * rowGap;
  return inkLine(y, 0.085, px) * cover(abs(along) - dash * (0.38 + 0.24 * r.y), px);
}
float joints(vec2 h, float cell, float seed, float px, float halfWidth){
  vec2 q = h / cell; vec2 id = floor(q); vec2 f = fract(q);
  vec2 best = vec2(8.0); float first = 8.0;
  for (int j = -1; j <= 1; j++) for (int i = -1; i <= 1; i++) {
    vec2 g = vec2(float(i), float(j)); vec2 to = g + 0.14 + 0.72 * chance(id + g, seed).xy - f;
    float d = dot(to, to); if (d < first) { first = d; best = to; }
  }
  float edge = 8.0;
  for (int j = -1; j <= 1; j++) for (int i = -1; i <= 1; i++) {
    vec2 g = vec2(float(i), float(j)); vec2 to = g + 0.14 + 0.72 * chance(id + g, seed).xy - f;
    vec2 apart = to - best; if (dot(apart, apart) > 0.0001) edge = min(edge, dot(0.5 * (to + best), normalize(apart)));
  }
  return inkLine(edge * cell - halfWidth * 2.2, halfWidth, px);
}
float ovals(vec2 h, float cell, float seed, float px){
  vec2 q = h / cell; vec2 id = floor(q); vec3 r = chance(id, seed); vec3 t = chance(id, seed + 3.0);
  vec2 f = turned((fract(q) - 0.5 - (r.xy - 0.5) * 0.4) * cell, t.x * 3.1416);
  vec2 half2 = cell * vec2(0.17 + 0.13 * t.y, 0.11 + 0.08 * t.z);
  float d = (length(f / half2) - 1.0) * min(half2.x, half2.y);
  return inkLine(d, 0.1, px) * step(0.25, r.z);
}
float hatchMarks(vec2 h, float px, int kind){
  if (kind == HATCH_CONCRETE) return max(max(dots(h, 2.1, 0.17, 1.0, px), dots(h + 0.9, 3.4, 0.24, 2.0, px)), triangles(h, 6.4, 0.62, 3.0, px));
  if (kind == HATCH_EARTH) return earth(h, 11.5, 8.6, 2.5, 1.15, 0.16, 5.0, px);
  if (kind == HATCH_SAND) return max(max(dots(h, 1.7, 0.15, 21.0, px), dots(h + 0.8, 2.3, 0.17, 22.0, px)), 0.8 * earth(h, 17.0, 12.4, 2.3, 1.1, 0.16, 5.0, px));
  if (kind == HATCH_STONES) return max(joints(h, 2.7, 31.0, px, 0.09), 0.0);
  if (kind == HATCH_PEBBLES) return max(max(ovals(h, 4.6, 35.0, px), ovals(h + vec2(2.3, 1.9), 7.3, 36.0, px)), dots(h, 2.2, 0.14, 37.0, px));
  if (kind == HATCH_CLAY) return max(dashes(h, 2.9, 5.6, 2.5, 41.0, px) * step(0.42, chance(floor(h / vec2(14.0, 2.9)), 44.0).x), earth(h, 15.0, 11.6, 2.4, 1.1, 0.16, 5.0, px));
  if (kind == HATCH_ROCK) return joints(h * vec2(0.62, 1.0), 8.0, 51.0, px, 0.1);
  if (kind == HATCH_MORTAR) return max(max(dots(h, 1.35, 0.11, 61.0, px), dots(h + 0.7, 1.9, 0.15, 62.0, px)), 0.9 * dots(h + 0.3, 5.2, 0.3, 63.0, px));
  if (kind == HATCH_GRAIN) {
    float wave = 0.55 * sin(h.y * 0.11 + 1.7) + 0.2 * sin(h.y * 0.31 + h.x * 0.4);
    float v = (h.x + wave) / 2.0; float r = chance(vec2(floor(v), 1.0), 71.0).x;
    return inkLine((fract(v) - 0.5 - (r - 0.5) * 0.4) * 2.0, 0.07, px) * (0.55 + 0.45 * r);
  }
  if (kind == HATCH_STEEL) {
    float t = (h.x + h.y) * 0.7071; float f = (fract(t / 3.2) - 0.5) * 3.2;
    return max(inkLine(f - 0.4, 0.085, px), inkLine(f + 0.4, 0.085, px));
  }
  if (kind == HATCH_BROKEN_EARTH) return max(earth(h, 9.4, 7.4, 1.45, 1.0, 1.5, 81.0, px), max(dots(h, 2.8, 0.2, 82.0, px), dots(h + 1.3, 4.3, 0.28, 83.0, px)));
  if (kind == HATCH_TOPSOIL) return max(max(dots(h, 2.2, 0.16, 91.0, px), dots(h + 1.0, 3.7, 0.22, 92.0, px)), 0.85 * earth(h, 13.0, 9.5, 2.2, 1.1, 0.2, 93.0, px));
  if (kind == HATCH_FLOWABLE) return max(dashes(h, 3.4, 8.4, 2.4, 101.0, px), max(dots(h, 2.4, 0.15, 102.0, px), dots(h + 1.1, 3.6, 0.2, 103.0, px)));
  return 0.0;
}
`
