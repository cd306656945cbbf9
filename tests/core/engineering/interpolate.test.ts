import { describe, expect, it } from 'vitest'
import { interpolate } from '../../../src/core/engineering/interpolate.ts'

const points = [
  [1, 10],
  [2, 20],
  [4, 0],
] as const

describe('interpolation in a table', () => {
  it.each([
    [1, 10],
    [1.5, 15],
    [2, 20],
    [3, 10],
    [4, 0],
  ])('at %s reads %s', (at, value) => {
    expect(interpolate(points, at)).toBeCloseTo(value, 12)
  })
  it.each([0.999, 4.001, Number.NaN])('has no value at %s', (at) => {
    expect(interpolate(points, at)).toBeNull()
  })
  it('an empty table has no value', () => expect(interpolate([], 1)).toBeNull())
})
