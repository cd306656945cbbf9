import { describe, expect, it } from 'vitest'
import { strengthFit, strengthForWaterCement } from '../../../src/core/engineering/concrete/waterCement.ts'
import { close } from '../../close.ts'
import { at, digits, has, published, readCases } from '../cases.ts'

describe('strength for a water-cement ratio', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s psi', (_, row) => {
    const ratio = digits(row, 'plain')
    published(strengthForWaterCement({ ratio, airEntrained: false }) ?? Number.NaN, row, '=psi', 'psi')
    // The fit's constants are printed to four digits, which moves the result by up to 2 psi.
    published(strengthFit({ ratio, airEntrained: false }), row, '=fit_psi', 'psi', 2)
    close(strengthFit({ ratio, airEntrained: false }), at(digits(row, '=psi'), 'psi'), { abs: 0, rel: 0.031 })
    if (!has(row, 'air')) return
    published(strengthForWaterCement({ ratio: digits(row, 'air'), airEntrained: true }) ?? Number.NaN, row, '=psi', 'psi')
    published(strengthFit({ ratio: digits(row, 'air'), airEntrained: true }), row, '=fit-air_psi', 'psi', 2)
  })
  it('has no value outside the table', () => {
    expect(strengthForWaterCement({ ratio: 0.4, airEntrained: false })).toBeNull()
    expect(strengthForWaterCement({ ratio: 0.75, airEntrained: true })).toBeNull()
  })
})
