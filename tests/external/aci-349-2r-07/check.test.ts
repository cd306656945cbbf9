import { describe, it } from 'vitest'
import {
  anchorSteel,
  basicBreakout,
  breakoutCoefficient,
  breakoutEdgeFactor,
  headPullout,
} from '../../../src/core/engineering/concrete/breakout.ts'
import type { Pascals, SquareMetres } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases } from '../cases.ts'

describe('Example A1', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const strength = at<Pascals>(4000, 'psi')
    const basic = basicBreakout({ coefficient: breakoutCoefficient.castIn.value, strength, embedment: at(4.69, 'in') })
    published(basic, row, '=Nb_kip', 'kip')
    published(basic, row, '=Nb_lb', 'lb')
    const pullout = headPullout({ headArea: at(0.59, 'in2'), strength })
    published(pullout, row, '=Npn_kip', 'kip')
    published(pullout, row, '=Npn_lb', 'lb')
    const area = ((Math.PI / 4) * at<number>(0.5, 'in') ** 2) as SquareMetres
    // 0.19635 in2 x 65 ksi.
    published(anchorSteel({ area, tensile: at(65, 'ksi') }), row, '=Nsa_kip', 'kip')
    published(anchorSteel({ area, tensile: at(65, 'ksi') }), row, '=Nsa_lb', 'lb')
    close(breakoutEdgeFactor({ edge: at(12, 'in'), embedment: at(4.69, 'in') }), 1, { abs: 0, rel: 0 })
  })
})
