import { describe, expect, it } from 'vitest'
import { amiss, mistakes, withMistakes } from '../../../../src/core/derive/build/mistakes.ts'
import { derivePier } from '../../../../src/core/derive/derivePier.ts'
import type { MistakeId } from '../../../../src/core/model/buildStep.ts'
import type { PierSpec } from '../../../../src/core/model/spec.ts'
import { defaultSpec } from '../../../../src/core/spec/defaults.ts'
import { toSI } from '../../../../src/core/units/factors.ts'
import { metres } from '../../../../src/core/units/quantity.ts'
import { canBeBuilt, ofEach } from '../manyPiers.ts'

const inch = (value: number) => metres(toSI(value, 'in'))
const bare: PierSpec = {
  ...defaultSpec,
  site: { ...defaultSpec.site, slope: 0 as PierSpec['site']['slope'] },
  hole: { diameter: inch(18), depth: inch(48), bell: null, flare: null, base: null },
  support: { kind: 'embedded', foot: inch(0) },
  fill: { kind: 'mixed-full-height' },
  bars: { size: '#5', count: 1, aboveFoot: inch(5.5), spacing: inch(4), length: inch(12), grade: '60', coating: 'galvanised' },
  verticalBars: null,
  top: { shape: 'crowned', rise: inch(1), rim: inch(1), heaped: inch(0) },
}
const wrong = (...ids: MistakeId[]) => derivePier(withMistakes(bare, ids))
const right = derivePier(bare)
const head = (result: typeof right, id: string) => result.headlines.find((one) => one.id === id)?.value ?? Number.NaN

describe('every mistake leaves a pier that can be drawn', () => {
  it('of 300 piers, each mistake alone and all together', () => {
    const made = new Set<MistakeId>()
    ofEach((spec) => {
      const all = mistakes.map(({ id }) => id)
      for (const ids of [...all.map((id) => [id]), all]) {
        const pier = withMistakes(spec, ids)
        expect(canBeBuilt(pier)).toBe(true)
        const [only] = ids
        if (ids.length === 1 && only) {
          const applies = mistakes.find(({ id }) => id === only)?.applies(spec)
          expect(pier !== spec).toBe(applies)
          if (applies) made.add(only)
        }
      }
    })
    expect([...made].sort()).toEqual(mistakes.map(({ id }) => id).sort())
  })

  it('is the pier itself when nothing goes wrong, or nothing that applies', () => {
    expect(withMistakes(bare, [])).toBe(bare)
    const barless = { ...bare, bars: null }
    expect(withMistakes(barless, ['bar-missed', 'bar-too-short', 'bar-too-high'])).toBe(barless)
  })
})

describe('the numbers follow a mistake', () => {
  it('16 in for 18 in is 21 % less hole: (16/18)²', () => {
    expect(head(wrong('undersized-hole'), 'hole-volume') / head(right, 'hole-volume')).toBeCloseTo((16 / 18) ** 2, 9)
  })

  it('loose soil: 3 in of it, in the hole and in no order, and what bears on it is not counted', () => {
    const result = wrong('loose-bottom')
    const line = result.quantities.find(({ id }) => id === 'base')
    expect(line?.role).toBe('backfill')
    expect(line?.volume.value).toBeCloseTo((Math.PI / 4) * bare.hole.diameter ** 2 * amiss.loose, 9)
    expect(line?.orders).toEqual([])
    expect(head(result, 'hole-volume')).toBeCloseTo(head(right, 'hole-volume'), 12)
    expect(right.depths.bearingAtAxis - result.depths.bearingAtAxis).toBeCloseTo(amiss.loose, 12)
    const bearing = result.checks.find(({ id }) => id === 'bearing-gross')
    expect([bearing?.counted, bearing?.why]).toEqual(['not counted', 'bears-on-loose-soil'])
    expect(result.hole.void).toBeCloseTo(0, 9)
  })

  it('a bar left out is no bar, one too short ends half an inch beyond the post, one too high is 8 in up', () => {
    expect(wrong('bar-missed').zones.some(({ role }) => role === 'bar')).toBe(false)
    expect(withMistakes(bare, ['bar-too-short']).bars?.length).toBeCloseTo(inch(6.5), 9)
    expect(withMistakes(bare, ['bar-too-high']).bars?.aboveFoot).toBeCloseTo(inch(13.5), 9)
  })

  it('off plumb: two degrees, out of line by their tangent over the buried length, and a bar nearer to one wall', () => {
    const spec = withMistakes(bare, ['off-plumb'])
    expect(spec.post.lean).toBe(amiss.lean)
    const check = (result: typeof right, id: string) => result.checks.find((one) => one.id === id)
    expect(check(right, 'post-plumb')).toBeUndefined()
    expect(check(wrong('off-plumb'), 'post-plumb')?.demand?.value).toBeCloseTo(inch(48) * Math.tan(toSI(2, 'deg')), 9)
    const cover = (result: typeof right) => check(result, 'bar-end-cover')?.allowable?.value ?? Number.NaN
    expect(cover(wrong('off-plumb'))).toBeLessThan(cover(right))
  })

  it('a flat, a dished and a low top each hold less concrete than the one before it', () => {
    const mix = [right, wrong('flat-top'), wrong('dished-top'), wrong('dished-top', 'low-fill')].map((result) => head(result, 'mix-volume'))
    expect([...mix].sort((a, b) => b - a)).toEqual(mix)
    expect(new Set(mix).size).toBe(4)
  })
})
