import { type Metres, type Pascals, metres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'
import { plainReduction, plainStress } from './plainConcrete.ts'

/**
 * Figures of a plain concrete footing: least thickness by the concrete code, which is stricter than the residential one, and that one; what a
 * footing cast on the ground is taken thinner by; and the most that allowable loads are raised by. Source: aci-318-19-14, irc-r403-1-1, asce-7-16-2.
 */
export const footingRules = {
  least: cited<Metres>(8, 'in', 'aci-318-19-14', 'secondary'),
  leastResidential: cited<Metres>(6, 'in', 'irc-r403-1-1', 'secondary'),
  lostOnGround: cited<Metres>(2, 'in', 'aci-318-19-14', 'secondary'),
  loadFactor: cited(1.6, '1', 'asce-7-16-2', 'secondary'),
} as const

/** Plain concrete under a loaded area: `thick` as it counts for strength, on ground that presses up with `pressure` at factored level. */
type Inputs = Readonly<{ thick: Metres; strength: Pascals; pressure: Pascals }>

/**
 * How far plain concrete may reach beyond the face of what stands on it, by bending at that face.
 * @param thick thickness that counts [m], non-negative: 2 in less than is there where it is cast on the ground
 * @param strength specified concrete strength f'c [Pa], 17.2e6 (2,500 psi) or more
 * @param pressure of the ground at factored level [Pa], positive
 * @returns projection [m]
 * Formula: p = h sqrt(phi 5 sqrt(f'c)/(3 q_u)), from q_u p^2/2 = phi 5 sqrt(f'c) h^2/6
 * Valid: footings without steel. Shear across at h from the face never rules where this and the thickness limit the reach. Outside: the caller counts nothing.
 * Source: aci-318-19-14
 * Checked by: tests/external/aci-318-19-14/check.test.ts
 */
export function reachByBending({ thick, strength, pressure }: Inputs): Metres {
  return metres(thick * Math.sqrt((plainReduction.value * plainStress({ strength, of: 'bending' })) / (3 * pressure)))
}

type PunchingInputs = Inputs & Readonly<{ loadedWidth: Metres; loadedDepth: Metres }>

/**
 * How far plain concrete may reach beyond the faces of what stands on it before that punches through.
 * @param thick thickness that counts [m], non-negative
 * @param strength specified concrete strength f'c [Pa], 17.2e6 (2,500 psi) or more
 * @param pressure of the ground at factored level [Pa], positive
 * @param loadedWidth width of what stands on it [m], positive
 * @param loadedDepth its other width [m], half to twice the first
 * @returns projection [m], alike on all sides
 * Formula: p from q_u[(w + 2p)(d + 2p) - (w + h)(d + h)] = phi 2.66 sqrt(f'c) 2(w + d + 2h) h
 * Valid: as bending. Outside: the caller counts nothing.
 * Source: aci-318-19-14
 * Checked by: tests/external/aci-318-19-14/check.test.ts
 */
export function reachByPunching({ thick: h, strength, pressure, loadedWidth, loadedDepth }: PunchingInputs): Metres {
  const around = loadedWidth + loadedDepth
  const held = (plainReduction.value * plainStress({ strength, of: 'punching' }) * 2 * (around + 2 * h) * h) / pressure
  return metres((Math.sqrt(around ** 2 + 4 * (h * around + h * h + held)) - around) / 4)
}

const terms = { thick: ['h', 'length'], strength: ["f'_c", 'strength'], pressure: ['q_u', 'strength'] } as const
const reduction = () => [{ symbol: String.raw`\phi`, name: 'reduction', value: plainReduction.value, quantity: 'ratio' as const }]

/** Reach by bending, with its work shown. */
export const workedReachByBending = showing({
  id: 'reach-by-bending',
  quantity: 'length',
  formula: String.raw`p = h\sqrt{\frac{5\,\phi\sqrt{f'_c}}{3\,q_u}}\ (\mathrm{psi,\ in})`,
  terms,
  along: reduction,
  sources: ['aci-318-19-14'],
  of: reachByBending,
})

/** Reach by punching, with its work shown. */
export const workedReachByPunching = showing({
  id: 'reach-by-punching',
  quantity: 'length',
  formula: String.raw`p = \frac{\sqrt{(w+d)^2 + 4\left(h(w+d) + h^2 + \frac{2.66\,\phi\sqrt{f'_c}\,2(w+d+2h)h}{q_u}\right)} - (w+d)}{4}\ (\mathrm{psi,\ in})`,
  terms: { ...terms, loadedWidth: ['w', 'length'], loadedDepth: ['d', 'length'] },
  along: reduction,
  sources: ['aci-318-19-14'],
  of: reachByPunching,
})
