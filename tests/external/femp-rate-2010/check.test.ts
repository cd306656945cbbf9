import { describe, expect, it } from 'vitest'
import { realRate, workedRealRate } from '../../../src/core/engineering/life/presentValue.ts'
import { realRates } from '../../../src/core/engineering/tables/costDefaults.ts'
import { close } from '../../close.ts'
import { published, readCases, si } from '../cases.ts'

describe('real rate', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const inputs = { nominal: si(row, 'nominal_percent', '%'), inflation: si(row, 'inflation_percent', '%') }
    // Nominal and inflation are rounded to a tenth each: with both as printed the real rate is 3.07 %.
    published(realRate(inputs), row, '=real_percent', '%', 0.05)
    expect(workedRealRate(inputs).value).toBe(realRate(inputs))
    expect(realRates.start.printed).toBe(3)
  })
  it('undoes itself', () => close(1 + realRate({ nominal: 1.03 * 1.02 - 1, inflation: 0.02 }), 1.03, { abs: 0, rel: 1e-12 }))
})
