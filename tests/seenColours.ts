export type Triple = readonly [number, number, number]
type Matrix = readonly [Triple, Triple, Triple]

/**
 * Sight as it is, and without one kind of cone. G. M. Machado, M. M. Oliveira and L. A. F. Fernandes, A Physiologically-based Model for
 * Simulation of Color Vision Deficiency, IEEE Transactions on Visualization and Computer Graphics 15 (6), 2009, severity 1.0; in linear
 * light. Read in works that print the matrices.
 */
export const sights: Readonly<Record<'usual' | 'protanopia' | 'deuteranopia' | 'tritanopia', Matrix>> = {
  usual: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
}

const times = (matrix: Matrix, [a, b, c]: Triple): Triple => matrix.map((row) => row[0] * a + row[1] * b + row[2] * c) as unknown as Triple

/** Linear sRGB, 0..1, to CIE L*a*b* under D65 (IEC 61966-2-1, CIE 15). */
export function labOf(light: Triple): Triple {
  const inside = light.map((value) => Math.min(1, Math.max(0, value))) as unknown as Triple
  const [x, y, z] = times(
    [
      [0.4124564 / 0.95047, 0.3575761 / 0.95047, 0.1804375 / 0.95047],
      [0.2126729, 0.7151522, 0.072175],
      [0.0193339 / 1.08883, 0.119192 / 1.08883, 0.9503041 / 1.08883],
    ],
    inside,
  ).map((t) => (t > 216 / 24389 ? Math.cbrt(t) : (t * 24389) / 3132 + 16 / 116)) as unknown as Triple
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)]
}

const degrees = 180 / Math.PI

/** CIEDE2000 (CIE 142-2001), as G. Sharma, W. Wu and E. N. Dalal write it out, Color Research & Application 30 (1), 2005. */
export function ciede2000([l1, a1, b1]: Triple, [l2, a2, b2]: Triple): number {
  const pull = (chroma: number): number => Math.sqrt(chroma ** 7 / (chroma ** 7 + 25 ** 7))
  const widened = 1 + 0.5 * (1 - pull((Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2))
  const [c1, c2] = [Math.hypot(a1 * widened, b1), Math.hypot(a2 * widened, b2)]
  const hue = (a: number, b: number): number => (Math.atan2(b, a * widened) * degrees + 360) % 360
  const [h1, h2] = [hue(a1, b1), hue(a2, b2)]
  const isGrey = c1 * c2 === 0
  const turn = isGrey ? 0 : ((h2 - h1 + 540) % 360) - 180
  const sum = h1 + h2
  const h = isGrey ? sum : Math.abs(h1 - h2) <= 180 ? sum / 2 : sum < 360 ? sum / 2 + 180 : sum / 2 - 180
  const [l, c] = [(l1 + l2) / 2, (c1 + c2) / 2]
  const cos = (angle: number): number => Math.cos(angle / degrees)
  const t = 1 - 0.17 * cos(h - 30) + 0.24 * cos(2 * h) + 0.32 * cos(3 * h + 6) - 0.2 * cos(4 * h - 63)
  const dl = (l2 - l1) / (1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2))
  const dc = (c2 - c1) / (1 + 0.045 * c)
  const dh = (2 * Math.sqrt(c1 * c2) * Math.sin(turn / 2 / degrees)) / (1 + 0.015 * c * t)
  const rotated = -Math.sin((60 * Math.exp(-(((h - 275) / 25) ** 2))) / degrees) * 2 * pull(c)
  return Math.sqrt(dl ** 2 + dc ** 2 + dh ** 2 + rotated * dc * dh)
}

/** Least difference of two colours in linear light over all kinds of sight, and in which it is. */
export function leastDifference(a: Triple, b: Triple): Readonly<{ difference: number; sight: string }> {
  const all = Object.entries(sights).map(([sight, matrix]) => ({
    sight,
    difference: ciede2000(labOf(times(matrix, a)), labOf(times(matrix, b))),
  }))
  return all.reduce((least, one) => (one.difference < least.difference ? one : least))
}
