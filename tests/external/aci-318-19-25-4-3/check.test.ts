import { describe, it } from 'vitest'
import {
  developmentHead,
  developmentHook,
  workedDevelopmentHead,
  workedDevelopmentHook,
} from '../../../src/core/engineering/concrete/development.ts'
import { barGrades, bars } from '../../../src/core/engineering/tables/bars.ts'
import type { BarSize } from '../../../src/core/model/spec.ts'
import type { Pascals } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

const plain = { yield: barGrades['60'].yield.value, epoxy: 1, confining: 1, location: 1 }

describe('hooks and heads', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('hook %s', (_, row) => {
    const bar = { ...plain, diameter: bars[row.bar as BarSize].diameter.value, strength: si<Pascals>(row, 'fc_psi', 'psi') }
    const { equation, length } = developmentHook(bar)
    published(equation, row, '=equation_in', 'in')
    published(length, row, '=used_in', 'in')
    const side = developmentHook({ ...bar, location: 1.25 })
    published(side.equation, row, '=side_in', 'in')
    published(side.length, row, '=side-used_in', 'in')
    close(workedDevelopmentHook(bar).value, length, { abs: 0, rel: 0 })
  })
  const four = { ...plain, diameter: bars['#4'].diameter.value, strength: at<Pascals>(3000, 'psi') }
  it('No. 4, 3000: both factors at their worst 11.27 in; headed 4.13, used 6', () => {
    close(developmentHook({ ...four, confining: 1.6, location: 1.25 }).equation, at(11.27, 'in'), { abs: at(0.005, 'in'), rel: 0 })
    close(developmentHead(four).equation, at(4.13, 'in'), { abs: at(0.005, 'in'), rel: 0 })
    close(workedDevelopmentHead(four).value, at(6, 'in'), { abs: 1e-12, rel: 0 })
  })
  it('the 2014 form gave 10.95 in for contrast', () => {
    close((60_000 / (50 * Math.sqrt(3000))) * 0.5, 10.95, { abs: 0.005, rel: 0 })
  })
})
