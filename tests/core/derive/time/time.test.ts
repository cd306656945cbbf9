import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { deriveTime } from '../../../../src/core/derive/deriveTime.ts'
import { lifeEvidence } from '../../../../src/core/engineering/tables/lifeEvidence.ts'
import { fillKinds } from '../../../../src/core/kinds/index.ts'
import type { PierSpec } from '../../../../src/core/model/spec.ts'
import type { DryMix, MixedConcrete } from '../../../../src/core/model/timeResult.ts'
import { withChoice } from '../../../../src/core/spec/choose.ts'
import { costFields } from '../../../../src/core/spec/pier/life.ts'
import { defaultSpec } from '../../../../src/core/spec/defaults.ts'
import { parseJob } from '../../../../src/core/spec/jobFile.ts'
import { toSI } from '../../../../src/core/units/factors.ts'
import { celsius, cubicMetres, seconds } from '../../../../src/core/units/quantity.ts'
import { arbitraryPier } from '../../../arbitraryPier.ts'

const built = (kind: string, change: Partial<PierSpec> = {}): PierSpec => ({ ...withChoice(defaultSpec, 'fill.kind', kind), ...change })
const dry = (spec: PierSpec): DryMix => {
  const { concrete } = deriveTime(spec).mix
  if (concrete?.as !== 'dry') expect.fail('no dry mix')
  return concrete
}
const mixed = (spec: PierSpec): MixedConcrete => {
  const { concrete } = deriveTime(spec).mix
  if (concrete?.as !== 'mixed') expect.fail('not mixed')
  return concrete
}
const placing = (change: Partial<PierSpec['placing']>) => ({ placing: { ...defaultSpec.placing, ...change } })
const gallons = (value: number) => cubicMetres(toSI(value, 'gal'))
const years = (value: number) => seconds(toSI(value, 'yr'))

/** Every number anywhere in a result, with the way to it. */
function* numbersIn(value: unknown, path = ''): Generator<readonly [string, number]> {
  if (typeof value === 'number') yield [path, value]
  else if (value !== null && typeof value === 'object')
    for (const [key, inner] of Object.entries(value)) yield* numbersIn(inner, `${path}.${key}`)
}

describe('time: every pier', () => {
  it('has no number that is none, and a source and a standing for each that is worked', () => {
    fc.assert(
      fc.property(arbitraryPier(), ({ spec }) => {
        const time = deriveTime(spec)
        for (const [path, value] of numbersIn(time)) if (!Number.isFinite(value)) expect.fail(`${path} is ${value}`)
        for (const one of [...time.mix.worked, ...time.life.worked, ...(time.cost?.worked ?? [])]) {
          expect(one.sources.length, one.id).toBeGreaterThan(0)
          expect(one.formula === '' ? one.inputs.length === 0 : one.formula.length > 0).toBe(true)
        }
      }),
      { numRuns: 200 },
    )
  })

  const folder = new URL('../../../../public/examples/', import.meta.url)
  it.each(readdirSync(folder).filter((name) => name.endsWith('.json')))('%s gives a mix and what may be said of its years', (name) => {
    const job = parseJob(readFileSync(new URL(name, folder), 'utf8'))
    if (!job.ok) expect.fail(name)
    const { life, mix } = deriveTime(job.value.spec)
    expect(life.sound === null).toBe(job.value.spec.support.kind === 'bracket')
    if (life.sound === null) expect(life.lacks).toContain('no-post-on-bracket')
    expect(life.rows.length + life.apart.length).toBeGreaterThan(0)
    expect(mix.concrete === null).toBe(job.value.spec.fill.kind === 'flowable-fill')
  })
})

