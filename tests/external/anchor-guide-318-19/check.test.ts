import { describe, expect, it } from 'vitest'
import { basicBreakout, breakoutEdgeFactor, concreteBreakout, deepBreakout } from '../../../src/core/engineering/concrete/breakout.ts'
import type { Metres, Pascals } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, digits, has, published, readCases, si } from '../cases.ts'

describe('breakout, worked pages', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const [strength, embedment] = [si<Pascals>(row, 'fc_psi', 'psi'), si<Metres>(row, 'hef_in', 'in')]
    const basic = basicBreakout({ coefficient: digits(row, 'kc'), strength, embedment })
    published(basic, row, '=Nb_lb', 'lb')
    published(basic, row, '=published_lb', 'lb')
    if (has(row, 'ANc_in2')) {
      const group = concreteBreakout({
        basic,
        projected: si(row, 'ANc_in2', 'in2'),
        full: si(row, 'ANco_in2', 'in2'),
        edgeFactor: digits(row, 'psi_ed'),
      })
      // The guide multiplies rounded ratios (5.149, 2.333): up to 2.2 lb.
      published(group, row, '=Ncb_published_lb', 'lb', 2)
      published(group, row, '=Ncb_lb', 'lb', 0.05)
    }
    published(deepBreakout({ strength, embedment }) ?? Number.NaN, row, '=deep_lb', 'lb')
  })
  it('the deep form is for 11 to 25 in, and the edge factor runs from 0.7 to 1', () => {
    expect([
      deepBreakout({ strength: at(3000, 'psi'), embedment: at(10, 'in') }),
      deepBreakout({ strength: at(3000, 'psi'), embedment: at(26, 'in') }),
    ]).toEqual([null, null])
    close(breakoutEdgeFactor({ edge: 0 as Metres, embedment: 1 as Metres }), 0.7, { abs: 1e-12, rel: 0 })
    close(breakoutEdgeFactor({ edge: 1.5 as Metres, embedment: 1 as Metres }), 1, { abs: 1e-12, rel: 0 })
  })
})
