import { describe, expect, it } from 'vitest'
import fc from 'fast-check'
import { factors, fromSI, inputUnit, toSI, type UnitId, unitsOf } from '../../../src/core/units/factors.ts'
import { longestText, parseQuantity, type ReadingCode } from '../../../src/core/units/parse.ts'
import type { QuantityKind } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'

const kinds = Object.keys(unitsOf) as QuantityKind[]

/** [text, kind, unit of the value, value]: each reads as that many units. */
const spellings: readonly (readonly [string, QuantityKind, UnitId, number])[] = [
  ['18 in', 'length', 'in', 18],
  ['18in', 'length', 'in', 18],
  ['18 in.', 'length', 'in', 18],
  ['18 IN', 'length', 'in', 18],
  ['18 inches', 'length', 'in', 18],
  ['18"', 'length', 'in', 18],
  ['18″', 'length', 'in', 18],
  ['18”', 'length', 'in', 18],
  ["18''", 'length', 'in', 18],
  ['18′′', 'length', 'in', 18],
  ['  18   in  ', 'length', 'in', 18],
  ['+18 in', 'length', 'in', 18],
  ['-18 in', 'length', 'in', -18],
  ['−18 in', 'length', 'in', -18],
  ['- 18 in', 'length', 'in', -18],
  ['18. in', 'length', 'in', 18],
  ['.5 in', 'length', 'in', 0.5],
  ['1 1/2 in', 'length', 'in', 1.5],
  ['1-1/2 in', 'length', 'in', 1.5],
  ['1 1/2"', 'length', 'in', 1.5],
  ['1 1⁄2 in', 'length', 'in', 1.5],
  ['3/4 in', 'length', 'in', 0.75],
  ['½ in', 'length', 'in', 0.5],
  ['1½ in', 'length', 'in', 1.5],
  ['1 ¾ in', 'length', 'in', 1.75],
  ['5¼"', 'length', 'in', 5.25],
  ['⅝ in', 'length', 'in', 0.625],
  ['1\'-6"', 'length', 'in', 18],
  ['1′-6″', 'length', 'in', 18],
  ['1’–6”', 'length', 'in', 18],
  ['1\' 6"', 'length', 'in', 18],
  ["1' 6", 'length', 'in', 18],
  ["1'-6", 'length', 'in', 18],
  ['1\' 6 1/2"', 'length', 'in', 18.5],
  ['1\'-6-1/2"', 'length', 'in', 18.5],
  ['1\'-6½"', 'length', 'in', 18.5],
  ['1\' - 6"', 'length', 'in', 18],
  ['3\'-0"', 'length', 'in', 36],
  ['0\'-6"', 'length', 'in', 6],
  ['-1\'-6"', 'length', 'in', -18],
  ['1 ft 6 in', 'length', 'in', 18],
  ['1 foot 6 inches', 'length', 'in', 18],
  ['10\'-6.25"', 'length', 'in', 126.25],
  ["3'", 'length', 'ft', 3],
  ['4.5 ft', 'length', 'ft', 4.5],
  ['4 1/2 ft', 'length', 'ft', 4.5],
  ['2 yd', 'length', 'yd', 2],
  ['0.457 m', 'length', 'm', 0.457],
  ['0,457 m', 'length', 'm', 0.457],
  ['1,5 m', 'length', 'm', 1.5],
  ['45,72 cm', 'length', 'cm', 45.72],
  ['457 mm', 'length', 'mm', 457],
  ['45.7 cm', 'length', 'cm', 45.7],
  ['1,219 mm', 'length', 'mm', 1219],
  ['1\u202f219 mm', 'length', 'mm', 1219],
  ['12\u00a0192 mm', 'length', 'mm', 12192],
  ['12\u2009192.5 mm', 'length', 'mm', 12192.5],
  ['1.2e2 mm', 'length', 'mm', 120],
  ['3500 psi', 'strength', 'psi', 3500],
  ['3,500 psi', 'strength', 'psi', 3500],
  ['3.5 ksi', 'strength', 'ksi', 3.5],
  ['24 MPa', 'strength', 'MPa', 24],
  ['24 N/mm²', 'strength', 'MPa', 24],
  ['2000 psf', 'pressure', 'psf', 2000],
  ['2 ksf', 'pressure', 'ksf', 2],
  ['95.8 kPa', 'pressure', 'kPa', 95.8],
  ['95.8 kN/m2', 'pressure', 'kPa', 95.8],
  ['145 pcf', 'unitWeight', 'pcf', 145],
  ['145 lb/ft³', 'unitWeight', 'pcf', 145],
  ['145 lb / ft^3', 'unitWeight', 'pcf', 145],
  ['22.8 kN/m3', 'unitWeight', 'kN/m3', 22.8],
  ['22.8 kN/m³', 'unitWeight', 'kN/m3', 22.8],
  ['2325 kg/m³', 'unitWeight', 'kg/m3', 2325],
  ['150 psf/ft', 'gradient', 'psf/ft', 150],
  ['150 psf per ft', 'gradient', 'psf/ft', 150],
  ['23.6 kPa/m', 'gradient', 'kPa/m', 23.6],
  ['30 deg', 'angle', 'deg', 30],
  ['30°', 'angle', 'deg', 30],
  ['0.5 rad', 'angle', 'rad', 0.5],
  ['10 %', 'slope', '%', 10],
  ['10%', 'slope', '%', 10],
  ['10 percent', 'slope', '%', 10],
  ['10:1', 'slope', '1', 0.1],
  ['10H:1V', 'slope', '1', 0.1],
  ['10h : 1v', 'slope', '1', 0.1],
  ['1V:10H', 'slope', '1', 0.1],
  ['3H:1V', 'slope', '1', 1 / 3],
  ['10 %', 'ratio', '%', 10],
  ['6', 'count', '1', 6],
  ['1,000', 'count', '1', 1000],
  ['12.5 ft2', 'area', 'ft2', 12.5],
  ['12.5 sq ft', 'area', 'ft2', 12.5],
  ['2 yd³', 'volume', 'yd3', 2],
  ['2 cu yd', 'volume', 'yd3', 2],
  ['250 L', 'volume', 'L', 250],
  ['2 m³', 'volume', 'm3', 2],
  ['80 lb', 'weight', 'lb', 80],
  ['80 lbs', 'weight', 'lb', 80],
  ['36 kg', 'weight', 'kg', 36],
  ['1.2 kip', 'force', 'kip', 1.2],
  ['5 kN', 'force', 'kN', 5],
]

