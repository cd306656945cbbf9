import type { QuantityKind, UnitSystem } from './quantity.ts'

/** Units that people write. Their SI meaning is fixed by definition; nothing here is rounded by us. */
export type UnitId =
  | 'in'
  | 'ft'
  | 'yd'
  | 'mm'
  | 'cm'
  | 'm'
  | 'in2'
  | 'ft2'
  | 'yd2'
  | 'mm2'
  | 'cm2'
  | 'm2'
  | 'in3'
  | 'ft3'
  | 'yd3'
  | 'L'
  | 'm3'
  | 'lb'
  | 'kip'
  | 'kg'
  | 'N'
  | 'kN'
  | 'lb-ft'
  | 'N-m'
  | 'kN-m'
  | 'psi'
  | 'ksi'
  | 'psf'
  | 'ksf'
  | 'Pa'
  | 'kPa'
  | 'MPa'
  | 'pcf'
  | 'kg/m3'
  | 'N/m3'
  | 'kN/m3'
  | 'psf/ft'
  | 'Pa/m'
  | 'kPa/m'
  | 'deg'
  | 'rad'
  | '%'
  | '1'
  | 's'
  | 'min'
  | 'h'
  | 'd'
  | 'yr'
  | 'degC'
  | 'degF'
  | 'in/h'
  | 'mm/h'
  | 'm/s'
  | 'mph'
  | 'km/h'
  | 'qt'
  | 'gal'
  | 'gal/min'
  | 'L/s'
  | 'm3/s'
  | 'gal/yd3'
  | 'L/m3'

/**
 * SI value of one unit as a quotient of two doubles. A quotient keeps the last digit where a single factor would not:
 * 18 in is 18 x 127 / 5000 = 0.4572 to the nearest double, while 18 x 0.0254 is one step beside it.
 * `zero` is the unit's reading at the SI zero, where the two do not begin together (32 for degrees Fahrenheit).
 */
export type Factor = Readonly<{ num: number; den: number; zero?: number }>

/** Standard gravity [m/s2] and the avoirdupois pound [kg]: both exact by definition. Source: nist-sp-811, Appendix B. */
const gravity = 9.80665
const pound = 0.45359237
/** Pound-force [N] = 4.4482216152605, exact. */
const poundForce = 4.4482216152605

const of = (num: number, den = 1): Factor => ({ num, den })

/** Exact conversion factors. Source: nist-sp-811, Appendix B. Checked by: tests/external/mathjs-units/check.test.ts */
export const factors: Readonly<Record<UnitId, Factor>> = {
  in: of(127, 5000),
  ft: of(381, 1250),
  yd: of(1143, 1250),
  mm: of(1, 1000),
  cm: of(1, 100),
  m: of(1),
  in2: of(16129, 25e6),
  ft2: of(145161, 1562500),
  yd2: of(1306449, 1562500),
  mm2: of(1, 1e6),
  cm2: of(1, 1e4),
  m2: of(1),
  in3: of(2048383, 125e9),
  ft3: of(55306341, 1953125e3),
  yd3: of(1493271207, 1953125e3),
  L: of(1, 1000),
  m3: of(1),
  lb: of(poundForce),
  kip: of(1000 * poundForce),
  kg: of(gravity),
  N: of(1),
  kN: of(1000),
  'lb-ft': of(poundForce * 381, 1250),
  'N-m': of(1),
  'kN-m': of(1000),
  psi: of(poundForce * 25e6, 16129),
  ksi: of(poundForce * 25e9, 16129),
  psf: of(poundForce * 1562500, 145161),
  ksf: of(poundForce * 1562500e3, 145161),
  Pa: of(1),
  kPa: of(1000),
  MPa: of(1e6),
  pcf: of(poundForce * 1953125e3, 55306341),
  'kg/m3': of(gravity),
  'N/m3': of(1),
  'kN/m3': of(1000),
  'psf/ft': of(poundForce * 1953125e3, 55306341),
  'Pa/m': of(1),
  'kPa/m': of(1000),
  deg: of(Math.PI, 180),
  rad: of(1),
  '%': of(1, 100),
  '1': of(1),
  s: of(1),
  min: of(60),
  h: of(3600),
  d: of(86400),
  yr: of(31557600),
  degC: of(1),
  degF: { num: 5, den: 9, zero: 32 },
  'in/h': of(127, 5000 * 3600),
  'mm/h': of(1, 3600e3),
  'm/s': of(1),
  mph: of(1397, 3125),
  'km/h': of(1, 3.6),
  qt: of(57.75 * 2048383, 125e9),
  gal: of(231 * 2048383, 125e9),
  'gal/min': of(231 * 2048383, 125e9 * 60),
  'L/s': of(1, 1000),
  'm3/s': of(1),
  'gal/yd3': of(231, 46656),
  'L/m3': of(1, 1000),
}

