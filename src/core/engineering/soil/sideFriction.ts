import { type Metres, type Newtons, type Pascals, type UnitWeight, newtons } from '../../units/quantity.ts'
import { showing } from '../showing.ts'
import { type SoilLayer, effectiveStress, stressBreaks } from './verticalStress.ts'

type Uniform = Readonly<{ shear: Pascals; perimeter: Metres; length: Metres }>

/**
 * Side friction of a length of shaft under one unit shear.
 * @param shear unit side resistance [Pa], non-negative
 * @param perimeter of the shaft [m]
 * @param length in contact and counted [m]
 * @returns side friction [N]
 * Formula: Rs = fs p L
 * Valid: uniform unit shear. Outside: sum the slices.
 * Source: definition
 * Checked by: tests/external/gec-10-2018/check.test.ts
 */
export function sideFriction({ shear, perimeter, length }: Uniform): Newtons {
  return newtons(shear * perimeter * length)
}

/** Side friction under one unit shear, with its work shown. */
export const workedSideFriction = showing({
  id: 'side-friction',
  quantity: 'force',
  formula: 'R_s = f_s\\,p\\,L',
  terms: { shear: ['f_s', 'pressure'], perimeter: ['p', 'length'], length: ['L', 'length'] },
  sources: ['definition'],
  of: sideFriction,
})

type Span = Readonly<{
  beta: (depth: Metres) => number
  layers: readonly SoilLayer[]
  waterTable: Metres | null
  water: UnitWeight
  perimeter: Metres
  from: Metres
  to: Metres
  breaks?: readonly Metres[]
}>
const nodes = [-0.906179845938664, -0.5384693101056831, 0, 0.5384693101056831, 0.906179845938664]
const weights = [0.2369268850561891, 0.4786286704993665, 0.5688888888888889, 0.4786286704993665, 0.2369268850561891]

/**
 * Side friction by the beta method over a span of depth in layered ground.
 * @param beta ratio of side friction to effective stress at a depth in [m], [1]
 * @param layers soil layers from grade down; shape [n], thickness [m], weights [N/m3]
 * @param waterTable depth of still water [m], null for none
 * @param water unit weight of water [N/m3]
 * @param perimeter of the shaft [m]
 * @param from top of the counted length, depth [m]
 * @param to bottom of the counted length, depth [m], not above `from`
 * @param breaks further depths [m] at which beta jumps or turns
 * @returns side friction [N]
 * Formula: Rs = p * integral of beta(z) s'v(z) dz, five-point Gauss between breaks: exact where beta is constant between them
 * Valid: undisturbed ground. Outside: zero when `to` is not below `from`.
 * Source: gec-10-2018
 * Checked by: tests/external/gec-10-2018/check.test.ts
 */
export function sideFrictionByBeta({ beta, layers, waterTable, water, perimeter, from, to, breaks = [] }: Span): Newtons {
  if (to <= from) return newtons(0)
  const cuts = [...stressBreaks(layers, waterTable, from, to), ...breaks.filter((cut) => cut > from && cut < to)].sort((a, b) => a - b)
  let sum = 0
  for (let i = 1; i < cuts.length; i++) {
    const low = cuts[i - 1] as number
    const half = ((cuts[i] as number) - low) / 2
    nodes.forEach((node, k) => {
      const depth = (low + half * (1 + node)) as Metres
      sum += (weights[k] as number) * half * beta(depth) * effectiveStress(layers, waterTable, water, depth)
    })
  }
  return newtons(perimeter * sum)
}

type ByBeta = Readonly<{ beta: number; meanStress: Pascals; perimeter: Metres; length: Metres }>
/** Side friction from one beta and the mean effective stress of the counted length, with its work shown. Exact for uniform beta. */
export const workedSideFrictionByBeta = showing({
  id: 'side-friction-by-beta',
  quantity: 'force',
  formula: String.raw`R_s = \beta\,\bar\sigma'_v\,p\,L`,
  terms: {
    beta: [String.raw`\beta`, 'ratio'],
    meanStress: [String.raw`\bar\sigma'_v`, 'pressure'],
    perimeter: ['p', 'length'],
    length: ['L', 'length'],
  },
  sources: ['gec-10-2018'],
  of: ({ beta, meanStress, perimeter, length }: ByBeta) => newtons(beta * meanStress * perimeter * length),
})