const refused: readonly (readonly [string, QuantityKind, ReadingCode])[] = [
  ['', 'length', 'empty'],
  ['   ', 'length', 'empty'],
  ['\u00a0', 'length', 'empty'],
  ['NaN', 'length', 'not-finite'],
  ['NaN in', 'length', 'not-finite'],
  ['Infinity', 'length', 'not-finite'],
  ['-Infinity in', 'length', 'not-finite'],
  ['∞', 'length', 'not-finite'],
  ['1e999 in', 'length', 'not-finite'],
  ['1e999', 'count', 'not-finite'],
  ['1e308 kip', 'force', 'not-finite'],
  ['18', 'length', 'missing-unit'],
  ['0', 'length', 'missing-unit'],
  ['10', 'slope', 'missing-unit'],
  ['0.1', 'ratio', 'missing-unit'],
  ['18 in 457 mm', 'length', 'two-units'],
  ['18 in mm', 'length', 'two-units'],
  ['1 m 20 cm', 'length', 'two-units'],
  ['5 ft 6 cm', 'length', 'two-units'],
  ['18 psi', 'length', 'wrong-unit'],
  ['18 in2', 'length', 'wrong-unit'],
  ['18 %', 'length', 'wrong-unit'],
  ['3500 psf/ft', 'strength', 'wrong-unit'],
  ['145 psf/ft', 'unitWeight', 'wrong-unit'],
  ['150 pcf', 'gradient', 'wrong-unit'],
  ['36 kg', 'force', 'wrong-unit'],
  ['0.1 rad', 'slope', 'wrong-unit'],
  ['30 in', 'angle', 'wrong-unit'],
  ['3 in', 'count', 'wrong-unit'],
  ['18 cubits', 'length', 'unknown-unit'],
  ['18 in long', 'length', 'unknown-unit'],
  ['18 <img src=x onerror=alert(1)>', 'length', 'unknown-unit'],
  ['10:1', 'length', 'unknown-unit'],
  ['in', 'length', 'not-a-number'],
  ['eighteen in', 'length', 'not-a-number'],
  ['--18 in', 'length', 'not-a-number'],
  ['1.5.2 in', 'length', 'not-a-number'],
  ['1,50,0 in', 'length', 'not-a-number'],
  ['1.234,5 mm', 'length', 'not-a-number'],
  ['1 500 psi', 'strength', 'not-a-number'],
  ['1 1/0 in', 'length', 'not-a-number'],
  ['1/0 in', 'length', 'not-a-number'],
  ['1\'-1/0"', 'length', 'not-a-number'],
  ['1:0:1', 'slope', 'unknown-unit'],
  ['0H:1V', 'slope', 'not-finite'],
  ['0:0', 'slope', 'not-finite'],
  ['90 deg', 'slope', 'not-finite'],
  ['190 deg', 'slope', 'not-finite'],
  ['2.5', 'count', 'not-whole'],
  ['1/2', 'count', 'not-whole'],
  [`${'1'.repeat(longestText)} in`, 'length', 'too-long'],
  ['__proto__', 'length', 'not-a-number'],
  ['1 __proto__', 'length', 'unknown-unit'],
  ['1 constructor', 'length', 'unknown-unit'],
]

