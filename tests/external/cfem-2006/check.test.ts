import { describe, expect, it } from 'vitest'
import { adfreezeBond, adfreezeForce, workedAdfreezeForce } from '../../../src/core/engineering/soil/adfreeze.ts'
import type { Metres } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

const bond = adfreezeBond['fine-to-concrete-or-wood'].value

describe('adfreeze on a pier', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const perimeter = (Math.PI * si(row, 'D_in', 'in')) as Metres
    // The table was made with 1 kPa = 20.8854 psf; the exact factor is 2e-6 larger, which turns three last digits.
    for (const inches of [12, 24, 36, 42, 48, 60]) {
      const force = adfreezeForce({ bond, perimeter, frozen: at(inches, 'in') })
      published(force, row, `=${inches}_lb`, 'lb', (2e-6 * force) / at<number>(1, 'lb'))
    }
  })
  it.each(readCases(import.meta.url, 'bond.csv').map((row) => [row.id, row] as const))('bond %s', (_, row) => {
    const value = adfreezeBond[row.case as keyof typeof adfreezeBond].value
    published(value, row, '=kPa', 'kPa')
    published(value, row, '=psf', 'psf')
    published(value, row, '=psi', 'psi')
  })
  it('W6.1: against weight and friction below frost, ratio 0.22; a bare 6x6 post 8,711 lb', () => {
    const heave = adfreezeForce({ bond, perimeter: (Math.PI * at<number>(24, 'in')) as Metres, frozen: at(42, 'in') })
    close(heave, at(29_850, 'lb'), { abs: at(5, 'lb'), rel: 0 })
    const weight = at<number>(Math.PI * 6 * 145, 'lb')
    close(weight, at(2733, 'lb'), { abs: at(0.5, 'lb'), rel: 0 })
    const friction = at<number>(250, 'psf') * Math.PI * at<number>(2, 'ft') * at<number>(2.5, 'ft')
    close(friction, at(3927, 'lb'), { abs: at(0.5, 'lb'), rel: 0 })
    close((weight + friction) / heave, 0.22, { abs: 0.005, rel: 0 })
    close(adfreezeForce({ bond, perimeter: at(22, 'in'), frozen: at(42, 'in') }), at(8711, 'lb'), { abs: at(0.5, 'lb'), rel: 0 })
    expect(workedAdfreezeForce({ bond, perimeter: at(22, 'in'), frozen: at(42, 'in') }).standing).toBe('secondary')
  })
})
