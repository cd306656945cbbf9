import { describe, it } from 'vitest'
import { infiltrated, infiltrationRate, moistureDeficit } from '../../../src/core/engineering/moisture/greenAmpt.ts'
import { philipInfiltrated } from '../../../src/core/engineering/moisture/philip.ts'
import { pondingStart, rainTaken } from '../../../src/core/engineering/moisture/steadyRain.ts'
import { textures } from '../../../src/core/engineering/tables/infiltration.ts'
import type { Metres, MetresPerSecond, Seconds } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, has, published, readCases, si } from '../cases.ts'

const silt = textures['silt-loam']
const deficit = moistureDeficit({ effectivePorosity: silt.effectivePorosity.value, saturation: 0.3 })
const soil = { conductivity: silt.conductivity.value, suction: at<Metres>(16.7, 'cm'), deficit }
const none = Number.NaN

describe('infiltration examples', () => {
  it('the soil has room for 0.340', () => close(deficit, 0.34, { abs: 0.0005, rel: 0 }))
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const rain = has(row, 'i_cm/h') ? si<MetresPerSecond>(row, 'i_cm/h', 'cm/h') : null
    if (has(row, 't_h')) {
      const time = si<Seconds>(row, 't_h', 'h')
      const depth = rain === null ? infiltrated({ ...soil, time }) : rainTaken({ ...soil, rain, time })
      published(depth, row, '=F_cm', 'cm')
      published(infiltrationRate({ ...soil, infiltrated: depth }) ?? none, row, '=f_cm/h', 'cm/h')
    }
    if (has(row, '=tp_h') && rain !== null) {
      const start = pondingStart({ ...soil, rain })
      published(start ?? none, row, '=tp_h', 'h')
      published(rainTaken({ ...soil, rain, time: start ?? at(0) }), row, '=Fp_cm', 'cm')
    }
  })
  it('4.3.1 with the table suction of 16.68 cm prints 1.81 to a digit and a half: 1.815', () => {
    const exact = { ...soil, suction: silt.suction.value }
    const rate = infiltrationRate({ ...exact, infiltrated: infiltrated({ ...exact, time: at(1, 'h') }) })
    close(rate ?? none, at(1.815, 'cm/h'), { abs: at(0.001, 'cm/h'), rel: 0 })
  })
  it.each(readCases(import.meta.url, 'philip.csv').map((row) => [row.id, row] as const))('%s, two-term form', (_, row) => {
    const sorptivity = 100 / 40 / 100 / Math.sqrt(at<number>(15, 'min'))
    const perRootHour = at<number>(1, 'cm') / Math.sqrt(at<number>(1, 'h'))
    published(sorptivity / perRootHour, row, '=S_cm/sqrt-h')
    published(philipInfiltrated({ sorptivity, conductivity: at(0.4, 'cm/h'), time: at(30, 'min') }), row, '=F_cm', 'cm')
  })
})
