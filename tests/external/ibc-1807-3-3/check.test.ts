import { describe, expect, it } from 'vitest'
import { bearingWidth, leastHoleForConcrete } from '../../../src/core/engineering/soil/lateralWidth.ts'
import { postSections } from '../../../src/core/engineering/tables/postSections.ts'
import type { PostSectionId } from '../../../src/core/model/spec.ts'
import { close } from '../../close.ts'
import { at, published, readCases } from '../cases.ts'

describe('least hole for concrete backfill', () => {
  it.each(readCases(import.meta.url).map((row) => [row.section as PostSectionId, row] as const))('%s', (id, row) => {
    const { width, depth, shape } = postSections[id]
    published(leastHoleForConcrete({ width, depth, round: shape === 'round' }), row, '=hole_in', 'in')
    published(bearingWidth({ width, depth, round: shape === 'round' }), row, '=diagonal_in', 'in')
  })
  it('a round post bears over its diameter', () => {
    const { width, depth } = postSections['round-8']
    expect(bearingWidth({ width, depth, round: true })).toBe(width)
    close(leastHoleForConcrete({ width, depth, round: true }), at(12, 'in'), { abs: 1e-12, rel: 0 })
  })
})
