import { describe, it } from 'vitest'
import { moistureDeficit, pondingStart } from '../../../src/core/engineering/moisture/pondingStart.ts'
import { textures } from '../../../src/core/engineering/tables/infiltration.ts'
import type { Metres, MetresPerSecond } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

const silt = textures['silt-loam']
const deficit = moistureDeficit({ effectivePorosity: silt.effectivePorosity.value, saturation: 0.3 })
const soil = { conductivity: silt.conductivity.value, suction: at<Metres>(16.7, 'cm'), deficit }

describe('infiltration examples', () => {
  it('the soil has room for 0.340', () => close(deficit, 0.34, { abs: 0.0005, rel: 0 }))
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const rain = si<MetresPerSecond>(row, 'i_cm/h', 'cm/h')
    const start = pondingStart({ ...soil, rain }) ?? Number.NaN
    published(start, row, '=tp_h', 'h')
    published(rain * start, row, '=Fp_cm', 'cm')
  })
})
