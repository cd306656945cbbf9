import { describe, expect, it } from 'vitest'
import { digits, halfUnit, parse, published } from './cases.ts'

describe('reading printed cases', () => {
  it.each([
    ['6.2017', 0.00005],
    ['1,5'.replace(',', '.'), 0.05],
    ['1200', 0.5],
    ['-0.30', 0.005],
    ['1.660e5', 50],
  ])('half a unit of %s is %s', (text, half) => {
    expect(halfUnit(text)).toBeCloseTo(half, 12)
  })

  it('reads rows by column and skips comments', () => {
    const [row] = parse('# a note\nid,a_ft,=b_lb\n\nX1,2,3.0\n')
    expect(row).toEqual({ id: 'X1', a_ft: '2', '=b_lb': '3.0' })
    expect(() => digits({ id: 'X1', a: '' }, 'a')).toThrow('X1')
  })

  it('holds a value to half a unit of the last digit, and can fail', () => {
    const row = { id: 'X', '=v': '3.0' }
    published(3.05, row, '=v')
    expect(() => published(3.0501, row, '=v')).toThrow()
    expect(() => published(Number.NaN, row, '=v')).toThrow()
  })
})
