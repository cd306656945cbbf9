import { describe, expect, it } from 'vitest'
import { evidenceBand, lifeBand, steepestOf } from '../../../../src/core/engineering/life/evidenceBand.ts'
import { lifeEvidence } from '../../../../src/core/engineering/tables/lifeEvidence.ts'
import { toSI } from '../../../../src/core/units/factors.ts'
import { seconds } from '../../../../src/core/units/quantity.ts'

const years = (value: number) => seconds(toSI(value, 'yr'))
const band = (id: string) => {
  const row = lifeEvidence.find((one) => one.id === id) ?? expect.fail(`no row ${id}`)
  return evidenceBand(row, 0.95, 5) ?? expect.fail(`no band ${id}`)
}

describe('what a row leaves open', () => {
  it('of a count is its interval where it ends, nothing at the start, and never falls', () => {
    for (const id of ['posts-cca-50', 'posts-penta-50', 'posts-aca-50', 'posts-creosote-50']) {
      const { gone, until } = band(id)
      expect(until).toBe(years(50))
      expect(gone(years(0))).toEqual({ low: 0, high: 0 })
      for (let year = 1; year <= 50; year++) {
        const [now, before] = [gone(years(year)), gone(years(year - 1))]
        expect(now.low).toBeGreaterThanOrEqual(before.low)
        expect(now.high).toBeGreaterThan(before.high)
        expect(now.low).toBeLessThanOrEqual(now.high)
      }
    }
    expect(band('posts-cca-50').gone(years(50)).high).toBeCloseTo(1 - 0.05 ** (1 / 125), 9)
    expect(band('posts-penta-50').gone(years(50)).high).toBeCloseTo(1 - 0.05 ** (1 / 75), 9)
  })

  it('of a life is half at that life, between an even loss and the steepest', () => {
    const { gone, until } = lifeBand({ low: years(6), high: years(6) }, 5)
    expect(until).toBeNull()
    expect(gone(years(6)).low).toBeCloseTo(0.5, 12)
    expect(gone(years(6)).high).toBeCloseTo(0.5, 12)
    expect(gone(years(3)).high).toBeCloseTo(1 - 2 ** -0.5, 12)
    expect(gone(years(3)).low).toBeCloseTo(1 - 2 ** -(0.5 ** 5), 12)
  })

  it('of a life "or more" bounds one side alone, and ends there', () => {
    const { gone, until } = band('posts-penta-60')
    expect(until).toBe(years(60))
    expect(gone(years(60))).toEqual({ low: 0, high: expect.closeTo(0.5, 12) })
  })

  it('is nothing where neither a count nor a life is told', () => {
    for (const id of ['posts-cca-35', 'stakes-copper-azole-10']) {
      const row = lifeEvidence.find((one) => one.id === id) ?? expect.fail(id)
      expect(evidenceBand(row, 0.95, 5)).toBeNull()
      expect(steepestOf(row, 0.95)).toBeNull()
    }
  })
})
