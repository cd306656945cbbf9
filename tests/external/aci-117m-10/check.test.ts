import { describe, expect, it } from 'vitest'
import { drilledPierScope, type pierPlumb, plumbAllowance } from '../../../src/core/engineering/tables/pierTolerances.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('lean of a pier', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id as keyof typeof pierPlumb, row] as const))('%s', (pier, row) => {
    published(plumbAllowance(pier, si(row, 'length_in', 'in'), si(row, 'diameter_in', 'in')), row, '=offset_in', 'in')
  })
  it('[trap 14] the drilled-pier specification begins at 30 in: a post hole is out of its scope', () => {
    expect(drilledPierScope.printed).toBe(30)
    for (const inches of [12, 18, 24]) expect(at<number>(inches, 'in')).toBeLessThan(drilledPierScope.value)
  })
})
