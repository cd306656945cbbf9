import { unit } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { factors, poundMass, toSI, type UnitId } from '../../../src/core/units/factors.ts'
import { parseQuantity } from '../../../src/core/units/parse.ts'
import { close } from '../../close.ts'

/** Each unit of ours as mathjs says it, and the SI unit it is measured in. Weights of a mass use standard gravity, 9.80665 m/s^2. */
const cases: Readonly<Record<UnitId, readonly [string, string]>> = {
  in: ['1 in', 'm'],
  ft: ['1 ft', 'm'],
  yd: ['1 yd', 'm'],
  mm: ['1 mm', 'm'],
  cm: ['1 cm', 'm'],
  m: ['1 m', 'm'],
  in2: ['1 in^2', 'm^2'],
  ft2: ['1 ft^2', 'm^2'],
  yd2: ['1 yd^2', 'm^2'],
  mm2: ['1 mm^2', 'm^2'],
  cm2: ['1 cm^2', 'm^2'],
  m2: ['1 m^2', 'm^2'],
  in3: ['1 in^3', 'm^3'],
  ft3: ['1 ft^3', 'm^3'],
  yd3: ['1 yd^3', 'm^3'],
  L: ['1 L', 'm^3'],
  m3: ['1 m^3', 'm^3'],
  lb: ['1 lbf', 'N'],
  kip: ['1000 lbf', 'N'],
  kg: ['9.80665 kg m/s^2', 'N'],
  N: ['1 N', 'N'],
  kN: ['1 kN', 'N'],
  'lb-ft': ['1 lbf ft', 'N m'],
  'N-m': ['1 N m', 'N m'],
  'kN-m': ['1 kN m', 'N m'],
  psi: ['1 lbf/in^2', 'Pa'],
  ksi: ['1000 lbf/in^2', 'Pa'],
  psf: ['1 lbf/ft^2', 'Pa'],
  ksf: ['1000 lbf/ft^2', 'Pa'],
  Pa: ['1 Pa', 'Pa'],
  kPa: ['1 kPa', 'Pa'],
  MPa: ['1 MPa', 'Pa'],
  pcf: ['1 lbf/ft^3', 'N/m^3'],
  'kg/m3': ['9.80665 kg m/s^2/m^3', 'N/m^3'],
  'N/m3': ['1 N/m^3', 'N/m^3'],
  'kN/m3': ['1 kN/m^3', 'N/m^3'],
  'psf/ft': ['1 lbf/ft^2/ft', 'Pa/m'],
  'Pa/m': ['1 Pa/m', 'Pa/m'],
  'kPa/m': ['1 kPa/m', 'Pa/m'],
  deg: ['1 deg', 'rad'],
  rad: ['1 rad', 'rad'],
  '%': ['0.01 m/m', 'm/m'],
  '1': ['1 m/m', 'm/m'],
  s: ['1 s', 's'],
  min: ['1 minute', 's'],
  h: ['1 hour', 's'],
  d: ['1 day', 's'],
  yr: ['365.25 day', 's'],
  degC: ['1 degC', 'degC'],
  degF: ['1 degF', 'degC'],
  'in/h': ['1 in/hour', 'm/s'],
  'mm/h': ['1 mm/hour', 'm/s'],
  mph: ['1 mi/hour', 'm/s'],
  'km/h': ['1 km/hour', 'm/s'],
  'm/s': ['1 m/s', 'm/s'],
  qt: ['1 quart', 'm^3'],
  gal: ['1 gallon', 'm^3'],
  'gal/min': ['1 gallon/minute', 'm^3/s'],
  'L/s': ['1 L/s', 'm^3/s'],
  'm3/s': ['1 m^3/s', 'm^3/s'],
  'gal/yd3': ['1 gal/yd^3', 'm^3/m^3'],
  'L/m3': ['1 L/m^3', 'm^3/m^3'],
}

const asMathjs = (text: string, si: string) => unit(text).toNumber(si)

describe('factors against mathjs', () => {
  it('looks at every unit', () => expect(Object.keys(cases).sort()).toEqual(Object.keys(factors).sort()))

  it.each(Object.entries(cases) as [UnitId, readonly [string, string]][])('one %s', (id, [text, si]) => {
    const want = si === 'm/m' ? Number.parseFloat(text) : asMathjs(text, si)
    close(toSI(1, id), want, { abs: 0, rel: 1e-12 })
  })

  it('the pound', () => close(poundMass, asMathjs('1 lbm', 'kg'), { abs: 0, rel: 1e-15 }))

  it('the kip, which mathjs carries to four decimals only', () => close(toSI(1, 'kip'), asMathjs('1 kip', 'N'), { abs: 5e-5, rel: 0 }))

  it.each([
    ['18 in', 'length', '18 in', 'm'],
    ['1\'-6"', 'length', '18 in', 'm'],
    ['4.5 ft', 'length', '4.5 ft', 'm'],
    ['3500 psi', 'strength', '3500 lbf/in^2', 'Pa'],
    ['2000 psf', 'pressure', '2000 lbf/ft^2', 'Pa'],
    ['145 pcf', 'unitWeight', '145 lbf/ft^3', 'N/m^3'],
    ['150 psf/ft', 'gradient', '150 lbf/ft^2/ft', 'Pa/m'],
    ['80 lb', 'weight', '80 lbf', 'N'],
    ['0.75 yd3', 'volume', '0.75 yd^3', 'm^3'],
  ] as const)('%s', (text, kind, told, si) => {
    const reading = parseQuantity(text, kind)
    if (!reading.ok) expect.fail(reading.code)
    close(reading.value, asMathjs(told, si), { abs: 0, rel: 1e-12 })
  })
})
