import { describe, it } from 'vitest'
import { pondingStart } from '../../../src/core/engineering/moisture/pondingStart.ts'
import type { Metres, MetresPerSecond } from '../../../src/core/units/quantity.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('infiltration problems', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const rain = si<MetresPerSecond>(row, 'i_cm/h', 'cm/h')
    const soil = { conductivity: si<MetresPerSecond>(row, 'K_cm/h', 'cm/h'), suction: at<Metres>(17, 'cm'), deficit: 0.49 - 0.15 }
    const start = pondingStart({ ...soil, rain }) ?? Number.NaN
    published(start, row, '=t_h', 'h')
    published(rain * start, row, '=F_cm', 'cm')
  })
})
