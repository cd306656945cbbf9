import { describe, expect, it } from 'vitest'
import { coreShapeFactor } from '../../../src/core/engineering/concrete/cores.ts'
import { digits, has, published, readCases } from '../cases.ts'

describe('short cores', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const factor = coreShapeFactor(digits(row, 'ratio')) ?? Number.NaN
    published(factor, row, '=factor')
    if (has(row, 'raw_psi')) published(factor * digits(row, 'raw_psi'), row, '=corrected_psi')
  })
  it('has no factor outside 1 to 2', () => expect([coreShapeFactor(0.9), coreShapeFactor(2.1)]).toEqual([null, null]))
})
