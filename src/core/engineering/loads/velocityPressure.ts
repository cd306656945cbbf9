import { type Metres, type Pascals, pascals } from '../../units/quantity.ts'
import { fromPrinted, toPrinted } from '../cited.ts'
import { interpolate } from '../interpolate.ts'
import { showing } from '../showing.ts'
import { type WindExposure, type WindEdition, terrain, velocityCoefficients } from '../tables/windRoof.ts'

/** Directionality of buildings, and gust factor of rigid ones. Source: asce-7-16-26. */
export const directionality = 0.85
export const rigidGust = 0.85

type CoefficientInputs = Readonly<{ exposure: WindExposure; height: Metres; edition: WindEdition }>

/**
 * Velocity pressure coefficient by the edition's formula.
 * @param exposure B, C or D [1]
 * @param height above ground [m], non-negative; below 15 ft the value at 15 ft
 * @param edition 7-16 or 7-22 [1]
 * @returns Kz [1]
 * Formula: 2.01 (z/zg)^(2/alpha) (7-16), 2.41 (z/zg)^(2/alpha) (7-22), z >= 15 ft
 * Valid: up to the gradient height. Outside: no pier's roof gets there.
 * Source: asce-7-16-26, asce-7-22-26
 * Checked by: tests/external/asce-7-16-26-10/check.test.ts
 */
export function velocityCoefficient({ exposure, height, edition }: CoefficientInputs): number {
  const { factor, [exposure]: row } = terrain[edition]
  const [alpha, gradient] = row
  return factor * (Math.max(15, toPrinted(height, 'ft')) / gradient) ** (2 / alpha)
}

type TableInputs = Readonly<{ exposure: WindExposure; height: Metres }>

/**
 * Velocity pressure coefficient by the printed table.
 * @param exposure B, C or D [1]
 * @param height above ground [m], up to 9.144; below 15 ft the value at 15 ft
 * @returns Kz [1]; null above 30 ft, where no row is held here
 * Formula: straight line between 15, 20, 25 and 30 ft
 * Valid: up to 30 ft. Outside: no value.
 * Source: asce-7-16-26-10
 * Checked by: tests/external/asce-7-16-26-10/check.test.ts
 */
export function velocityCoefficientTable({ exposure, height }: TableInputs): number | null {
  return interpolate(velocityCoefficients[exposure], Math.max(15, Math.round(toPrinted(height, 'ft') * 1e9) / 1e9))
}

type ElevationInputs = Readonly<{ elevation: Metres }>

/**
 * Ground elevation factor for thinner air.
 * @param elevation of the site above sea level [m]
 * @returns Ke [1]; 1 may always be taken
 * Formula: exp(-0.0000362 z), z in feet
 * Valid: land. Outside: none.
 * Source: asce-7-16-26
 * Checked by: tests/external/asce-7-16-26-10/check.test.ts
 */
export function elevationFactor({ elevation }: ElevationInputs): number {
  return Math.exp(-0.0000362 * toPrinted(elevation, 'ft'))
}

type Inputs = Readonly<{ edition: WindEdition; speed: number; kz: number; kzt: number; kd: number; ke: number }>

/**
 * Velocity pressure. In 7-16 it holds the directionality factor; in 7-22 that factor goes to the pressure instead.
 * @param edition 7-16 or 7-22 [1]
 * @param speed basic wind speed V [m/s], strength level
 * @param kz exposure coefficient [1]
 * @param kzt topographic factor [1]
 * @param kd directionality factor [1]; not used in 7-22's form
 * @param ke elevation factor [1]
 * @returns velocity pressure q [Pa]
 * Formula: q = 0.00256 Kz Kzt Kd Ke V^2 (7-16), without Kd (7-22), psf and mph
 * Valid: strength-level speeds; allowable design takes 0.6 W. Outside: never put Kd in twice.
 * Source: asce-7-16-26, asce-7-22-26
 * Checked by: tests/external/asce-7-16-27-3/check.test.ts
 */
export function velocityPressure({ edition, speed, kz, kzt, kd, ke }: Inputs): Pascals {
  const mph = toPrinted(speed, 'mph')
  return pascals(fromPrinted(0.00256 * kz * kzt * (edition === '7-16' ? kd : 1) * ke * mph * mph, 'psf'))
}

/** Velocity pressure, with its work shown. */
export const workedVelocityPressure = showing({
  id: 'velocity-pressure',
  quantity: 'pressure',
  formula: ({ edition }: Inputs) =>
    `${edition === '7-16' ? 'q = 0.00256\\,K_z K_{zt} K_d K_e V^2' : 'q = 0.00256\\,K_z K_{zt} K_e V^2'}\\ (\\mathrm{psf,\\ mph})`,
  terms: {
    kz: ['K_z', 'ratio'],
    kzt: ['K_{zt}', 'ratio'],
    kd: ['K_d', 'ratio'],
    ke: ['K_e', 'ratio'],
    speed: ['V', 'speed'],
  },
  sources: ['asce-7-16-26', 'asce-7-22-26'],
  of: velocityPressure,
})

