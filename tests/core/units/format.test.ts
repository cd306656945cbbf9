import { describe, expect, it } from 'vitest'
import { type FormatOptions, formatQuantity, formatText } from '../../../src/core/units/format.ts'
import { toSI, type UnitId, unitsOf } from '../../../src/core/units/factors.ts'
import type { QuantityKind, UnitSystem } from '../../../src/core/units/quantity.ts'

const written: readonly (readonly [number, UnitId, QuantityKind, UnitSystem, FormatOptions, string])[] = [
  // US lengths on screen: inches to 1/8, to 1/16 under an inch; feet and inches when asked for.
  [18, 'in', 'length', 'us', {}, '18 in'],
  [1.5, 'in', 'length', 'us', {}, '1 1/2 in'],
  [1.52, 'in', 'length', 'us', {}, '1 1/2 in'],
  [47.95, 'in', 'length', 'us', {}, '48 in'],
  [48, 'in', 'length', 'us', {}, '48 in'],
  [0.1875, 'in', 'length', 'us', {}, '3/16 in'],
  [5.1875, 'in', 'length', 'us', { fraction: 16 }, '5 3/16 in'],
  [0.01, 'in', 'length', 'us', {}, '0.01 in'],
  [0, 'in', 'length', 'us', {}, '0 in'],
  [-2, 'in', 'length', 'us', {}, '-2 in'],
  [-0.001, 'm', 'length', 'metric', {}, '-1 mm'],
  [457, 'mm', 'length', 'us', {}, '18 in'],
  [18, 'in', 'length', 'us', { feetInches: true }, '1\'-6"'],
  [11.99, 'in', 'length', 'us', { feetInches: true }, '1\'-0"'],
  [11, 'in', 'length', 'us', { feetInches: true }, '11 in'],
  [23.97, 'in', 'length', 'us', { feetInches: true }, '2\'-0"'],
  [-18, 'in', 'length', 'us', { feetInches: true }, '-1\'-6"'],
  // On the sheet.
  [36, 'in', 'length', 'us', { style: 'sheet' }, '3\'-0"'],
  [126, 'in', 'length', 'us', { style: 'sheet' }, '10\'-6"'],
  [40.5, 'in', 'length', 'us', { style: 'sheet' }, '3\'-4 1/2"'],
  // Zero inches are kept before a fraction too.
  [48.875, 'in', 'length', 'us', { style: 'sheet' }, '4\'-0 7/8"'],
  [18, 'in', 'length', 'us', { style: 'sheet' }, '18"'],
  [18, 'in', 'length', 'us', { style: 'sheet', feetInches: true }, '1\'-6"'],
  [1.5, 'in', 'length', 'us', { style: 'sheet' }, '1 1/2"'],
  [0.01, 'in', 'length', 'us', { style: 'sheet' }, '0.01"'],
  [1219.2, 'mm', 'length', 'metric', { style: 'sheet' }, '1219'],
  [12192, 'mm', 'length', 'metric', { style: 'sheet' }, '12\u202f192'],
  [4.76, 'mm', 'length', 'metric', { style: 'sheet' }, '4.8'],
  // Metric lengths on screen.
  [457.2, 'mm', 'length', 'metric', {}, '457 mm'],
  [4.7625, 'mm', 'length', 'metric', {}, '4.8 mm'],
  [999.6, 'mm', 'length', 'metric', {}, '1.00 m'],
  [1219.2, 'mm', 'length', 'metric', {}, '1.22 m'],
  [48, 'in', 'length', 'metric', { unit: 'cm' }, '122 cm'],
  // Other kinds: digits that mean something.
  [2566.3, 'lb', 'weight', 'us', {}, '2,566 lb'],
  [12345.6, 'lb', 'weight', 'us', {}, '12,350 lb'],
  [145.04, 'lb', 'weight', 'us', {}, '145 lb'],
  [999.7, 'lb', 'weight', 'us', {}, '1,000 lb'],
  [2566.3, 'lb', 'weight', 'metric', {}, '1164 kg'],
  [12345.6, 'kg', 'weight', 'metric', {}, '12\u202f350 kg'],
  [1816.6, 'lb', 'force', 'us', {}, '1,817 lb'],
  [1816.6, 'lb', 'force', 'metric', {}, '8.08 kN'],
  [1816.6, 'lb', 'force', 'us', { unit: 'kip' }, '1.82 kip'],
  [3500, 'psi', 'strength', 'us', {}, '3,500 psi'],
  [3500, 'psi', 'strength', 'metric', {}, '24.1 MPa'],
  [2000, 'psf', 'pressure', 'us', {}, '2,000 psf'],
  [2000, 'psf', 'pressure', 'metric', {}, '95.8 kPa'],
  [145, 'pcf', 'unitWeight', 'us', {}, '145 pcf'],
  [145, 'pcf', 'unitWeight', 'metric', {}, '22.8 kN/m³'],
  [150, 'psf/ft', 'gradient', 'us', {}, '150 psf/ft'],
  [150, 'psf/ft', 'gradient', 'metric', {}, '23.6 kPa/m'],
  [3.15, 'ft2', 'area', 'us', {}, '3.15 ft²'],
  [3.15, 'm2', 'area', 'metric', {}, '3.15 m²'],
  [8.727, 'ft3', 'volume', 'us', {}, '8.73 ft³'],
  [18.85, 'ft3', 'volume', 'us', {}, '18.9 ft³'],
  [17.69, 'ft3', 'volume', 'us', { unit: 'yd3' }, '0.66 yd³'],
  [9.87, 'in3', 'volume', 'us', {}, '9.87 in³'],
  [9.87, 'in3', 'volume', 'metric', {}, '0.16 L'],
  [9.87, 'in3', 'volume', 'us', { unit: 'ft3' }, '0.00571 ft³'],
  [0.03, 'yd3', 'volume', 'us', { unit: 'yd3' }, '0.0300 yd³'],
  [8.727, 'ft3', 'volume', 'metric', {}, '0.247 m³'],
  [30, 'deg', 'angle', 'us', {}, '30°'],
  [8, '%', 'slope', 'us', {}, '8%'],
  [1 / 3, '1', 'slope', 'us', {}, '33.3%'],
  [10, '%', 'ratio', 'us', {}, '10%'],
  [6, '1', 'count', 'us', {}, '6'],
  [1234, '1', 'count', 'us', {}, '1,234'],
  [1, 'h', 'duration', 'us', {}, '1.00 h'],
  [7, 'd', 'age', 'us', {}, '7 d'],
  [28.8, 'yr', 'life', 'metric', {}, '28.8 yr'],
  [40, 'degF', 'temperature', 'us', {}, '40 °F'],
  [40, 'degF', 'temperature', 'metric', {}, '4 °C'],
  [50, 'mm/h', 'rain', 'metric', {}, '50.0 mm/h'],
  [50, 'mm/h', 'rain', 'us', {}, '1.97 in/h'],
  [8.2e-12, 'm/s', 'conductivity', 'us', {}, '8 × 10⁻¹² m/s'],
  [0.19, 'L/s', 'flow', 'us', {}, '3.01 gal/min'],
  [1123.17, '1', 'money', 'us', {}, '1,123'],
]

