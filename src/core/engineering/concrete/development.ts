import { type Metres, type Pascals, metres } from '../../units/quantity.ts'
import type { Term } from '../../model/worked.ts'
import { fromPrinted, toPrinted } from '../cited.ts'
import { showing } from '../showing.ts'

/** Square root of strength, psi, not above the code's 100 psi. */
const rootStrength = (strength: Pascals): number => Math.min(100, Math.sqrt(toPrinted(strength, 'psi')))
/** No. 6 and smaller develop a fifth sooner. */
const isSmall = (diameter: Metres): boolean => toPrinted(diameter, 'in') <= 0.75 + 1e-9
const atLeast = (inches: number, least: number): Metres => metres(fromPrinted(Math.max(least, inches), 'in'))

export type BarInConcrete = Readonly<{ diameter: Metres; yield: Pascals; strength: Pascals }>
type TableInputs = BarInConcrete & Readonly<{ top: boolean; epoxy: number; clear: boolean }>

/**
 * Development length of a straight bar in tension, the code's simple table.
 * @param diameter nominal diameter [m], positive
 * @param yield specified yield strength fy [Pa], up to 414e6
 * @param strength specified concrete strength f'c [Pa], positive
 * @param top true for a horizontal bar over more than 12 in of fresh concrete [1]
 * @param epoxy coating factor [1]: 1 uncoated or galvanised, 1.2 or 1.5 epoxy
 * @param clear true when clear spacing is 2 db or more and cover db or more [1]
 * @returns development length [m], 12 in or more
 * Formula: ld = fy psi_t psi_e db/(25 sqrt f'c) for No. 6 and smaller, 20 for larger; other cases divide by two thirds of that; psi_t psi_e <= 1.7
 * Valid: normal-weight concrete of 2,500 psi or more. Outside: no lightweight, no higher grade than 60.
 * Source: aci-318-19-25-4-2-3
 * Checked by: tests/external/aci-318-19-25-4-2-3/check.test.ts
 */
export function developmentTable({ diameter, yield: fy, strength, top, epoxy, clear }: TableInputs): Metres {
  const divisor = (isSmall(diameter) ? 25 : 20) * (clear ? 1 : 2 / 3)
  const factors = Math.min(1.7, (top ? 1.3 : 1) * epoxy)
  return atLeast((toPrinted(fy, 'psi') * factors * toPrinted(diameter, 'in')) / (divisor * rootStrength(strength)), 12)
}

type GeneralInputs = BarInConcrete & Readonly<{ top: boolean; epoxy: number; confinement: number }>

/**
 * Development length of a straight bar in tension, the code's general equation, before its 12 in least.
 * @param diameter nominal diameter [m], positive
 * @param yield specified yield strength fy [Pa]
 * @param strength specified concrete strength f'c [Pa], positive
 * @param top true for a horizontal bar over more than 12 in of fresh concrete [1]
 * @param epoxy coating factor [1]
 * @param confinement (cb + Ktr)/db [1], positive; counted up to 2.5
 * @returns development length by the equation [m]; the code takes 12 in at least
 * Formula: ld = (3/40)(fy/sqrt f'c)[psi_t psi_e psi_s/((cb + Ktr)/db)] db; psi_t psi_e <= 1.7; psi_s 0.8 for No. 6 and smaller
 * Valid: normal-weight concrete, grade 60 or less. Outside: none.
 * Source: aci-318-19-25-4-2
 * Checked by: tests/external/aci-318-19-25-4-2/check.test.ts
 */
export function developmentGeneral({ diameter, yield: fy, strength, top, epoxy, confinement }: GeneralInputs): Metres {
  const factors = Math.min(1.7, (top ? 1.3 : 1) * epoxy) * (isSmall(diameter) ? 0.8 : 1)
  const inches =
    (0.075 * toPrinted(fy, 'psi') * factors * toPrinted(diameter, 'in')) / (rootStrength(strength) * Math.min(2.5, confinement))
  return metres(fromPrinted(inches, 'in'))
}

type HookInputs = BarInConcrete & Readonly<{ epoxy: number; confining: number; location: number }>

