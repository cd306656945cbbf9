import { type Metres, type Newtons, type Pascals, type PressureGradient, metres, newtons } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Deepest embedment that the code's pressure rule reads in one way. Source: ibc-1807-3-2-1. */
export const lateralDepthLimit = cited<Metres>(12, 'ft', 'ibc-1807-3-2-1', 'read')

type Load = Readonly<{ force: Newtons; height: Metres; gradient: PressureGradient; multiplier: number; width: Metres }>

/**
 * Required embedment with nothing holding the post at grade: the exact root of the code's implicit equation.
 * @param force lateral force P [N], non-negative
 * @param height of the force above the ground [m], non-negative; for a moment, M/P
 * @param gradient presumptive lateral bearing per depth [Pa/m], positive
 * @param multiplier 1, or 2 for an isolated pole [1]
 * @param width diameter of the round post or footing, diagonal of a square one [m], positive
 * @returns embedment below the ground that counts [m]; null past 12 ft, where the code's pressure rule has two readings
 * Formula: d = 0.5 A {1 + [1 + 4.36 h/A]^0.5}, A = 2.34 P/(S1 b), S1 = k Lt d/3; with C = 7.02 P/(k Lt b): d^3 - C d - 1.09 C h = 0
 * Valid: level ground, d <= 12 ft. Outside: no value.
 * Source: ibc-1807-3-2-1
 * Checked by: tests/external/ibc-1807-3-2-1/check.test.ts
 */
export function embedmentNonconstrained({ force, height, gradient, multiplier, width }: Load): Metres | null {
  const c = (7.02 * force) / (multiplier * gradient * width)
  const depth = cubicRoot(c, height)
  return depth > lateralDepthLimit.value ? null : metres(depth)
}

/** Positive root of d^3 - C d - 1.09 C h = 0: Cardano where one root is real, the cosine form where three are. */
const cubicRoot = (c: number, height: number): number => {
  if (c === 0) return 0
  const q = -1.09 * c * height
  const discriminant = (q / 2) ** 2 - (c / 3) ** 3
  if (discriminant >= 0) {
    const root = Math.sqrt(discriminant)
    return Math.cbrt(-q / 2 + root) + Math.cbrt(-q / 2 - root)
  }
  const cosine = ((3 * q) / (-2 * c)) * Math.sqrt(3 / c)
  return 2 * Math.sqrt(c / 3) * Math.cos(Math.acos(Math.min(1, cosine)) / 3)
}

type Given = Readonly<{ force: Newtons; height: Metres; pressure: Pascals; width: Metres }>

/**
 * The code's equation with a pressure that is already known. A shortcut when that pressure is read at the depth provided.
 * @param force lateral force P [N], positive
 * @param height of the force above the ground [m], non-negative
 * @param pressure allowable lateral pressure S1 [Pa], positive
 * @param width diameter or diagonal b [m], positive
 * @returns A [m] and embedment d [m]
 * Formula: A = 2.34 P/(S1 b); d = 0.5 A {1 + [1 + 4.36 h/A]^0.5}
 * Valid: S1 at one third of the embedment that comes out. Outside: S1 taken deeper gives too small a depth.
 * Source: ibc-1807-3-2-1
 * Checked by: tests/external/permit-sheets/check.test.ts
 */
export function embedmentForPressure({ force, height, pressure, width }: Given): Readonly<{ a: Metres; depth: Metres }> {
  const a = (2.34 * force) / (pressure * width)
  return { a: metres(a), depth: metres(0.5 * a * (1 + Math.sqrt(1 + (4.36 * height) / a))) }
}

type Provided = Readonly<{ depth: Metres; height: Metres; gradient: PressureGradient; multiplier: number; width: Metres }>

/**
 * Allowable lateral force for the depth that is there, nothing holding the post at grade.
 * @param depth embedment that counts [m], non-negative
 * @param height of the force above the ground [m], non-negative
 * @param gradient presumptive lateral bearing per depth [Pa/m]
 * @param multiplier 1, or 2 for an isolated pole [1]
 * @param width diameter or diagonal b [m]
 * @returns allowable force [N]; null past 12 ft
 * Formula: P = k Lt b d^3 / [7.02 (d + 1.09 h)]
 * Valid: level ground, d <= 12 ft. Outside: no value.
 * Source: ibc-1807-3-2-1
 * Checked by: tests/external/ibc-1807-3-2-1/check.test.ts
 */
export function allowableLateral({ depth, height, gradient, multiplier, width }: Provided): Newtons | null {
  if (depth > lateralDepthLimit.value) return null
  return newtons(depth === 0 ? 0 : (multiplier * gradient * width * depth ** 3) / (7.02 * (depth + 1.09 * height)))
}

/** A load at a height, and the ground beside the post. */
export const lateralTerms = {
  force: ['P', 'force'],
  height: ['h', 'length'],
  multiplier: ['k', 'ratio'],
  gradient: ['L_t', 'gradient'],
  width: ['b', 'length'],
} as const

/** Required embedment, nothing holding the post at grade, with its work shown. */
export const workedEmbedmentNonconstrained = showing({
  id: 'embedment-nonconstrained',
  quantity: 'length',
  formula: String.raw`d = 0.5 A\left(1 + \sqrt{1 + 4.36 h/A}\right),\quad A = \frac{2.34\,P}{S_1 b},\quad S_1 = \tfrac13 k L_t d`,
  terms: lateralTerms,
  // The code's own form, with the pressure at a third of the depth that comes out: put in, both sides agree.
  along: (inputs: Load) => {
    const depth = embedmentNonconstrained(inputs)
    if (depth === null || !(depth > 0)) return []
    const pressure = (inputs.multiplier * inputs.gradient * depth) / 3
    return [
      { symbol: 'S_1', name: 'sidePressure', value: pressure, quantity: 'pressure' },
      { symbol: 'A', name: 'embedmentTerm', value: (2.34 * inputs.force) / (pressure * inputs.width), quantity: 'length' },
    ]
  },
  sources: ['ibc-1807-3-2-1', 'ibc-1806-2'],
  of: embedmentNonconstrained,
})

/** Allowable lateral force at a depth, with its work shown. */
export const workedAllowableLateral = showing({
  id: 'allowable-lateral',
  quantity: 'force',
  formula: String.raw`P = \frac{k L_t\, b\, d^3}{7.02\,(d + 1.09\,h)}`,
  terms: {
    multiplier: ['k', 'ratio'],
    gradient: ['L_t', 'gradient'],
    width: ['b', 'length'],
    depth: ['d', 'length'],
    height: ['h', 'length'],
  },
  sources: ['ibc-1807-3-2-1', 'ibc-1806-2'],
  of: allowableLateral,
})

/** Embedment at a pressure that is given, with its work shown. */
export const workedEmbedmentForPressure = showing({
  id: 'embedment-for-pressure',
  quantity: 'length',
  formula: String.raw`d = 0.5 A\left(1 + \sqrt{1 + 4.36 h/A}\right),\quad A = \frac{2.34\,P}{S_1 b}`,
  terms: { force: ['P', 'force'], height: ['h', 'length'], pressure: ['S_1', 'pressure'], width: ['b', 'length'] },
  along: (inputs: Given) => [{ symbol: 'A', name: 'embedmentTerm', value: embedmentForPressure(inputs).a, quantity: 'length' }],
  sources: ['ibc-1807-3-2-1'],
  of: (inputs: Given) => embedmentForPressure(inputs).depth,
})
