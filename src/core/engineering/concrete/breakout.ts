import { type Metres, type Newtons, type Pascals, type SquareMetres, newtons } from '../../units/quantity.ts'
import { cited, fromPrinted, toPrinted } from '../cited.ts'
import { showing } from '../showing.ts'

/** Coefficient kc: cast in, and post-installed, cracked concrete. Source: aci-318-19-17-6-2. */
export const breakoutCoefficient = {
  castIn: cited(24, '1', 'aci-318-19-17-6-2', 'secondary'),
  postInstalled: cited(17, '1', 'aci-318-19-17-6-2', 'secondary'),
} as const
/** Strength reduction for breakout without and with supplementary steel, and of the anchor's steel. Source: aci-318-19-17-5-3. */
export const anchorReduction = {
  breakout: cited(0.7, '1', 'aci-318-19-17-5-3', 'from memory'),
  breakoutSupplementary: cited(0.75, '1', 'aci-318-19-17-5-3', 'from memory'),
  steelDuctile: cited(0.75, '1', 'aci-318-19-17-5-3', 'from memory'),
  steelBrittle: cited(0.65, '1', 'aci-318-19-17-5-3', 'from memory'),
} as const

type BasicInputs = Readonly<{ coefficient: number; strength: Pascals; embedment: Metres }>

/**
 * Basic concrete breakout strength of one anchor.
 * @param coefficient kc [1]: 24 cast in, 17 post-installed
 * @param strength specified concrete strength f'c [Pa], positive
 * @param embedment effective embedment hef [m], positive
 * @returns nominal strength Nb [N]
 * Formula: Nb = kc sqrt(f'c) hef^1.5, lb, psi, in
 * Valid: normal-weight, cracked concrete. Outside: deep single studs may use the other form.
 * Source: aci-318-19-17-6-2
 * Checked by: tests/external/anchor-guide-318-19/check.test.ts
 */
export function basicBreakout({ coefficient, strength, embedment }: BasicInputs): Newtons {
  return newtons(fromPrinted(coefficient * Math.sqrt(toPrinted(strength, 'psi')) * toPrinted(embedment, 'in') ** 1.5, 'lb'))
}

type DeepInputs = Readonly<{ strength: Pascals; embedment: Metres }>

/**
 * Basic breakout strength of a deep single headed stud or bolt.
 * @param strength specified concrete strength f'c [Pa], positive
 * @param embedment effective embedment hef [m], 0.2794 to 0.635
 * @returns nominal strength Nb [N]; null outside 11 to 25 in
 * Formula: Nb = 16 sqrt(f'c) hef^(5/3), lb, psi, in
 * Valid: 11 in <= hef <= 25 in, headed. Outside: no value.
 * Source: aci-318-19-17-6-2
 * Checked by: tests/external/anchor-guide-318-19/check.test.ts
 */
export function deepBreakout({ strength, embedment }: DeepInputs): Newtons | null {
  const inches = toPrinted(embedment, 'in')
  if (inches < 11 - 1e-9 || inches > 25 + 1e-9) return null
  return newtons(fromPrinted(16 * Math.sqrt(toPrinted(strength, 'psi')) * inches ** (5 / 3), 'lb'))
}

type EdgeInputs = Readonly<{ edge: Metres; embedment: Metres }>

/**
 * Edge factor of concrete breakout.
 * @param edge least edge distance ca,min [m], positive
 * @param embedment effective embedment hef [m], positive
 * @returns psi_ed [1], at most 1
 * Formula: 1 from ca,min = 1.5 hef on, else 0.7 + 0.3 ca,min/(1.5 hef)
 * Valid: tension. Outside: none.
 * Source: aci-318-19-17-6-2
 * Checked by: tests/external/anchor-guide-318-19/check.test.ts
 */
export function breakoutEdgeFactor({ edge, embedment }: EdgeInputs): number {
  return edge >= 1.5 * embedment ? 1 : 0.7 + (0.3 * edge) / (1.5 * embedment)
}

type ReducedInputs = Readonly<{ basic: Newtons; projected: SquareMetres; full: SquareMetres; edgeFactor: number }>

