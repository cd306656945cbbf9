import { describe, expect, it } from 'vitest'
import * as gelSpace from '../../../src/core/engineering/mix/gelSpace.ts'
import { gelSpaceRatio } from '../../../src/core/engineering/mix/gelSpace.ts'
import { intrinsicStrengths } from '../../../src/core/engineering/tables/hydration.ts'
import { digits, has, published, readCases } from '../cases.ts'

const [, textbook] = intrinsicStrengths

describe('gel-space examples', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const x = has(row, 'x')
      ? digits(row, 'x')
      : (gelSpaceRatio({ hydration: digits(row, 'hydration'), space: digits(row, 'space'), coefficients: 'textbook' }) ?? Number.NaN)
    published(x, row, '=x')
    published(textbook.value * x ** 3, row, '=MPa', 'MPa')
  })
  it('[trap 5] the strength of pure gel differs threefold between sources, so no strength of a pier is worked out from it', () => {
    const strengths = intrinsicStrengths.map(({ value }) => value)
    expect(Math.max(...strengths) / Math.min(...strengths)).toBeGreaterThan(2.8)
    // What can be shown is a ratio; nothing in the module gives a strength.
    for (const one of Object.values(gelSpace)) if ('recipe' in one) expect(one.recipe.quantity).toBe('ratio')
  })
})
