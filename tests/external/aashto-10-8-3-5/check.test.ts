import { describe, expect, it } from 'vitest'
import { alphaConstant, clayAdhesionLength, clayTopExclusion, workedClayAdhesion } from '../../../src/core/engineering/soil/alphaClay.ts'
import { atmosphere } from '../../../src/core/engineering/soil/betaRational.ts'
import { allowableUplift } from '../../../src/core/engineering/soil/upliftFactor.ts'
import type { Metres, Newtons, Pascals } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('adhesion in clay with its exclusions', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const length = clayAdhesionLength({
      top: 0 as Metres,
      bottom: si(row, 'bottom_ft', 'ft'),
      topExclusion: si(row, 'top_excluded_ft', 'ft'),
      diameter: si(row, 'B_ft', 'ft'),
    })
    published(length, row, '=L_ft', 'ft')
    const strength = at<Pascals>(1000, 'psf')
    const alpha = alphaConstant({ strength, atmosphere: atmosphere.value }) ?? Number.NaN
    const ultimate = workedClayAdhesion({ alpha, strength, perimeter: (Math.PI * at<number>(24, 'in')) as Metres, length }).value as Newtons
    // 10,370 is 10,367 rounded to tens.
    published(ultimate, row, '=ult_lb', 'lb', row.id === 'W4.4' ? 4.5 : 0)
    published(allowableUplift({ ultimate, factor: 2 }), row, '=half_lb', 'lb')
    published(allowableUplift({ ultimate, factor: 3 }), row, '=third_lb', 'lb')
  })
  it('the constant form bends at 1.5 and ends at 2.5 atmospheres', () => {
    const alpha = (ratio: number) => alphaConstant({ strength: (ratio * atmosphere.value) as Pascals, atmosphere: atmosphere.value })
    expect(alpha(1.5)).toBe(0.55)
    close(alpha(2.5) ?? Number.NaN, 0.45, { abs: 1e-12, rel: 0 })
    expect(alpha(2.6)).toBeNull()
    close(clayTopExclusion.value, at(5, 'ft'), { abs: 1e-12, rel: 0 })
  })
})