/**
 * Concrete breakout strength of an anchor or group in tension.
 * @param basic strength of one anchor Nb [N]
 * @param projected area of the failure surface ANc [m2]
 * @param full area of one anchor away from edges ANco = 9 hef^2 [m2]
 * @param edgeFactor psi_ed [1]
 * @returns nominal strength Ncb [N]
 * Formula: Ncb = (ANc/ANco) psi_ed Nb, with psi_c = 1 (cracked) and psi_cp = 1 (cast in)
 * Valid: headed studs and bolts, hooked bolts, qualified anchors. Outside: a strap, leg or bar stub in wet concrete is not covered; screening only.
 * Source: aci-318-19-17-6-2
 * Checked by: tests/external/anchor-guide-318-19/check.test.ts
 */
export function concreteBreakout({ basic, projected, full, edgeFactor }: ReducedInputs): Newtons {
  return newtons((projected / full) * edgeFactor * basic)
}

type RoundInputs = Readonly<{ diameter: Metres; strength: Pascals; embedment: Metres }>
export type RoundBreakout = Readonly<{ effective: Metres; edgesControl: boolean; nominal: Newtons }>

/**
 * Breakout of one headed anchor at the centre of a round pier: a screening value.
 * @param diameter of the pier [m], positive
 * @param strength specified concrete strength f'c [Pa], positive
 * @param embedment depth of the anchor's head or leg [m], positive
 * @returns embedment that counts [m], whether the edges control [1], nominal strength Ncb [N]
 * Formula: ca = D/2; past D/3 every edge controls: hef' = ca/1.5 = D/3, ANco = D^2, ANc = pi D^2/4, psi_ed = 1, Nb = 24 sqrt(f'c) hef'^1.5;
 *   shallower: ANc/ANco = min(1, (pi D^2/4)/(9 hef^2)) and psi_ed = 1
 * Valid: at the centre. Outside: depth past D/3 adds nothing; only vertical bars do.
 * Source: aci-318-19-17-6-2, computed-here
 * Checked by: tests/external/aci-318-19-17-6-2/check.test.ts
 */
export function roundPierBreakout({ diameter, strength, embedment }: RoundInputs): RoundBreakout {
  const edgesControl = embedment > diameter / 3
  const effective = (edgesControl ? diameter / 3 : embedment) as Metres
  const basic = basicBreakout({ coefficient: breakoutCoefficient.castIn.value, strength, embedment: effective })
  const share = Math.min(1, ((Math.PI / 4) * diameter ** 2) / (9 * effective ** 2))
  return { effective, edgesControl, nominal: newtons(share * basic) }
}

/** Nominal breakout from a round pier, with its work shown. */
export const workedRoundPierBreakout = showing({
  id: 'round-pier-breakout',
  quantity: 'force',
  formula: (inputs: RoundInputs) =>
    roundPierBreakout(inputs).edgesControl
      ? String.raw`N_{cb} = \tfrac{\pi}{4}\cdot 24\sqrt{f'_c}\,h'^{1.5},\quad h' = D/3\ (\mathrm{lb,\ psi,\ in})`
      : String.raw`N_{cb} = \min(1, \tfrac{\pi D^2}{36 h'^2})\cdot 24\sqrt{f'_c}\,h'^{1.5},\quad h' = h_{ef}\ (\mathrm{lb,\ psi,\ in})`,
  terms: { strength: ["f'_c", 'strength'], diameter: ['D', 'length'], embedment: ['h_{ef}', 'length'] },
  along: (inputs: RoundInputs) => [
    { symbol: "h'", name: 'effectiveEmbedment', value: roundPierBreakout(inputs).effective, quantity: 'length' },
  ],
  sources: ['aci-318-19-17-6-2', 'computed-here'],
  of: (inputs: RoundInputs) => roundPierBreakout(inputs).nominal,
})

type AllowableInputs = Readonly<{ nominal: Newtons; reduction: number; share: number }>

/**
 * A nominal concrete strength turned into a value to hold against 0.6 W.
 * @param nominal strength [N]
 * @param reduction strength reduction factor phi [1]
 * @param share 0.6, strength level to allowable level [1]; once only
 * @returns screening value at allowable level [N]
 * Formula: 0.6 phi N
 * Valid: wind. Outside: never twice on one term.
 * Source: aci-318-19-17-5-3, computed-here
 * Checked by: tests/external/aci-318-19-17-6-2/check.test.ts
 */
export function allowableFromNominal({ nominal, reduction, share }: AllowableInputs): Newtons {
  return newtons(nominal * reduction * share)
}

/** Screening value at allowable level, with its work shown. */
export const workedAllowableFromNominal = showing({
  id: 'allowable-from-nominal',
  quantity: 'force',
  formula: String.raw`N_a = 0.6\,\phi N`,
  terms: { share: ['0.6', 'ratio'], reduction: [String.raw`\phi`, 'ratio'], nominal: ['N', 'force'] },
  sources: ['aci-318-19-17-5-3', 'computed-here'],
  of: allowableFromNominal,
})

