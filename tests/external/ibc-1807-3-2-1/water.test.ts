import { describe, expect, it } from 'vitest'
import { lateralBelowWater, workedLateralBelowWater } from '../../../src/core/engineering/soil/lateralBelowWater.ts'
import { close } from '../../close.ts'
import { at } from '../cases.ts'

describe('lateral bearing of ground that stands in water, a careful reading made here', () => {
  const gradient = at<Parameters<typeof lateralBelowWater>[0]['gradient']>(150, 'psf/ft')
  const stress = (psf: number) => at<Parameters<typeof lateralBelowWater>[0]['moist']>(psf, 'psf')
  it('all wet: 115 pcf moist, 62.6 buoyant, so 0.544 of the table by hand', () => {
    close(lateralBelowWater({ gradient, effective: stress(6 * 62.6), moist: stress(6 * 115) }), gradient * (62.6 / 115), {
      abs: 0,
      rel: 1e-12,
    })
  })
  it('dry ground keeps the table, and nothing gains', () => {
    expect(lateralBelowWater({ gradient, effective: stress(690), moist: stress(690) })).toBe(gradient)
    expect(workedLateralBelowWater({ gradient, effective: stress(700), moist: stress(690) }).value).toBe(gradient)
  })
})
