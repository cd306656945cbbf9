import { describe, it } from 'vitest'
import { bromsDrained, bromsFactors, bromsUndrained, reducedFrictionAngle } from '../../../src/core/engineering/soil/broms.ts'
import type { Metres, NewtonMetres, Newtons, Pascals, UnitWeight } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, has, published, readCases, si } from '../cases.ts'

describe('Broms, factored', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const load = {
      force: si<Newtons>(row, 'Pu_lb', 'lb'),
      moment: si<NewtonMetres>(row, 'Mu_lb-ft', 'lb-ft'),
      width: si<Metres>(row, 'b_ft', 'ft'),
    }
    if (has(row, 'su_psf')) {
      const { f, g, depth } = bromsUndrained({ ...load, strength: (bromsFactors.strength * si(row, 'su_psf', 'psf')) as Pascals })
      published(f, row, '=f_ft', 'ft')
      published(g, row, '=g_ft', 'ft')
      published(depth, row, '=Z_ft', 'ft')
      return
    }
    const frictionAngle = reducedFrictionAngle({ frictionAngle: si(row, 'phi_deg', 'deg'), share: bromsFactors.strength })
    published(frictionAngle, row, '=phi_star_deg', 'deg')
    published(Math.tan(Math.PI / 4 + frictionAngle / 2) ** 2, row, '=Kp')
    const { depth, momentDepth, moment } = bromsDrained({ ...load, unitWeight: si(row, 'g_pcf', 'pcf'), frictionAngle })
    published(depth, row, '=Z_ft', 'ft')
    published(momentDepth, row, '=f0_ft', 'ft')
    // Printed to tens.
    published(moment, row, '=Mmax_lb-ft', 'lb-ft', 4.5)
  })
  it('the drained root satisfies its own equation on both branches', () => {
    for (const moment of [0, 10, 1e5]) {
      const width = 0.5 as Metres
      const { depth } = bromsDrained({
        force: 4000 as Newtons,
        moment: moment as NewtonMetres,
        width,
        unitWeight: 17_000 as UnitWeight,
        frictionAngle: at(25, 'deg'),
      })
      const kp = Math.tan(Math.PI / 4 + at<number>(12.5, 'deg')) ** 2
      close((17_000 * 0.5 * kp * depth ** 3) / 2, 4000 * depth + moment, { abs: 0, rel: 1e-12 })
    }
  })
})
