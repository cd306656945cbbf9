import { describe, expect, it } from 'vitest'
import { boxText, restingText } from '../../src/view/panels/inputs/useEntry.ts'

const foot = 0.3048

describe('[P1] what stands in a box', () => {
  it.each([
    [24 * foot, 'length', 'us', 'ft', '24 ft'],
    [24.5 * foot, 'length', 'us', 'ft', '24.5 ft'],
    [(24 + 1 / 3) * foot, 'length', 'us', 'ft', `24'-4"`],
    [7.3, 'length', 'metric', 'm', '7.3 m'],
    [12_000 * foot, 'length', 'us', 'ft', '12000 ft'],
    [1.15, 'ratio', 'us', '1', '1.15'],
    [18 * 0.0254, 'length', 'us', undefined, '18 in'],
    [0.457, 'length', 'metric', undefined, '457 mm'],
  ] as const)('%d %s in %s, told in %s: %s', (value, quantity, system, unit, text) => {
    expect(boxText(value, quantity, system, unit)).toBe(text)
  })

  it('keeps every digit of a value that no short text reads back as', () => {
    const odd = 7.123456789
    expect(boxText(odd, 'length', 'us', 'ft')).toMatch(/^\d+\.\d{6,} in$/)
  })

  it.each([
    ['49.212598425 in', '≈ 49.21 in'],
    ['0.0123456 in', '≈ 0.01235 in'],
    ['12345.67891 lb', '≈ 12345.7 lb'],
    ['18 in', '18 in'],
    ['24.5 ft', '24.5 ft'],
    [`24'-4"`, `24'-4"`],
    ['', ''],
  ])('at rest %s is %s', (settled, resting) => expect(restingText(settled)).toBe(resting))
})
