import { type Metres, type Pascals, type Radians, pascals } from '../../units/quantity.ts'
import { cited, fromPrinted, toPrinted } from '../cited.ts'
import { showing } from '../showing.ts'

/** Dowel bearing of concrete of 2,500 psi and more. Source: nds-2018-table-12e. */
export const concreteBearing = cited<Pascals>(7500, 'psi', 'nds-2018-table-12e', 'secondary')
/** Dowel bearing of steel plate 1/4 in and thicker (A36), and of thinner galvanised sheet. Source: nds-2018-app-i. */
export const plateBearing = {
  thick: cited<Pascals>(87_000, 'psi', 'nds-2018-app-i', 'secondary'),
  thin: cited<Pascals>(61_850, 'psi', 'nds-2018-app-i', 'secondary'),
  thickFrom: cited<Metres>(0.25, 'in', 'nds-2018-app-i', 'secondary'),
} as const

/**
 * Dowel bearing strength of a steel plate.
 * @param thickness of the plate [m], positive
 * @returns bearing strength Fe [Pa]
 * Formula: 87,000 psi from 1/4 in on, 61,850 psi for thinner sheet
 * Valid: A36 plate, A653 SS Grade 33 sheet. Outside: other steels have their own values.
 * Source: nds-2018-app-i
 * Checked by: tests/external/nds-2018-12-3-1/check.test.ts
 */
export function steelBearing(thickness: Metres): Pascals {
  // A plate typed as 1/4 in must not count as thinner by the last bit.
  return thickness >= plateBearing.thickFrom.value * (1 - 1e-9) ? plateBearing.thick.value : plateBearing.thin.value
}

type AlongInputs = Readonly<{ gravity: number }>

/**
 * Dowel bearing strength of wood along the grain.
 * @param gravity specific gravity G of the species group [1], 0.31 to 0.73
 * @returns bearing strength [Pa]; null outside the range of G
 * Formula: Fe = 11200 G, psi
 * Valid: dowels 1/4 to 1 in, 0.31 <= G <= 0.73. Outside: no value.
 * Source: nds-2018-12-3-3
 * Checked by: tests/external/nds-2018-12-3-3/check.test.ts
 */
export function bearingAlongGrain({ gravity }: AlongInputs): Pascals | null {
  return inRange(gravity) ? pascals(fromPrinted(11_200 * gravity, 'psi')) : null
}

type AcrossInputs = Readonly<{ gravity: number; diameter: Metres }>

/**
 * Dowel bearing strength of wood across the grain.
 * @param gravity specific gravity G of the species group [1], 0.31 to 0.73
 * @param diameter of the dowel [m], 0.00635 to 0.0254
 * @returns bearing strength [Pa]; null outside the ranges
 * Formula: Fe = 6100 G^1.45 / sqrt(D), psi and in
 * Valid: dowels 1/4 to 1 in. Outside: no value.
 * Source: nds-2018-12-3-3
 * Checked by: tests/external/nds-2018-12-3-3/check.test.ts
 */
export function bearingAcrossGrain({ gravity, diameter }: AcrossInputs): Pascals | null {
  const inches = toPrinted(diameter, 'in')
  if (!inRange(gravity) || inches < 0.25 * (1 - 1e-9) || inches > 1 + 1e-9) return null
  return pascals(fromPrinted((6100 * gravity ** 1.45) / Math.sqrt(inches), 'psi'))
}

/**
 * Dowel bearing strength of wood under a nail or other dowel thinner than 1/4 in, any direction.
 * @param gravity specific gravity G of the species group [1], 0.31 to 0.73
 * @returns bearing strength [Pa]; null outside the range of G
 * Formula: Fe = 16600 G^1.84, psi
 * Valid: D < 1/4 in. Outside: no value.
 * Source: nds-2018-12-3-3
 * Checked by: tests/external/nds-2018-table-12n/check.test.ts
 */
export function bearingUnderNail({ gravity }: AlongInputs): Pascals | null {
  return inRange(gravity) ? pascals(fromPrinted(16_600 * gravity ** 1.84, 'psi')) : null
}

const inRange = (gravity: number): boolean => gravity >= 0.31 && gravity <= 0.73

