import type { UnitId } from './factors.ts'

/** How people write each unit, in lower case, powers without a caret, no full stop at the end. */
const spellings: Readonly<Record<UnitId, readonly string[]>> = {
  in: ['in', 'inch', 'inches', '"'],
  ft: ['ft', 'foot', 'feet', "'"],
  yd: ['yd', 'yds', 'yard', 'yards'],
  mm: ['mm', 'millimeter', 'millimeters', 'millimetre', 'millimetres'],
  cm: ['cm', 'centimeter', 'centimeters', 'centimetre', 'centimetres'],
  m: ['m', 'meter', 'meters', 'metre', 'metres'],
  in2: ['in2', 'sq in', 'sq. in'],
  ft2: ['ft2', 'sq ft', 'sq. ft', 'sf'],
  yd2: ['yd2', 'sq yd', 'sq. yd'],
  mm2: ['mm2'],
  cm2: ['cm2'],
  m2: ['m2', 'sq m'],
  in3: ['in3', 'cu in', 'cu. in'],
  ft3: ['ft3', 'cu ft', 'cu. ft', 'cf'],
  yd3: ['yd3', 'cu yd', 'cu. yd', 'cy'],
  L: ['l', 'liter', 'liters', 'litre', 'litres'],
  m3: ['m3', 'cu m'],
  lb: ['lb', 'lbs', 'lbf', 'pound', 'pounds'],
  kip: ['kip', 'kips'],
  kg: ['kg', 'kilogram', 'kilograms'],
  N: ['n', 'newton', 'newtons'],
  kN: ['kn'],
  'lb-ft': ['lb-ft', 'ft-lb', 'lbf-ft', 'ft-lbf'],
  'N-m': ['n-m', 'nm', 'n·m'],
  'kN-m': ['kn-m', 'knm', 'kn·m'],
  psi: ['psi', 'lb/in2', 'lbf/in2'],
  ksi: ['ksi'],
  psf: ['psf', 'lb/ft2', 'lbf/ft2'],
  ksf: ['ksf'],
  Pa: ['pa', 'n/m2'],
  kPa: ['kpa', 'kn/m2'],
  MPa: ['mpa', 'n/mm2', 'mn/m2'],
  pcf: ['pcf', 'lb/ft3', 'lbf/ft3', 'lb/cu ft'],
  'kg/m3': ['kg/m3'],
  'N/m3': ['n/m3'],
  'kN/m3': ['kn/m3'],
  'psf/ft': ['psf/ft', 'psf per ft', 'psf per foot', 'psf/foot', 'lb/ft2/ft'],
  'Pa/m': ['pa/m'],
  'kPa/m': ['kpa/m', 'kn/m2/m'],
  deg: ['deg', 'degree', 'degrees', '°'],
  rad: ['rad', 'radian', 'radians'],
  '%': ['%', 'percent', 'per cent', 'pct'],
  '1': [],
  s: ['s', 'sec', 'second', 'seconds'],
  min: ['min', 'minute', 'minutes'],
  h: ['h', 'hr', 'hrs', 'hour', 'hours'],
  d: ['d', 'day', 'days'],
  yr: ['yr', 'yrs', 'year', 'years'],
  degC: ['degc', 'deg c', '°c'],
  degF: ['degf', 'deg f', '°f'],
  'in/h': ['in/h', 'in/hr', 'inches/hour'],
  'mm/h': ['mm/h', 'mm/hr'],
  'm/s': ['m/s'],
  mph: ['mph', 'mi/h'],
  'km/h': ['km/h', 'kph'],
  qt: ['qt', 'qts', 'quart', 'quarts'],
  gal: ['gal', 'gallon', 'gallons'],
  'gal/min': ['gal/min', 'gpm'],
  'L/s': ['l/s'],
  'm3/s': ['m3/s'],
  'gal/yd3': ['gal/yd3', 'gal/cuyd'],
  'L/m3': ['l/m3'],
}

const bySpelling: ReadonlyMap<string, UnitId> = new Map(
  (Object.entries(spellings) as [UnitId, readonly string[]][]).flatMap(([id, names]) => names.map((name) => [name, id] as const)),
)

/** The unit that a word means, or undefined. Case is ignored: no unit here differs from another by case alone. */
export const unitNamed = (word: string): UnitId | undefined => {
  const plain = word
    .trim()
    .toLowerCase()
    .replaceAll('²', '2')
    .replaceAll('³', '3')
    .replaceAll('^', '')
    .replace(/ *\/ */g, '/')
    .replace(/ +/g, ' ')
  return bySpelling.get(plain) ?? bySpelling.get(plain.replace(/\.$/, ''))
}
