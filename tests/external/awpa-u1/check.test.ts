import { describe, expect, it } from 'vitest'
import { treatmentClass } from '../../../src/core/engineering/detail/treatmentClass.ts'
import { retentions, useClasses } from '../../../src/core/engineering/tables/useClasses.ts'
import type { UseClass } from '../../../src/core/model/spec.ts'
import { close } from '../../close.ts'
import { at, has, published, readCases } from '../cases.ts'

describe('least use class', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const found = treatmentClass({
      useClass: row.class as UseClass,
      contact: row.contact as 'ground',
      buildingPost: row.building === 'yes',
    })
    expect([found.least, found.reached]).toEqual([row.least, row.reached === 'yes'])
  })
  it.each(readCases(import.meta.url, 'retentions.csv').map((row) => [row.id ?? '', row] as const))('retention of %s', (id, row) => {
    const columns = ['=UC3B_pcf', '=UC4A_pcf', '=UC4B_pcf'] as const
    columns.forEach((column, i) => {
      const value = retentions[id]?.[i] ?? null
      expect(value !== null).toBe(has(row, column))
      if (value !== null) published(value, row, column)
    })
  })
  it('CA-B in ground contact is 3.36 kg/m3', () => {
    close(at<number>(retentions['CA-B']?.[1] ?? Number.NaN, 'pcf') / 9.80665, 3.36, { abs: 0.005, rel: 0 })
  })
  it('ranks rise with severity', () => expect(Object.values(useClasses).map((row) => row.rank)).toEqual([0, 1, 2, 3, 4]))
})