/** psi_c of hooks and heads: f'c/15000 + 0.6 below 6,000 psi, else 1. */
const strengthFactor = (strength: Pascals): number => {
  const psi = toPrinted(strength, 'psi')
  return psi < 6000 ? psi / 15_000 + 0.6 : 1
}

/**
 * Development length of a standard hook in tension.
 * @param diameter nominal diameter [m], positive
 * @param yield specified yield strength fy [Pa]
 * @param strength specified concrete strength f'c [Pa], positive
 * @param epoxy coating factor [1]: 1, or 1.2 epoxy
 * @param confining psi_r [1]: 1 with confining steel or spacing of 6 db, else 1.6
 * @param location psi_o [1]: 1 inside a core or with side cover of 6 db, else 1.25
 * @returns development length by the equation [m] and with its least, 8 db and 6 in [m]
 * Formula: ldh = [fy psi_e psi_r psi_o psi_c/(55 sqrt f'c)] db^1.5; psi_c = f'c/15000 + 0.6 below 6,000 psi
 * Valid: normal-weight concrete, No. 11 and smaller. Outside: none.
 * Source: aci-318-19-25-4-3
 * Checked by: tests/external/aci-318-19-25-4-3/check.test.ts
 */
export function developmentHook(inputs: HookInputs): Readonly<{ equation: Metres; length: Metres }> {
  return bentOrHeaded(inputs, 55)
}

/**
 * Development length of a headed bar in tension.
 * @param diameter nominal diameter [m], positive
 * @param yield specified yield strength fy [Pa]
 * @param strength specified concrete strength f'c [Pa], positive
 * @param epoxy coating factor [1]
 * @param confining psi_p [1]
 * @param location psi_o [1]
 * @returns development length by the equation [m] and with its least, 8 db and 6 in [m]
 * Formula: ldt = [fy psi_e psi_p psi_o psi_c/(75 sqrt f'c)] db^1.5
 * Valid: net bearing area 4 Ab, cover 2 db, spacing 3 db, No. 11 and smaller. Outside: none.
 * Source: aci-318-19-25-4-4
 * Checked by: tests/external/aci-318-19-25-4-3/check.test.ts
 */
export function developmentHead(inputs: HookInputs): Readonly<{ equation: Metres; length: Metres }> {
  return bentOrHeaded(inputs, 75)
}

const bentOrHeaded = ({ diameter, yield: fy, strength, epoxy, confining, location }: HookInputs, divisor: number) => {
  const db = toPrinted(diameter, 'in')
  const inches =
    ((toPrinted(fy, 'psi') * epoxy * confining * location * strengthFactor(strength)) / (divisor * rootStrength(strength))) * db ** 1.5
  return { equation: metres(fromPrinted(inches, 'in')), length: atLeast(inches, Math.max(8 * db, 6)) }
}

type CompressionInputs = BarInConcrete & Readonly<{ confining: number }>

/**
 * Development length of a bar in compression.
 * @param diameter nominal diameter [m], positive
 * @param yield specified yield strength fy [Pa]
 * @param strength specified concrete strength f'c [Pa], positive
 * @param confining psi_r [1]: 1, or 0.75 with confining steel
 * @returns both expressions [m] and the length, 8 in or more [m]
 * Formula: ldc = max(fy psi_r db/(50 sqrt f'c), 0.0003 fy psi_r db, 8 in)
 * Valid: normal-weight concrete of 2,500 psi or more. Outside: none.
 * Source: aci-318-19-25-4-9
 * Checked by: tests/external/aci-318-19-25-4-2/check.test.ts
 */
export function developmentCompression({
  diameter,
  yield: fy,
  strength,
  confining,
}: CompressionInputs): Readonly<{ byStrength: Metres; byYield: Metres; length: Metres }> {
  const db = toPrinted(diameter, 'in')
  const byStrength = (toPrinted(fy, 'psi') * confining * db) / (50 * rootStrength(strength))
  const byYield = 0.0003 * toPrinted(fy, 'psi') * confining * db
  return {
    byStrength: metres(fromPrinted(byStrength, 'in')),
    byYield: metres(fromPrinted(byYield, 'in')),
    length: atLeast(Math.max(byStrength, byYield), 8),
  }
}

const barTerms = { yield: ['f_y', 'strength'], strength: ["f'_c", 'strength'], diameter: ['d_b', 'length'] } as const

