import { describe, expect, it } from 'vitest'
import { deriveLife } from '../../src/core/derive/life/deriveLife.ts'
import type { PierSpec } from '../../src/core/model/spec.ts'
import { withChoice } from '../../src/core/spec/choose.ts'
import { defaultSpec } from '../../src/core/spec/defaults.ts'
import { toSI } from '../../src/core/units/factors.ts'
import { seconds } from '../../src/core/units/quantity.ts'
import { goneBy, tallied, tallyBy } from '../../src/state/goneBy.ts'

const at = (spec: PierSpec, year: number) => {
  const found = { least: -1, most: -1 }
  return { isTold: goneBy(spec, year, found), ...found }
}
const bracket = withChoice(defaultSpec, 'fill.kind', 'mixed-bracket-pier')
const owned = (low: number, high: number): PierSpec => ({
  ...defaultSpec,
  life: { ...defaultSpec.life, reference: 'own', own: { low: seconds(toSI(low, 'yr')), high: seconds(toSI(high, 'yr')) } },
})

describe('[W11] share of such posts that is no longer sound by a year', () => {
  it('is what the range of life leaves of the whole, at whole years', () => {
    const { sound } = deriveLife(defaultSpec)
    for (const year of [0, 7, 10, 30, 50]) {
      const share = sound?.[year]?.share ?? expect.fail('no share')
      expect(at(defaultSpec, year)).toEqual({ isTold: true, least: 1 - share.high, most: 1 - share.low })
    }
  })

  it('goes on evenly between two years, and stands still beyond the last', () => {
    const [ten, half, eleven] = [10, 10.5, 11].map((year) => at(defaultSpec, year).most)
    expect(half).toBeCloseTo(((ten ?? 0) + (eleven ?? 0)) / 2, 12)
    expect(at(defaultSpec, 61.7)).toEqual(at(defaultSpec, 50))
    expect(tallyBy(defaultSpec, 60)?.until).toBe(50)
    expect(at(defaultSpec, -3)).toEqual(at(defaultSpec, 0))
  })

  it('is not told, and nothing is drawn of it, where no row speaks of such wood', () => {
    expect(at(bracket, 30)).toEqual({ isTold: false, least: 0, most: 0 })
    expect(tallyBy(bracket, 30)).toBeNull()
  })
})

describe('[W11] the tally of such posts', () => {
  it('counts each of the same number once, whatever the year', () => {
    for (let year = 0; year <= 60; year++) {
      const tally = tallyBy(defaultSpec, year) ?? expect.fail('no tally')
      expect(tally.sound + tally.open + tally.gone).toBe(tallied)
      expect(Math.min(tally.sound, tally.open, tally.gone)).toBeGreaterThanOrEqual(0)
    }
  })

  it('claims no more than the range says: no more sound than its worse end, no more lost than its better one', () => {
    for (const spec of [defaultSpec, owned(5, 15), owned(20, 22)])
      for (let year = 0; year <= 60; year++) {
        const { least, most } = at(spec, year)
        const tally = tallyBy(spec, year) ?? expect.fail('no tally')
        expect(tally.sound).toBeLessThanOrEqual(tallied * (1 - most) + 1e-6)
        expect(tally.gone).toBeLessThanOrEqual(tallied * least + 1e-6)
      }
  })

  it('is another picture after 10 and after 50 years than at the start', () => {
    const pictures = [0, 10, 50].map((year) => tallyBy(defaultSpec, year))
    // 5 of 25 failed in 50 years leave at most 40.7 in 100, 0 of 125 leave none: an even loss is at most 9.9 in 100 by year 10.
    expect(pictures).toEqual([
      { sound: 20, open: 0, gone: 0, until: 50 },
      { sound: 18, open: 2, gone: 0, until: 50 },
      { sound: 11, open: 9, gone: 0, until: 50 },
    ])
  })
})
