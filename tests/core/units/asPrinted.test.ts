import { describe, expect, it } from 'vitest'
import { togetherAsPrinted } from '../../../src/core/units/asPrinted.ts'
import { toSI } from '../../../src/core/units/factors.ts'
import { unitsFor } from '../../../src/core/units/reader.ts'

describe('a figure, its limit and their difference', () => {
  it('stand in one fraction: 48 in less 47 3/16 is 13/16, and never 47 1/4', () => {
    const { say } = unitsFor('us')
    const [value, limit] = [toSI(47.1875, 'in'), toSI(48, 'in')]
    const { options, difference } = togetherAsPrinted({ value, limit, quantity: 'length' }, say)
    expect([say(value, 'length', options), say(limit, 'length', options), say(-difference, 'length')]).toEqual([
      '47 3/16 in',
      '48 in',
      '13/16 in',
    ])
  })

  it('is that of the printed ones, and one too small for their digits is told as it is', () => {
    const { say } = unitsFor('metric')
    const of = (value: number, limit: number) => togetherAsPrinted({ value, limit, quantity: 'length' }, say).difference
    expect(of(1.2249, 1.2051)).toBeCloseTo(0.01, 12)
    expect(of(1.2201, 1.2199)).toBeCloseTo(0.0002, 12)
    expect(of(1.2, 1.2)).toBe(0)
  })
})
