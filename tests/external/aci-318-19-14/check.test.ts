import { describe, expect, it } from 'vitest'
import { plainReduction, plainTension, workedPlainTension } from '../../../src/core/engineering/concrete/plainTension.ts'
import type { Pascals, SquareMetres } from '../../../src/core/units/quantity.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('plain concrete in tension, screening alone', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s in', (_, row) => {
    const inputs = {
      strength: at<Pascals>(2500, 'psi'),
      area: ((Math.PI / 4) * si(row, 'D_in', 'in') ** 2) as SquareMetres,
      reduction: plainReduction.value,
    }
    published(plainTension(inputs), row, '=lb', 'lb')
    expect(workedPlainTension(inputs).standing).toBe('from memory')
  })
})