type AngleInputs = Readonly<{ along: Pascals; across: Pascals; angle: Radians }>

/**
 * Dowel bearing strength at an angle to the grain (Hankinson).
 * @param along bearing strength along the grain [Pa]
 * @param across bearing strength across the grain [Pa]
 * @param angle between load and grain [rad], 0 to 1.571
 * @returns bearing strength [Pa]
 * Formula: Fe = F1 F2/(F1 sin^2 t + F2 cos^2 t), F1 along, F2 across
 * Valid: any angle between. Outside: none.
 * Source: nds-2018-12-3-4
 * Checked by: tests/external/nds-2018-12-3-4/check.test.ts
 */
export function bearingAtAngle({ along, across, angle }: AngleInputs): Pascals {
  return pascals((along * across) / (along * Math.sin(angle) ** 2 + across * Math.cos(angle) ** 2))
}

/**
 * A bearing strength as the code's table prints it: nearest 50 psi, halves up. The tables of bolt values start from these.
 * @param strength computed bearing strength [Pa]
 * @returns tabulated bearing strength [Pa]
 * Formula: 50 floor(Fe/50 + 1/2), psi
 * Valid: wood. Outside: none.
 * Source: nds-2018-12-3-3
 * Checked by: tests/external/nds-2018-12-3-3/check.test.ts
 */
export function tabulatedBearing(strength: Pascals): Pascals {
  return pascals(fromPrinted(50 * Math.floor(toPrinted(strength, 'psi') / 50 + 0.5 + 1e-9), 'psi'))
}

/** Bearing along the grain, with its work shown. */
export const workedBearingAlongGrain = showing({
  id: 'bearing-along-grain',
  quantity: 'strength',
  formula: String.raw`F_{e\parallel} = 11200\,G\ (\mathrm{psi,\ nearest\ 50})`,
  terms: { gravity: ['G', 'ratio'] },
  sources: ['nds-2018-12-3-3'],
  of: (inputs: AlongInputs) => {
    const strength = bearingAlongGrain(inputs)
    return strength === null ? null : tabulatedBearing(strength)
  },
})

/** Bearing across the grain, with its work shown. */
export const workedBearingAcrossGrain = showing({
  id: 'bearing-across-grain',
  quantity: 'strength',
  formula: String.raw`F_{e\perp} = 6100\,G^{1.45}/\sqrt{D}\ (\mathrm{psi,\ in,\ nearest\ 50})`,
  terms: { gravity: ['G', 'ratio'], diameter: ['D', 'length'] },
  sources: ['nds-2018-12-3-3'],
  of: (inputs: AcrossInputs) => {
    const strength = bearingAcrossGrain(inputs)
    return strength === null ? null : tabulatedBearing(strength)
  },
})

/** Bearing of a steel plate, with its work shown. */
export const workedSteelBearing = showing({
  id: 'steel-bearing',
  quantity: 'strength',
  formula: 'F_e(t)',
  terms: { thickness: ['t', 'length'] },
  sources: ['nds-2018-app-i'],
  of: ({ thickness }: Readonly<{ thickness: Metres }>) => steelBearing(thickness),
})

/** Bearing under a nail, with its work shown. */
export const workedBearingUnderNail = showing({
  id: 'bearing-under-nail',
  quantity: 'strength',
  formula: String.raw`F_e = 16600\,G^{1.84}\ (\mathrm{psi})`,
  terms: { gravity: ['G', 'ratio'] },
  sources: ['nds-2018-12-3-3'],
  of: bearingUnderNail,
})

/** Bearing at an angle to the grain, with its work shown. */
export const workedBearingAtAngle = showing({
  id: 'bearing-at-angle',
  quantity: 'strength',
  formula: String.raw`F_{e\theta} = \frac{F_{e\parallel}F_{e\perp}}{F_{e\parallel}\sin^2\theta + F_{e\perp}\cos^2\theta}`,
  terms: {
    along: [String.raw`F_{e\parallel}`, 'strength'],
    across: [String.raw`F_{e\perp}`, 'strength'],
    angle: [String.raw`\theta`, 'angle'],
  },
  sources: ['nds-2018-12-3-4'],
  of: bearingAtAngle,
})