/** Of hooks and heads, which name the factor for what confines them by a letter of their own. */
const bentTerms = (confining: string) =>
  ({
    ...barTerms,
    epoxy: [String.raw`\psi_e`, 'ratio'],
    confining: [confining, 'ratio'],
    location: [String.raw`\psi_o`, 'ratio'],
  }) as const

/** The factor for the strength of the concrete, shown beside hooks and heads. */
const concreteTerm = ({ strength }: HookInputs): readonly Term[] => [
  { symbol: String.raw`\psi_c`, name: 'concreteFactor', value: strengthFactor(strength), quantity: 'ratio' },
]

/** Straight development length by the table, with its work shown. */
export const workedDevelopmentTable = showing({
  id: 'development-straight',
  quantity: 'length',
  formula: ({ diameter, clear }: TableInputs) =>
    String.raw`l_d = \max\left(\frac{f_y\,\psi_t\psi_e}{${clear ? '' : String.raw`\tfrac23\,`}${isSmall(diameter) ? 25 : 20}\sqrt{f'_c}}\,d_b,\ 12\right)\ (\mathrm{psi,\ in})`,
  terms: { ...barTerms, epoxy: [String.raw`\psi_e`, 'ratio'] },
  along: ({ top }: TableInputs) => [{ symbol: String.raw`\psi_t`, name: 'topBar', value: top ? 1.3 : 1, quantity: 'ratio' }],
  sources: ['aci-318-19-25-4-2-3'],
  of: developmentTable,
})

/** Hook development length, with its work shown. */
export const workedDevelopmentHook = showing({
  id: 'development-hook',
  quantity: 'length',
  formula: String.raw`l_{dh} = \max\left(\frac{f_y\,\psi_e\psi_r\psi_o\psi_c}{55\sqrt{f'_c}}\,d_b^{1.5},\ 8 d_b,\ 6\right)\ (\mathrm{psi,\ in})`,
  terms: bentTerms(String.raw`\psi_r`),
  along: concreteTerm,
  sources: ['aci-318-19-25-4-3'],
  of: (inputs: HookInputs) => developmentHook(inputs).length,
})

/** Head development length, with its work shown. */
export const workedDevelopmentHead = showing({
  id: 'development-head',
  quantity: 'length',
  formula: String.raw`l_{dt} = \max\left(\frac{f_y\,\psi_e\psi_p\psi_o\psi_c}{75\sqrt{f'_c}}\,d_b^{1.5},\ 8 d_b,\ 6\right)\ (\mathrm{psi,\ in})`,
  terms: bentTerms(String.raw`\psi_p`),
  along: concreteTerm,
  sources: ['aci-318-19-25-4-4'],
  of: (inputs: HookInputs) => developmentHead(inputs).length,
})

/** Straight development by the equation, with its work shown. */
export const workedDevelopmentGeneral = showing({
  id: 'development-general',
  quantity: 'length',
  formula: String.raw`l_d = \frac{3}{40}\,\frac{f_y}{\sqrt{f'_c}}\,\frac{\psi_t\psi_e\psi_s}{(c_b+K_{tr})/d_b}\,d_b`,
  terms: {
    yield: ['f_y', 'strength'],
    strength: ["f'_c", 'strength'],
    epoxy: [String.raw`\psi_e`, 'ratio'],
    confinement: ['(c_b+K_{tr})/d_b', 'ratio'],
    diameter: ['d_b', 'length'],
  },
  sources: ['aci-318-19-25-4-2'],
  of: developmentGeneral,
})

/** Development in compression, with its work shown. */
export const workedDevelopmentCompression = showing({
  id: 'development-compression',
  quantity: 'length',
  formula: String.raw`l_{dc} = \max\!\left(\frac{f_y\psi_r d_b}{50\sqrt{f'_c}},\ 0.0003 f_y\psi_r d_b,\ 8\ \mathrm{in}\right)`,
  terms: {
    yield: ['f_y', 'strength'],
    strength: ["f'_c", 'strength'],
    confining: [String.raw`\psi_r`, 'ratio'],
    diameter: ['d_b', 'length'],
  },
  sources: ['aci-318-19-25-4-9'],
  of: (inputs: CompressionInputs) => developmentCompression(inputs).length,
})