describe('time: a mix placed dry', () => {
  it('loses and gains no water: what is wetted holds what was poured, within what the wall may take', () => {
    const mix = dry(built('dry-full-height', placing({ poured: gallons(3) })))
    const inputs = Object.fromEntries((mix.wetting?.shortest.inputs ?? []).map((one) => [one.name, one.value]))
    const { area = 0, voids = 0, saturation = 0, loss = 0 } = inputs
    expect((mix.wetting?.shortest.value ?? 0) * area * voids * saturation).toBeCloseTo(gallons(3) * (1 - loss), 12)
  })

  it('is wetted no less deep by more water', () => {
    const depths = [0.5, 1, 2, 4, 8, 16, 40].map((one) => dry(built('dry-full-height', placing({ poured: gallons(one) }))).wetting)
    for (const end of ['shortest', 'longest'] as const) {
      const values = depths.map((one) => one?.[end].value ?? Number.NaN)
      expect(values).toEqual([...values].sort((a, b) => a - b))
      expect(values[0]).toBeLessThan(values[3] ?? 0)
    }
    expect(depths.at(-1)?.reachesFoot).toBe('yes')
    expect(depths[0]?.reachesFoot).toBe('no')
  })

  it('[trap 4] is told what its cement can use and what fills every gap: about three times as much', () => {
    const { needs } = dry(built('dry-full-height'))
    const value = (id: string) => needs.find((one) => one.id === id)?.value ?? Number.NaN
    // 2.5 qt against 7.6 qt for one bag: moisture reference, section 5.3, computed there.
    expect(value('void-water') / value('hydration-water')).toBeCloseTo(7.6 / 2.52, 1)
  })

  it('[trap 3] has a range of strength where it is wet and none where no water gets, and never the strength of mixed concrete', () => {
    const { layers } = dry(built('dry-full-height', placing({ poured: gallons(2) })))
    expect(layers.length).toBe(3)
    expect(layers[0]?.strength?.low).toBeGreaterThan(0)
    expect(layers.at(-1)?.strength).toBeNull()
    for (const { strength } of layers) if (strength) expect(strength.high).toBeLessThan(1)
  })

  it('covers its whole height with layers', () => {
    for (const kind of ['dry-full-height', 'dry-bag-at-foot']) {
      const { layers, from, to } = dry(built(kind))
      expect(layers[0]?.to).toBeCloseTo(to, 12)
      expect(layers.at(-1)?.from).toBeCloseTo(from, 12)
      for (const [index, layer] of layers.slice(1).entries()) expect(layer.to).toBe(layers[index]?.from)
    }
  })

  it('takes nothing of what is poured where nobody pours', () => {
    expect(dry(built('dry-bag-at-foot', placing({ poured: gallons(5) }))).wetting).toBeNull()
  })
})

describe('time: mixed concrete', () => {
  it('reaches 46% in 3 days and 70% in 7 at 20 degC (ACI 209R-92, from memory in the reference)', () => {
    const { gain } = mixed(built('mixed-full-height', placing({ temperature: celsius(20) })))
    const at = (days: number) => gain.find((one) => Math.abs(one.age - toSI(days, 'd')) < 1)?.share
    expect(at(3)?.low).toBeCloseTo(0.458, 3)
    expect(at(7)?.high).toBeCloseTo(0.704, 3)
  })

  it('comes to the share asked for no sooner in the cold, and never below freezing', () => {
    const day = (degrees: number) => mixed(built('mixed-full-height', placing({ temperature: celsius(degrees) }))).loadDay
    const latest = [30, 20, 10, 5, 2].map((one) => day(one)?.high ?? Number.NaN)
    expect(latest).toEqual([...latest].sort((a, b) => a - b))
    expect(day(-2)).toBeNull()
    expect(day(10)?.high).toBeGreaterThan(day(10)?.low ?? Number.NaN)
  })

  it('loses strength with water added at the site', () => {
    const left = (dosage: number) =>
      mixed(built('mixed-full-height', placing({ addedWater: toSI(dosage, 'gal/yd3') }))).added.find(
        (one) => one.id === 'strength-left-rich',
      )?.value ?? 1
    expect([0, 1, 2, 4].map(left)).toEqual([0, 1, 2, 4].map(left).sort((a, b) => b - a))
    expect(left(4)).toBeLessThan(1)
  })
})

