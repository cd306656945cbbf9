import { describe, expect, it } from 'vitest'
import fc from 'fast-check'
import { editText } from '../../../src/core/units/editText.ts'
import { inputUnit, toSI, unitsOf } from '../../../src/core/units/factors.ts'
import { longestText, parseQuantity } from '../../../src/core/units/parse.ts'
import type { QuantityKind, UnitSystem } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'

const systems = ['us', 'metric'] as const
const kinds = (Object.keys(unitsOf) as QuantityKind[]).filter((kind) => kind !== 'count')

describe('text to edit', () => {
  it.each<readonly [number, QuantityKind, UnitSystem, string]>([
    [toSI(18, 'in'), 'length', 'us', '18 in'],
    [toSI(1.5, 'in'), 'length', 'us', '1.5 in'],
    [toSI(18, 'in'), 'length', 'metric', '457.2 mm'],
    [0.457, 'length', 'metric', '457 mm'],
    [toSI(3500, 'psi'), 'strength', 'us', '3500 psi'],
    [toSI(8, '%'), 'slope', 'us', '8 %'],
    [toSI(10, '%'), 'ratio', 'metric', '10 %'],
    [toSI(270, 'deg'), 'angle', 'us', '270 deg'],
    [3, 'count', 'us', '3'],
    [0, 'length', 'us', '0 in'],
    [-0, 'length', 'us', '0 in'],
    [toSI(-2, 'in'), 'length', 'us', '-2 in'],
    [1e-12, 'length', 'metric', '1e-9 mm'],
  ])('%d %s in %s: %s', (value, kind, system, text) => expect(editText(value, kind, system)).toBe(text))

  it('reads back as the value within 1e-12, for any value, kind and system', () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e12, max: 1e12 }),
        fc.constantFrom(...kinds),
        fc.constantFrom(...systems),
        (value, kind, system) => {
          const text = editText(value, kind, system)
          expect(text.length).toBeLessThanOrEqual(longestText)
          const reading = parseQuantity(text, kind)
          if (!reading.ok) expect.fail(`${text}: ${reading.code}`)
          close(reading.value, value, { abs: 1e-300 + 1e-12 * Math.abs(toSI(0, inputUnit[system][kind])), rel: 1e-12 })
        },
      ),
      { numRuns: 5000 },
    )
  })

  it('does not drift when the system is switched a hundred times', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, min: 1e-4, max: 100 }), (start) => {
        let value = start
        for (let turn = 0; turn < 100; turn++) {
          const reading = parseQuantity(editText(value, 'length', systems[turn % 2] ?? 'us'), 'length')
          if (!reading.ok) expect.fail(reading.code)
          value = reading.value
        }
        close(value, start, { abs: 0, rel: 2.01e-12 })
      }),
      { numRuns: 200 },
    )
  })

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('throws on %d', (value) =>
    expect(() => editText(value, 'length', 'us')).toThrow(RangeError),
  )
})