/** Units that are a power of ten of the SI unit: a decimal in one of them is only shifted. */
export const powerOfTen: Partial<Readonly<Record<UnitId, number>>> = {
  mm: -3,
  cm: -2,
  m: 0,
  mm2: -6,
  cm2: -4,
  m2: 0,
  L: -3,
  m3: 0,
  N: 0,
  kN: 3,
  'N-m': 0,
  'kN-m': 3,
  Pa: 0,
  kPa: 3,
  MPa: 6,
  'N/m3': 0,
  'kN/m3': 3,
  'Pa/m': 0,
  'kPa/m': 3,
  rad: 0,
  '%': -2,
  '1': 0,
  s: 0,
  degC: 0,
  'm/s': 0,
  'L/s': -3,
  'm3/s': 0,
  'L/m3': -3,
}

/** The mass that the pound names [kg]; a weight in lb and a mass in lb are the same number at standard gravity. */
export const poundMass = pound

/** SI value of `value` units. */
export const toSI = (value: number, unit: UnitId): number => ((value - (factors[unit].zero ?? 0)) * factors[unit].num) / factors[unit].den
/** How many units an SI value is. */
export const fromSI = (value: number, unit: UnitId): number => (value * factors[unit].den) / factors[unit].num + (factors[unit].zero ?? 0)

/** Units in which each kind of quantity may be written. A slope also takes H:V; see slopeText.ts. */
export const unitsOf: Readonly<Record<QuantityKind, readonly UnitId[]>> = {
  length: ['in', 'ft', 'yd', 'mm', 'cm', 'm'],
  area: ['in2', 'ft2', 'yd2', 'mm2', 'cm2', 'm2'],
  volume: ['in3', 'ft3', 'yd3', 'qt', 'gal', 'L', 'm3'],
  weight: ['lb', 'kip', 'kg', 'N', 'kN'],
  force: ['lb', 'kip', 'N', 'kN'],
  moment: ['lb-ft', 'N-m', 'kN-m'],
  strength: ['psi', 'ksi', 'psf', 'ksf', 'Pa', 'kPa', 'MPa'],
  pressure: ['psi', 'ksi', 'psf', 'ksf', 'Pa', 'kPa', 'MPa'],
  unitWeight: ['pcf', 'kg/m3', 'N/m3', 'kN/m3'],
  gradient: ['psf/ft', 'Pa/m', 'kPa/m'],
  angle: ['deg', 'rad'],
  slope: ['%', 'deg'],
  ratio: ['%', '1'],
  count: ['1'],
  duration: ['s', 'min', 'h', 'd'],
  age: ['h', 'd'],
  life: ['s', 'd', 'yr'],
  temperature: ['degF', 'degC'],
  rain: ['in/h', 'mm/h', 'm/s'],
  speed: ['mph', 'km/h', 'm/s'],
  conductivity: ['in/h', 'mm/h', 'm/s'],
  flow: ['gal/min', 'L/s', 'm3/s'],
  dosage: ['gal/yd3', 'L/m3'],
  money: ['1'],
}

/** The unit that a bare number has in an input field, and that `editText` writes. */
export const inputUnit: Readonly<Record<UnitSystem, Readonly<Record<QuantityKind, UnitId>>>> = {
  us: {
    length: 'in',
    area: 'ft2',
    volume: 'ft3',
    weight: 'lb',
    force: 'lb',
    moment: 'lb-ft',
    strength: 'psi',
    pressure: 'psf',
    unitWeight: 'pcf',
    gradient: 'psf/ft',
    angle: 'deg',
    slope: '%',
    ratio: '%',
    count: '1',
    duration: 'h',
    age: 'd',
    life: 'yr',
    temperature: 'degF',
    rain: 'in/h',
    speed: 'mph',
    conductivity: 'm/s',
    flow: 'gal/min',
    dosage: 'gal/yd3',
    money: '1',
  },
  metric: {
    length: 'mm',
    area: 'm2',
    volume: 'm3',
    weight: 'kg',
    force: 'kN',
    moment: 'kN-m',
    strength: 'MPa',
    pressure: 'kPa',
    unitWeight: 'kN/m3',
    gradient: 'kPa/m',
    angle: 'deg',
    slope: '%',
    ratio: '%',
    count: '1',
    duration: 'h',
    age: 'd',
    life: 'yr',
    temperature: 'degC',
    rain: 'mm/h',
    speed: 'm/s',
    conductivity: 'm/s',
    flow: 'L/s',
    dosage: 'L/m3',
    money: '1',
  },
}

/** The same as words for a reader: "in, ft, yd, mm, cm, m". */
export const unitNames = (quantity: QuantityKind): string => [...unitsOf[quantity], ...(quantity === 'slope' ? ['H:V'] : [])].join(', ')
