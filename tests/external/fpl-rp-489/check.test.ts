import { describe, expect, it } from 'vitest'
import { lumberShrinkage, workedLumberShrinkage } from './lumberShrinkage.ts'
import { close } from '../../close.ts'
import { published, readCases, si } from '../cases.ts'

describe('shrinkage of lumber', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const moisture = si(row, 'M_percent', '%')
    published(lumberShrinkage({ moisture, direction: 'width' }) ?? Number.NaN, row, '=width', '%')
    published(lumberShrinkage({ moisture, direction: 'thickness' }) ?? Number.NaN, row, '=thickness', '%')
  })
  it('gives back the factors of the lumber standard to a hundredth of a percent', () => {
    close(lumberShrinkage({ moisture: 0.15, direction: 'width' }) ?? Number.NaN, 0.028, { abs: 1e-4, rel: 0 })
    close(lumberShrinkage({ moisture: 0.15, direction: 'thickness' }) ?? Number.NaN, 0.0235, { abs: 1e-4, rel: 0 })
  })
  it('has lost nothing while green, and has no value where the equations do not hold', () => {
    for (const direction of ['width', 'thickness'] as const) {
      expect(lumberShrinkage({ moisture: 0.28, direction })).toBe(0)
      expect(lumberShrinkage({ moisture: 0.6, direction })).toBe(0)
      expect(lumberShrinkage({ moisture: 0.2, direction })).toBeNull()
      expect(workedLumberShrinkage({ moisture: 0.07, direction })).toBeNull()
    }
    expect(workedLumberShrinkage({ moisture: 0.15, direction: 'width' })?.standing).toBe('read')
  })
})