describe('time: years', () => {
  it('[trap 11] tells no life from all rows, and keeps stakes, lumber and today’s treatments apart from posts', () => {
    const { estimated, rows, apart } = deriveTime(defaultSpec).life
    expect(estimated).toBeNull()
    expect(rows).toEqual(['posts-cca-50', 'posts-penta-50', 'posts-aca-50', 'posts-creosote-50'])
    for (const row of ['stakes-copper-azole-10', 'stakes-acq-10', 'lumber-copper-naphthenate'])
      expect(apart).toContainEqual({ row, why: 'no-post' })
  })

  it('names the gap between wood and concrete among what stays out of sight only where concrete or mix reaches the top', () => {
    const hidden = (kind: string) => deriveTime(built(kind)).life.inspection.hidden.includes('joint')
    expect(['mixed-full-height', 'dry-full-height'].map(hidden)).toEqual([true, true])
    expect(['dry-bag-at-foot', 'mixed-collar', 'granular-on-pad', 'mixed-bracket-pier'].map(hidden)).toEqual([false, false, false, false])
  })

  it('gives wood without treatment the rows of such posts alone', () => {
    const { rows } = deriveTime({ ...defaultSpec, post: { ...defaultSpec.post, treatment: 'untreated' } }).life
    expect(rows).toEqual(['posts-mississippi-untreated', 'posts-oregon-fir'])
  })

  it('[trap 8] counts no factor before it is set, and each one once', () => {
    const life = (change: Partial<PierSpec['life']['factors']>) =>
      deriveTime({
        ...defaultSpec,
        life: { ...defaultSpec.life, reference: 'stakes-wisconsin', factors: { ...defaultSpec.life.factors, ...change } },
      }).life
    expect(Object.values(life({}).factors)).toEqual([1, 1, 1, 1, 1, 1, 1])
    const low = life({ quality: 0.9, design: 0.8, outdoors: 0.8 }).estimated?.low ?? 0
    expect(low).toBeCloseTo(years(6) * 0.9 * 0.8 * 0.8, 0)
  })

  it('[trap 6] speaks of the climate for wood above ground alone', () => {
    const { climate, buriedHazard } = deriveTime({ ...defaultSpec, life: { ...defaultSpec.life, climate: 'seattle' } }).life
    // 54.47 from the rounded months: moisture reference, section 1.5.
    expect(climate?.index.value).toBeCloseTo(54.47, 1)
    expect(climate?.hazard).toBe('moderate')
    expect(climate?.appliesTo).toBe('above-ground wood')
    expect(buriedHazard).toBe('high')
  })

  it('shows the share still sound as a range that never rises', () => {
    const { sound } = deriveTime(defaultSpec).life
    for (const [index, { share }] of (sound ?? []).entries()) {
      expect(share.low).toBeLessThanOrEqual(share.high)
      const before = sound?.[index - 1]?.share
      if (before) expect(share.high).toBeLessThanOrEqual(before.high)
    }
  })

  it('shows the rule of thumb beside the rows, and says whether the ground is such', () => {
    const thumb = (ground: PierSpec['water']['ground']) =>
      deriveTime({ ...defaultSpec, water: { ...defaultSpec.water, ground } }).life.ruleOfThumb
    expect(thumb('wet')).toEqual({ row: 'common-practice-ten-years', applies: true, life: years(10) })
    expect(thumb('drains').applies).toBe(false)
  })

  it('names rows that exist', () => {
    const ids = lifeEvidence.map((row) => row.id)
    for (const kind of fillKinds) {
      const { rows, apart } = deriveTime(built(kind.id)).life
      for (const id of [...rows, ...apart.map(({ row }) => row)]) expect(ids).toContain(id)
    }
  })
})

describe('time: cost', () => {
  const priced = (change: Partial<PierSpec['costs'] & object> = {}, reference: [number, number] = [15, 60]): PierSpec => ({
    ...defaultSpec,
    life: { ...defaultSpec.life, reference: 'own', own: { low: years(reference[0]), high: years(reference[1]) } },
    costs: {
      ...costFields.first,
      prices: { ...costFields.first.prices, 'mixed-full-height': { first: 100, replacement: 600 } },
      ...change,
    },
  })

  it('has no price built in', () => {
    expect(deriveTime(defaultSpec).cost).toBeNull()
    const { cost } = deriveTime({ ...defaultSpec, costs: costFields.first })
    expect(cost?.present).toBeNull()
    expect(cost?.lacks).toEqual(['costs.prices.mixed-full-height.first', 'costs.prices.mixed-full-height.replacement', 'life'])
  })

  it('gives the worked example: 100 first, 600 at 15, 30 and 45 years, 3%: 890.97, and 32.19 a year (moisture reference, section 7, computed there)', () => {
    const { cost } = deriveTime(priced())
    expect(cost?.present?.high).toBeCloseTo(890.97, 2)
    expect(cost?.yearly?.high).toBeCloseTo(32.19, 2)
    expect(cost?.replacements).toEqual({ low: 0, high: 3 })
    expect(cost?.present?.low).toBe(100)
  })

  it('costs no more at a higher rate, and turns with it: 1,123.17 at 2%, 424.86 at 7%', () => {
    const high = (rate: number) => deriveTime(priced({ rate })).cost?.present?.high ?? Number.NaN
    expect(high(0.02)).toBeCloseTo(1123.17, 2)
    expect(high(0.07)).toBeCloseTo(424.86, 2)
  })

  it('says nothing of a post whose life nobody knows', () => {
    const bracket = built('mixed-bracket-pier', {
      costs: { ...costFields.first, prices: { ...costFields.first.prices, 'mixed-bracket-pier': { first: 250, replacement: 100 } } },
    })
    expect(deriveTime(bracket).cost?.lacks).toEqual(['life'])
  })
})
