import { describe, expect, it } from 'vitest'
import { species } from '../../../src/core/engineering/tables/species.ts'
import { loadDuration } from '../../../src/core/engineering/wood/connectionFactors.ts'
import { groupTearOut, rowTearOut, workedRowTearOut } from '../../../src/core/engineering/wood/tearOut.ts'
import type { Metres, Pascals } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, digits, published, readCases, si } from '../cases.ts'

describe('row tear-out below a bar or bolts', () => {
  const shear = (species['southern-pine'].timber['No.2'].shear.value * loadDuration.wind.value) as Pascals
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const inputs = { shear, thickness: at<Metres>(5.5, 'in'), critical: si<Metres>(row, 's_crit_in', 'in'), count: digits(row, 'n') }
    published(rowTearOut(inputs), row, '=RT_lb', 'lb')
    expect(workedRowTearOut(inputs).standing).toBe('from memory')
  })
  it('group tear-out is half of the outer rows and the tension between them', () => {
    close(
      groupTearOut({ firstRow: at(5808, 'lb'), lastRow: at(5808, 'lb'), tension: at(880, 'psi'), area: at(10, 'in2') }),
      at(5808 + 8800, 'lb'),
      { abs: 0, rel: 1e-12 },
    )
  })
})