describe('reading a quantity', () => {
  it.each(spellings)('%s as %s', (text, kind, unit, amount) => {
    const reading = parseQuantity(text, kind)
    if (!reading.ok) expect.fail(reading.code)
    close(reading.value, toSI(amount, unit), { abs: 0, rel: 1e-15 })
  })

  it.each([
    ['5.7 deg', 5.7],
    ['5.7°', 5.7],
  ])('a slope of %s by its tangent', (text, degrees) => {
    const reading = parseQuantity(text, 'slope')
    if (!reading.ok) expect.fail(reading.code)
    close(reading.value, Math.tan((degrees * Math.PI) / 180), { abs: 0, rel: 1e-15 })
  })

  it.each(refused)('refuses %j as %s: %s', (text, kind, code) => {
    expect(parseQuantity(text, kind)).toEqual({ ok: false, code })
  })

  it('gives a bare number the unit passed in, and only then', () => {
    expect(parseQuantity('18', 'length', 'in')).toEqual({ ok: true, value: 0.4572 })
    expect(parseQuantity('457', 'length', 'mm')).toEqual({ ok: true, value: 0.457 })
    expect(parseQuantity('1 1/2', 'length', 'in')).toEqual({ ok: true, value: toSI(1.5, 'in') })
    expect(parseQuantity('8', 'slope', '%')).toEqual({ ok: true, value: 0.08 })
    expect(parseQuantity('457 mm', 'length', 'in')).toEqual({ ok: true, value: 0.457 })
    expect(parseQuantity('18', 'length', 'psi')).toEqual({ ok: false, code: 'wrong-unit' })
  })

  it('takes a count without a unit', () => expect(parseQuantity('6', 'count')).toEqual({ ok: true, value: 6 }))

  it('reads minus zero as zero', () => {
    const reading = parseQuantity('-0 in', 'length')
    expect(reading.ok && Object.is(reading.value, 0)).toBe(true)
  })

  it('gives one length in inches and in millimetres to the last digit, up to ten feet', () => {
    for (let inches = 0; inches <= 120; inches++) {
      const us = parseQuantity(`${inches} in`, 'length')
      const metric = parseQuantity(`${(inches * 254) / 10} mm`, 'length')
      if (!us.ok || !metric.ok) expect.fail(`${inches} in`)
      close(us.value, metric.value, { abs: 0, rel: 2.3e-16 })
    }
  })

  it('never throws and never gives a value that is not finite, whatever the text', () => {
    const alphabet = fc.constantFrom(...'0123456789.,/-+\'"′″½ eEinftmpskPaH:V%°∞\u202f\u2212')
    const text = fc.oneof(
      fc.string({ maxLength: 80 }),
      fc.array(alphabet, { maxLength: 70 }).map((letters) => letters.join('')),
    )
    fc.assert(
      fc.property(
        text,
        fc.constantFrom(...kinds),
        fc.option(fc.constantFrom(...(Object.keys(factors) as UnitId[])), { nil: undefined }),
        (typed, kind, unit) => {
          const reading = parseQuantity(typed, kind, unit)
          return reading.ok ? Number.isFinite(reading.value) && !Object.is(reading.value, -0) : reading.code.length > 0
        },
      ),
      { numRuns: 5000 },
    )
  })

  it('reads back any decimal in any unit of its kind', () => {
    const anyKind = fc.constantFrom(...kinds.filter((kind) => kind !== 'count' && kind !== 'slope'))
    fc.assert(
      fc.property(anyKind, fc.nat(), fc.double({ min: -1e6, max: 1e6, noNaN: true }), (kind, pick, amount) => {
        const unit = unitsOf[kind][pick % unitsOf[kind].length] ?? inputUnit.us[kind]
        const reading = parseQuantity(unit === '1' ? `${amount}` : `${amount} ${unit}`, kind, unit)
        if (!reading.ok) expect.fail(`${amount} ${unit}: ${reading.code}`)
        close(fromSI(reading.value, unit), amount, { abs: 1e-300 + 1e-14 * Math.abs(fromSI(0, unit)), rel: 1e-14 })
      }),
      { numRuns: 2000 },
    )
  })
})