type PulloutInputs = Readonly<{ headArea: SquareMetres; strength: Pascals }>

/**
 * Pullout strength of a head.
 * @param headArea net bearing area of the head [m2]
 * @param strength specified concrete strength f'c [Pa]
 * @returns nominal strength Npn [N]
 * Formula: Npn = 8 Abrg f'c
 * Valid: headed anchors, cracked concrete. Outside: none.
 * Source: aci-318-19-17-6-3
 * Checked by: tests/external/aci-349-2r-07/check.test.ts
 */
export function headPullout({ headArea, strength }: PulloutInputs): Newtons {
  return newtons(8 * headArea * strength)
}

type SteelInputs = Readonly<{ area: SquareMetres; tensile: Pascals }>

/**
 * Steel strength of an anchor in tension.
 * @param area effective area [m2]
 * @param tensile specified tensile strength futa [Pa]
 * @returns nominal strength Nsa [N]
 * Formula: Nsa = Ase futa
 * Valid: futa no more than 1.9 fya and 125 ksi. Outside: use those limits.
 * Source: aci-318-19-17-6-1
 * Checked by: tests/external/aci-349-2r-07/check.test.ts
 */
export function anchorSteel({ area, tensile }: SteelInputs): Newtons {
  return newtons(area * tensile)
}

/** Basic breakout of one anchor, with its work shown. */
export const workedBasicBreakout = showing({
  id: 'basic-breakout',
  quantity: 'force',
  formula: String.raw`N_b = k_c\sqrt{f'_c}\,h_{ef}^{1.5}\ (\mathrm{lb,\ psi,\ in})`,
  terms: { coefficient: ['k_c', 'ratio'], strength: ["f'_c", 'strength'], embedment: ['h_{ef}', 'length'] },
  sources: ['aci-318-19-17-6-2'],
  of: basicBreakout,
})

/** Basic breakout of a deep stud, with its work shown. */
export const workedDeepBreakout = showing({
  id: 'deep-breakout',
  quantity: 'force',
  formula: String.raw`N_b = 16\sqrt{f'_c}\,h_{ef}^{5/3}\ (\mathrm{lb,\ psi,\ in})`,
  terms: { strength: ["f'_c", 'strength'], embedment: ['h_{ef}', 'length'] },
  sources: ['aci-318-19-17-6-2'],
  of: deepBreakout,
})

/** Edge factor, with its work shown. */
export const workedBreakoutEdgeFactor = showing({
  id: 'breakout-edge-factor',
  quantity: 'ratio',
  formula: String.raw`\psi_{ed} = 0.7 + 0.3\,\frac{c_{a,min}}{1.5\,h_{ef}} \le 1`,
  terms: { edge: ['c_{a,min}', 'length'], embedment: ['h_{ef}', 'length'] },
  sources: ['aci-318-19-17-6-2'],
  of: breakoutEdgeFactor,
})

/** Breakout of an anchor or group, with its work shown. */
export const workedConcreteBreakout = showing({
  id: 'concrete-breakout',
  quantity: 'force',
  formula: String.raw`N_{cb} = \frac{A_{Nc}}{A_{Nco}}\,\psi_{ed} N_b`,
  terms: {
    projected: ['A_{Nc}', 'area'],
    full: ['A_{Nco}', 'area'],
    edgeFactor: [String.raw`\psi_{ed}`, 'ratio'],
    basic: ['N_b', 'force'],
  },
  sources: ['aci-318-19-17-6-2'],
  of: concreteBreakout,
})

/** Pullout of a head, with its work shown. */
export const workedHeadPullout = showing({
  id: 'head-pullout',
  quantity: 'force',
  formula: String.raw`N_{pn} = 8\,A_{brg} f'_c`,
  terms: { headArea: ['A_{brg}', 'area'], strength: ["f'_c", 'strength'] },
  sources: ['aci-318-19-17-6-3'],
  of: headPullout,
})

/** Steel of an anchor, with its work shown. */
export const workedAnchorSteel = showing({
  id: 'anchor-steel',
  quantity: 'force',
  formula: String.raw`N_{sa} = A_{se}\,f_{uta}`,
  terms: { area: ['A_{se}', 'area'], tensile: ['f_{uta}', 'strength'] },
  sources: ['aci-318-19-17-6-1'],
  of: anchorSteel,
})