describe('writing a quantity', () => {
  it.each(written)('%d %s as %s, %s %j: %s', (amount, unit, kind, system, options, text) => {
    const slope = kind === 'slope' && unit === '1'
    expect(formatText(slope ? amount : toSI(amount, unit), kind, system, options)).toBe(text)
  })

  it('parts the number from its unit', () => {
    expect(formatQuantity(0.4572, 'length', 'us')).toEqual({ text: '18', unit: 'in' })
    expect(formatQuantity(0.9144, 'length', 'us', { style: 'sheet' })).toEqual({ text: '3\'-0"', unit: '' })
  })

  it.each(['us', 'metric'] as const)('writes zero and minus zero alike, without a sign (%s)', (system) => {
    for (const kind of Object.keys(unitsOf) as QuantityKind[]) {
      expect(formatText(-0, kind, system)).toBe(formatText(0, kind, system))
      expect(formatText(0, kind, system)).toMatch(kind === 'temperature' && system === 'us' ? /^32 °F$/ : /^0/)
      expect(formatText(-1e-30, kind, system)).not.toMatch(/NaN|Infinity/)
    }
  })

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('throws on %d: no result of ours is that', (value) => {
    expect(() => formatText(value, 'length', 'us')).toThrow(RangeError)
    expect(() => formatText(value, 'weight', 'metric')).toThrow(RangeError)
  })

  it('reduces every sixteenth', () => {
    const sixteenths = Array.from({ length: 16 }, (_, i) => formatText(toSI(i / 16, 'in'), 'length', 'us'))
    expect(sixteenths.map((text) => text.replace(' in', ''))).toEqual([
      '0',
      '1/16',
      '1/8',
      '3/16',
      '1/4',
      '5/16',
      '3/8',
      '7/16',
      '1/2',
      '9/16',
      '5/8',
      '11/16',
      '3/4',
      '13/16',
      '7/8',
      '15/16',
    ])
  })
})
