import { describe, it } from 'vitest'
import { betaByDepth, betaCapDepth } from '../../../src/core/engineering/soil/betaByDepth.ts'
import { sideFrictionByBeta } from '../../../src/core/engineering/soil/sideFriction.ts'
import type { Metres, UnitWeight } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('depth-based beta', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    published(betaByDepth({ depth: si(row, 'z_ft', 'ft'), blows: 50 }), row, '=beta')
  })
  it('0.245 goes with metres: both printed forms agree to their digits', () => {
    for (const z of [2, 4, 9, 20])
      close(betaByDepth({ depth: z as Metres, blows: 50 }), Math.max(0.25, 1.5 - 0.245 * Math.sqrt(z)), { abs: 0.003, rel: 0 })
  })
  it('low blow counts take it down in proportion, and it never falls below 0.25 for high ones', () => {
    close(betaByDepth({ depth: at(3, 'ft'), blows: 5 }), 0.4, { abs: 1e-12, rel: 0 })
    close(betaByDepth({ depth: at(300, 'ft'), blows: 50 }), 0.25, { abs: 1e-12, rel: 0 })
  })
  it('W4.2 (b): 24 in x 6 ft, 115 pcf: 15,540 lb; the mid-depth shortcut gives 15,610', () => {
    const perimeter = (Math.PI * at<number>(24, 'in')) as Metres
    const layers = [{ thickness: 99 as Metres, moist: at<UnitWeight>(115, 'pcf'), saturated: at<UnitWeight>(115, 'pcf') }]
    const total = sideFrictionByBeta({
      beta: (depth) => betaByDepth({ depth, blows: 15 }),
      layers,
      waterTable: null,
      water: at(62.4, 'pcf'),
      perimeter,
      from: 0 as Metres,
      to: at(6, 'ft'),
      breaks: [betaCapDepth],
    })
    close(total, at(15_540, 'lb'), { abs: at(5, 'lb'), rel: 0 })
    close(1.2 * at<number>(345, 'psf') * perimeter * at<number>(6, 'ft'), at(15_610, 'lb'), { abs: at(5, 'lb'), rel: 0 })
  })
})
