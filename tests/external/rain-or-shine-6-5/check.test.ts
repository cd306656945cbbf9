import { describe, it } from 'vitest'
import { frontDepth, infiltrationRate, infiltrationTime } from '../../../src/core/engineering/moisture/greenAmpt.ts'
import { pondingStart } from '../../../src/core/engineering/moisture/steadyRain.ts'
import { type Metres, type MetresPerSecond, metres } from '../../../src/core/units/quantity.ts'
import { at, has, published, readCases, si } from '../cases.ts'

const deficit = 0.49 - 0.15
const none = Number.NaN

describe('infiltration problems', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const suction = metres(at<number>(17, 'cm') + si<number>(row, 'head_cm', 'cm'))
    const soil = { conductivity: si<MetresPerSecond>(row, 'K_cm/h', 'cm/h'), suction, deficit }
    if (has(row, 'front_cm')) {
      const infiltrated = metres(deficit * si<Metres>(row, 'front_cm', 'cm'))
      published(infiltrated, row, '=F_cm', 'cm')
      published(infiltrationRate({ ...soil, infiltrated }) ?? none, row, '=f_cm/h', 'cm/h')
      published(infiltrationTime({ ...soil, infiltrated }), row, '=t_h', 'h')
      return
    }
    const rain = si<MetresPerSecond>(row, 'i_cm/h', 'cm/h')
    const start = pondingStart({ ...soil, rain }) ?? none
    const infiltrated = metres(rain * start)
    published(start, row, '=t_h', 'h')
    published(infiltrated, row, '=F_cm', 'cm')
    published(frontDepth({ infiltrated, deficit }) ?? none, row, '=front_cm', 'cm')
  })
})