type NetInputs = Readonly<{ edition: WindEdition; pressure: Pascals; gust: number; kd: number; coefficient: number }>

/**
 * Net wind pressure on a free roof surface.
 * @param edition 7-16 or 7-22 [1]
 * @param pressure velocity pressure at mean roof height [Pa]
 * @param gust gust-effect factor G [1]
 * @param kd directionality factor [1]; used in 7-22's form alone
 * @param coefficient CN [1]; negative lifts
 * @returns pressure normal to the roof [Pa]; negative lifts
 * Formula: p = q G CN (7-16), p = q Kd G CN (7-22)
 * Valid: main frame. Outside: add no internal pressure to CN, which is already net.
 * Source: asce-7-16-27-3, asce-7-22-27
 * Checked by: tests/external/asce-7-16-27-3/check.test.ts
 */
export function freeRoofPressure({ edition, pressure, gust, kd, coefficient }: NetInputs): Pascals {
  return pascals(pressure * (edition === '7-22' ? kd : 1) * gust * coefficient)
}

type EnclosedInputs = NetInputs & Readonly<{ internal: number }>

/**
 * Wind pressure on the roof of an enclosed or partially enclosed building, internal pressure taken with the sign that is given.
 * @param edition 7-16 or 7-22 [1]
 * @param pressure velocity pressure at mean roof height [Pa]
 * @param gust gust-effect factor G [1]
 * @param kd directionality factor [1]; used in 7-22's form alone
 * @param coefficient Cp [1]; negative lifts
 * @param internal GCpi [1], positive pushes the roof up from inside
 * @returns pressure normal to the roof [Pa]; negative lifts
 * Formula: p = q G Cp - q GCpi (7-16); both times Kd (7-22)
 * Valid: q taken at mean roof height for both. Outside: openings high on a tall building need qi of their own.
 * Source: asce-7-16-27-3, asce-7-22-27
 * Checked by: tests/external/asce-7-16-27-3/check.test.ts
 */
export function enclosedRoofPressure({ edition, pressure, gust, kd, coefficient, internal }: EnclosedInputs): Pascals {
  return pascals(pressure * (edition === '7-22' ? kd : 1) * (gust * coefficient - internal))
}

/** Velocity pressure coefficient by formula, with its work shown. */
export const workedVelocityCoefficient = showing({
  id: 'velocity-coefficient',
  quantity: 'ratio',
  formula: ({ exposure, edition }: CoefficientInputs) =>
    String.raw`K_z = ${terrain[edition].factor}\,(\max(z,\ 15)/${terrain[edition][exposure][1]})^{2/${terrain[edition][exposure][0]}}\ (\mathrm{ft})`,
  terms: { height: ['z', 'length'] },
  sources: ['asce-7-16-26', 'asce-7-22-26'],
  of: velocityCoefficient,
})

/** Velocity pressure coefficient by the table, with its work shown. */
export const workedVelocityCoefficientTable = showing({
  id: 'velocity-coefficient-table',
  quantity: 'ratio',
  formula: 'K_z(z)',
  terms: { height: ['z', 'length'] },
  sources: ['asce-7-16-26-10'],
  of: velocityCoefficientTable,
})

/** Elevation factor, with its work shown. */
export const workedElevationFactor = showing({
  id: 'elevation-factor',
  quantity: 'ratio',
  formula: String.raw`K_e = \exp(-0.0000362\,z)\ (\mathrm{ft})`,
  terms: { elevation: ['z', 'length'] },
  sources: ['asce-7-16-26'],
  of: elevationFactor,
})

/** Net pressure on a free roof, with its work shown. */
export const workedFreeRoofPressure = showing({
  id: 'free-roof-pressure',
  quantity: 'pressure',
  formula: ({ edition }: NetInputs) => (edition === '7-22' ? 'p = q_h K_d G\\,C_N' : 'p = q_h G\\,C_N'),
  terms: { pressure: ['q_h', 'pressure'], kd: ['K_d', 'ratio'], gust: ['G', 'ratio'], coefficient: ['C_N', 'ratio'] },
  sources: ['asce-7-16-27-3', 'asce-7-22-27'],
  of: freeRoofPressure,
})

/** Pressure on the roof of an enclosed building, with its work shown. */
export const workedEnclosedRoofPressure = showing({
  id: 'enclosed-roof-pressure',
  quantity: 'pressure',
  formula: ({ edition }: EnclosedInputs) => (edition === '7-22' ? 'p = q_h K_d (G\\,C_p - GC_{pi})' : 'p = q_h (G\\,C_p - GC_{pi})'),
  terms: {
    pressure: ['q_h', 'pressure'],
    kd: ['K_d', 'ratio'],
    gust: ['G', 'ratio'],
    coefficient: ['C_p', 'ratio'],
    internal: ['GC_{pi}', 'ratio'],
  },
  sources: ['asce-7-16-27-3', 'asce-7-22-27', 'asce-7-16-26-13'],
  of: enclosedRoofPressure,
})
