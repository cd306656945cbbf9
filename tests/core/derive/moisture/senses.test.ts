import { describe, expect, test } from 'vitest'
import { deriveMoisture } from '../../../../src/core/derive/moisture/deriveMoisture.ts'
import { soilWetnesses } from '../../../../src/core/engineering/moisture/soilWetness.ts'
import { woodWetnesses } from '../../../../src/core/engineering/tables/contactWetness.ts'
import type { MoistureResult, PostSide, WetStretch } from '../../../../src/core/model/moistureResult.ts'
import type { PierSpec } from '../../../../src/core/model/spec.ts'
import { metres } from '../../../../src/core/units/quantity.ts'
import { canBeBuilt, ofEach } from '../manyPiers.ts'
import { inch } from '../pierOf.ts'

const sides: readonly PostSide[] = ['uphill', 'axis', 'downhill']
const at = (result: MoistureResult, side: PostSide, y: number): WetStretch | undefined =>
  result.profile.find((one) => one.side === side && one.from < y && y < one.to)

/** Levels at which wood of both is looked at: the middle of every stretch of either. */
const levels = (side: PostSide, ...results: readonly MoistureResult[]): number[] =>
  results.flatMap((one) => one.profile.filter((stretch) => stretch.side === side).map(({ from, to }) => (from + to) / 2))

/** Places where the second is drier than the first. */
function drier(first: MoistureResult, second: MoistureResult): string[] {
  return sides.flatMap((side) =>
    levels(side, first, second).flatMap((y) => {
      const a = at(first, side, y)
      const b = at(second, side, y)
      const dried = a && b && woodWetnesses.indexOf(b.wetness) < woodWetnesses.indexOf(a.wetness)
      return dried ? [`${side} ${y}: ${a.touch} ${a.wetness} -> ${b.touch} ${b.wetness}`] : []
    }),
  )
}
const withWater = (spec: PierSpec, water: Partial<PierSpec['water']>): PierSpec => ({ ...spec, water: { ...spec.water, ...water } })
const withTop = (spec: PierSpec, top: Partial<PierSpec['top']>): PierSpec => ({ ...spec, top: { ...spec.top, ...top } })
const sheds = (result: MoistureResult): boolean => result.top.path.end === 'ground'

describe('classes go one way, whatever the pier', () => {
  test('wetter ground never gives a drier class', () => {
    ofEach((spec) => {
      const [drains, damp, wet] = soilWetnesses.map((ground) => deriveMoisture(withWater(spec, { ground })))
      if (!drains || !damp || !wet) return expect.fail('three classes')
      expect([...drier(drains, damp), ...drier(damp, wet)]).toEqual([])
    })
  })

  test('a higher water table never gives a drier class', () => {
    ofEach((spec) => {
      const table = (waterTable: number | null) =>
        deriveMoisture({ ...spec, site: { ...spec.site, waterTable: waterTable === null ? null : metres(waterTable) } })
      const deepest = spec.hole.depth * 1.5
      const rising = [null, deepest, deepest * 0.6, deepest * 0.3, deepest * 0.05].map(table)
      rising.forEach((one, i) => {
        const next = rising[i + 1]
        if (next) expect(drier(one, next)).toEqual([])
      })
    })
  })

  test('a lower rim never sheds more, and a crown made a dish is never better', () => {
    let dished = 0
    ofEach((spec) => {
      const lower = withTop(spec, { rim: metres(spec.top.rim - inch(4)) })
      if (!sheds(deriveMoisture(spec))) expect(sheds(deriveMoisture(lower))).toBe(false)
      const crown = withTop(spec, { shape: 'crowned', rise: inch(1) })
      const dish = withTop(spec, { shape: 'dished', rise: inch(1) })
      if (!canBeBuilt(crown) || !canBeBuilt(dish) || deriveMoisture(crown).top.slope === null) return
      dished++
      const [crowned, hollow] = [deriveMoisture(crown), deriveMoisture(dish)]
      expect(drier(crowned, hollow).filter((where) => !where.includes('splash'))).toEqual([])
      expect(sheds(hollow)).toBe(false)
    })
    expect(dished).toBeGreaterThan(20)
  })

  test('heaping soil over a top never sheds more and never dries wood', () => {
    let heaped = 0
    ofEach((spec) => {
      if (deriveMoisture(spec).top.slope === null) return
      heaped++
      const [bare, buried] = [withTop(spec, { heaped: metres(0) }), withTop(spec, { heaped: inch(3) })].map(deriveMoisture)
      if (!bare || !buried) return expect.fail('two tops')
      expect(drier(bare, buried)).toEqual([])
      expect(buried.top.path.reasons).toContain('heaped-over')
    })
    expect(heaped).toBeGreaterThan(20)
  })

  test('wood that is set wetter never opens a narrower joint', () => {
    ofEach((spec) => {
      const gaps = [0.12, 0.19, 0.25, 0.3, 0.6].map((atSetting) => deriveMoisture(withWater(spec, { atSetting })).joint?.widest ?? 0)
      expect(gaps).toEqual([...gaps].sort((a, b) => a - b))
    })
  })
})
