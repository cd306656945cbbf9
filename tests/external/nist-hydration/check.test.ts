import { describe, it } from 'vitest'
import { gelSpaceExponent, intrinsicStrengths } from '../../../src/core/engineering/tables/hydration.ts'
import { published, readCases } from '../cases.ts'

describe('the example of the hydration model', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const strength = intrinsicStrengths[2].value
    published(strength, row, '=MPa', 'MPa')
    // 83.55 MPa is 12,118 psi; the document rounds to tens.
    published(strength, row, '=psi', 'psi', 5)
    published(gelSpaceExponent.low.value, row, '=low')
    published(gelSpaceExponent.high.value, row, '=high')
  })
})
