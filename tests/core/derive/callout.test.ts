import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { fillKinds } from '../../../src/core/kinds/index.ts'
import { type CalloutItem, type CalloutItemId, calloutItemIds } from '../../../src/core/model/calloutResult.ts'
import type { Callout, PierSpec } from '../../../src/core/model/spec.ts'
import { calloutFields } from '../../../src/core/spec/pier/callout.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { withChoice } from '../../../src/core/spec/choose.ts'
import { withValueAt } from '../../../src/core/spec/path.ts'
import { fromSI, toSI } from '../../../src/core/units/factors.ts'
import { metres, newtons, pascals } from '../../../src/core/units/quantity.ts'
import { wordsOf } from '../../../src/words/index.ts'
import { arbitraryPier } from '../../arbitraryPier.ts'
import { close } from '../../close.ts'
import { soundPier } from '../../soundPier.ts'

const inch = (value: number) => metres(toSI(value, 'in'))
const psi = (value: number) => pascals(toSI(value, 'psi'))
const lb = (value: number) => newtons(toSI(value, 'lb'))

/** A level site, so that depth is one number: 18 in wide and 48 in deep unless said. */
const level: PierSpec = {
  ...defaultSpec,
  site: { ...defaultSpec.site, slope: 0 as PierSpec['site']['slope'] },
  hole: { ...defaultSpec.hole, diameter: inch(18) },
  bars: defaultSpec.bars && { ...defaultSpec.bars, length: inch(12) },
}
const filled = (kind: string, spec = level): PierSpec => withChoice(spec, 'fill.kind', kind)
const check = (drawn: Partial<Callout>, spec: PierSpec = level) => {
  const { callout } = derivePier({ ...spec, callout: { ...calloutFields.first, ...drawn } })
  return callout ?? expect.fail('no check')
}
const one = (id: CalloutItemId, drawn: Partial<Callout>, spec: PierSpec = level): CalloutItem =>
  check(drawn, spec).items.find((item) => item.id === id) ?? expect.fail(`no item ${id}`)
const number = (item: CalloutItem, id: string): number => item.consequences.find((what) => what.id === id)?.value ?? Number.NaN

describe('[D2] the check as a whole', () => {
  it('is none without a drawing', () => expect(derivePier(level).callout).toBeNull())

  it('has every item once, and with nothing entered confirms nothing', () => {
    const { items, overall, checked } = check({})
    expect(items.map((item) => item.id)).toEqual(calloutItemIds)
    expect(items.every((item) => item.verdict === 'not on the drawing')).toBe(true)
    expect([overall, checked]).toEqual(["can't be confirmed as drawn", 0])
  })

  it('is as drawn when nothing falls short and nothing is open, and counts what it looked at', () => {
    expect(check({ diameter: inch(18), depth: inch(48), mixed: 'no' })).toMatchObject({ overall: 'as drawn', checked: 3 })
  })

  it('is not as drawn when one item falls short, whatever else is open', () => {
    const dry = filled('dry-full-height')
    expect(check({ strength: psi(3000), diameter: inch(20) }, dry).overall).toBe('not as drawn')
  })

  it("can't be confirmed when an item can't be verified and none falls short", () => {
    expect(check({ strength: psi(3000), diameter: inch(18) }, filled('dry-full-height')).overall).toBe("can't be confirmed as drawn")
  })
})

describe('[D3] numbers, by hand', () => {
  it('2 in narrower: 21 % less hole and 215 lb less concrete', () => {
    // (16/18)^2 - 1 = -0.20988; pi/4 (256 - 324)/144 ft2 x 4 ft x 145 pcf = -215.1 lb.
    const item = one('diameter', { diameter: inch(18) }, { ...level, hole: { ...level.hole, diameter: inch(16) } })
    expect([item.verdict, item.why]).toEqual(['falls short', 'hole-narrower'])
    close(item.difference ?? Number.NaN, inch(-2), { abs: 1e-12, rel: 0 })
    close(number(item, 'hole-volume'), -0.20988, { abs: 5e-6, rel: 0 })
    close(fromSI(number(item, 'concrete-weight'), 'lb'), -215.1, { abs: 0.05, rel: 0 })
  })

  it('6 in less deep: an eighth less in the ground and 128 lb less concrete', () => {
    // (42 - 48)/48 = -0.125; pi/4 x 2.25 ft2 x -0.5 ft x 145 pcf = -128.1 lb; 42 in of bearing over 42 in of frost leaves nothing.
    const item = one('depth', { depth: inch(48) }, { ...level, hole: { ...level.hole, depth: inch(42) } })
    expect([item.verdict, item.why]).toEqual(['falls short', 'less-deep'])
    close(number(item, 'shaft-length'), -0.125, { abs: 1e-12, rel: 0 })
    close(fromSI(number(item, 'concrete-weight'), 'lb'), -128.1, { abs: 0.05, rel: 0 })
    expect(item.consequences.some((what) => what.id === 'below-frost')).toBe(false)
  })

  it('depth is measured below the downhill edge of what bears', () => {
    // 48 in on the axis, 9 in of radius at 10 %: 47.1 in. Gravel carries no depth.
    const steep: PierSpec = { ...level, site: { ...level.site, slope: 0.1 as PierSpec['site']['slope'] } }
    const onGravel: PierSpec = { ...steep, hole: { ...steep.hole, base: { material: 'gravel', thickness: inch(4) } } }
    const set = (spec: PierSpec) => {
      const value = one('depth', { depth: inch(48) }, spec).set
      return value?.as === 'number' ? fromSI(value.value, 'in') : Number.NaN
    }
    close(set(steep), 47.1, { abs: 1e-9, rel: 0 })
    close(set(onGravel), 43.1, { abs: 1e-9, rel: 0 })
    expect(one('depth', { depth: inch(48) }, steep).verdict).toBe('falls short')
  })

  it('a weaker concrete: share of strength, and the root of it for breaking out', () => {
    // 3500/4000 - 1 = -0.125; sqrt(0.875) - 1 = -0.06459.
    const item = one('strength', { strength: psi(4000) })
    expect(item.verdict).toBe('falls short')
    close(number(item, 'strength'), -0.125, { abs: 1e-9, rel: 0 })
    close(number(item, 'concrete-breakout'), -0.06459, { abs: 5e-6, rel: 0 })
  })

  it('a thinner bar by the areas of the table, #4 for #5', () => {
    // ASTM A615: 0.20 in2 over 0.31 in2 - 1 = -0.35484.
    const thin = { ...level, bars: level.bars && { ...level.bars, size: '#4' as const } }
    close(number(one('bar-size', { barSize: '#5' }, thin), 'bar-area'), -0.35484, { abs: 5e-6, rel: 0 })
  })

  it('a smaller post by its dressed area, 4x6 for 6x6', () => {
    // 3.5 x 5.5 over 5.5 x 5.5 - 1 = -0.36364.
    const item = one('section', { section: '6x6' }, { ...level, post: { ...level.post, section: '4x6' } })
    expect(item.verdict).toBe('falls short')
    close(number(item, 'post-area'), -0.36364, { abs: 5e-6, rel: 0 })
  })

  it('weaker soil by the table of the code, clay for sand', () => {
    // IBC Table 1806.2: 1500/2000 - 1 = -0.25; 100/150 - 1 = -0.33333.
    const clay = withValueAt(level, 'site.soil.class', 'clay')
    const item = one('soil', { soil: 'sand' }, clay)
    expect(item.verdict).toBe('falls short')
    close(number(item, 'soil-bearing'), -0.25, { abs: 1e-12, rel: 0 })
    close(number(item, 'soil-lateral'), -0.33333, { abs: 5e-6, rel: 0 })
  })

  it('a bag at the foot leaves the rest of the way without concrete', () => {
    const item = one('encasement', { encasement: 'yes' }, filled('mixed-collar'))
    // An 18 in collar in a hole of 48 in.
    expect(item.verdict).toBe('falls short')
    close(fromSI(number(item, 'unencased-length'), 'in'), -30, { abs: 1e-9, rel: 0 })
  })
})

describe('[D4] edges: meets is not below the figure, less what the drawing allows', () => {
  const wide = (inches: number): PierSpec => ({ ...level, hole: { ...level.hole, diameter: inch(inches) } })
  it.each([
    [18, 0, 18, 'meets'],
    [17.99, 0, 18, 'falls short'],
    [18.01, 0, 18, 'meets'],
    [17.5, 0.5, 18, 'meets'],
    [17.49, 0.5, 18, 'falls short'],
  ])('%s in with %s in allowed under %s in: %s', (set, allowed, drawn, verdict) => {
    const tolerance = { ...calloutFields.first.tolerance, diameter: inch(allowed) }
    expect(one('diameter', { diameter: inch(drawn), tolerance }, wide(set)).verdict).toBe(verdict)
  })

  it('depth takes its own allowance', () => {
    const shallow = { ...level, hole: { ...level.hole, depth: inch(46) } }
    expect(one('depth', { depth: inch(48), tolerance: { diameter: inch(6), depth: inch(0) } }, shallow).verdict).toBe('falls short')
    expect(one('depth', { depth: inch(48), tolerance: { diameter: inch(0), depth: inch(2) } }, shallow).verdict).toBe('meets')
  })

  it('uplift is held against the number of the chain itself', () => {
    const { support, bars, verticalBars } = soundPier
    const sound = { ...level, support, bars: bars && { ...bars, length: inch(12) }, verticalBars }
    const held = (drawn: Partial<Callout>) => one('uplift', drawn, sound)
    const allowable = derivePier(sound).uplift.allowable ?? expect.fail('no number')
    expect(held({ uplift: newtons(allowable) }).verdict).toBe('meets')
    expect(held({ uplift: newtons(allowable * 1.001) })).toMatchObject({ verdict: 'falls short', why: 'uplift-below' })
    const short = held({ uplift: newtons(allowable * 2) })
    close(number(short, 'uplift'), -0.5, { abs: 1e-9, rel: 0 })
    close(number(short, 'uplift-lacking'), -allowable, { abs: 1e-6, rel: 0 })
  })
})

describe('[D5] what is open stays open, and is said how to close it', () => {
  it('dry mix has no strength until it is cored', () => {
    const dry = filled('dry-full-height')
    const open = one('strength', { strength: psi(3000) }, dry)
    expect(open).toMatchObject({ verdict: "can't be verified", set: null, verify: ['cores'] })
    // ACI 318-19 26.12.6.1(e): the mean at 85 %, none below 75 %.
    const cored = (first: number, second: number, third: number): PierSpec => ({
      ...dry,
      concrete: { ...dry.concrete, cores: { first: psi(first), second: psi(second), third: psi(third) } },
    })
    expect(one('strength', { strength: psi(3000) }, cored(2550, 2550, 2550)).verdict).toBe('meets')
    expect(one('strength', { strength: psi(3000) }, cored(3000, 3000, 2200)).verdict).toBe('falls short')
    expect(one('strength', { strength: psi(3000) }, cored(2500, 2500, 2500)).verdict).toBe('falls short')
  })

  it('dry mix is not mixed, whatever its cores, and the weight that is not counted is told', () => {
    const dry = filled('dry-full-height')
    const item = one('mixed', { mixed: 'yes' }, dry)
    expect(item).toMatchObject({ verdict: 'falls short', why: 'placed-dry' })
    const line = derivePier(dry).quantities.find((each) => each.role === 'dry-mix') ?? expect.fail('no mix')
    close(number(item, 'uncounted-weight'), -line.weight, { abs: 1e-9, rel: 0 })
    expect(one('encasement', { encasement: 'yes' }, dry).verdict).toBe("can't be verified")
  })

  it('a link that may not be counted leaves uplift open', () => {
    expect(one('uplift', { uplift: lb(500) }, filled('dry-bag-at-foot'))).toMatchObject({
      verdict: "can't be verified",
      set: null,
      verify: ['cores', 'engineer'],
    })
  })

  it('a post of another make with as much wood is for the engineer', () => {
    const plies = { ...level, post: { ...level.post, section: '4-ply-2x6' as const } }
    expect(one('section', { section: '6x6' }, plies)).toMatchObject({ verdict: "can't be verified", verify: ['engineer'] })
    expect(one('section', { section: '8x8' }, plies).verdict).toBe('falls short')
  })

  it('soil with values of its own is for the report', () => {
    const own = withChoice(level, 'site.soil.kind', 'user')
    expect(one('soil', { soil: 'sand' }, own).verdict).toBe("can't be verified")
  })

  it('the weakest layer that the hole meets counts, one below it does not', () => {
    const layered = (from: number): PierSpec => ({
      ...level,
      site: { ...level.site, lower: { from: inch(from), soil: { kind: 'presumptive', class: 'clay' } } },
    })
    expect(one('soil', { soil: 'sand' }, layered(36))).toMatchObject({ verdict: 'falls short', where: ['soil-lower'] })
    expect(one('soil', { soil: 'sand' }, layered(60)).verdict).toBe('meets')
  })
})

describe('[D6] what the drawing does not ask for', () => {
  it.each(['mixed', 'encasement'] as const)('%s: no is not needed, whatever is set', (key) => {
    for (const kind of fillKinds) expect(one(key, { [key]: 'no' }, filled(kind.id)).verdict).toBe('not needed')
  })

  it('a bracket that is allowed needs no bar, one that is not falls short', () => {
    const standing = filled('mixed-bracket-pier')
    expect(check({ bracket: 'yes', barThrough: 'yes', barSize: '#5' }, standing).items.map((item) => item.verdict)).toEqual(
      calloutItemIds.map((id) =>
        id === 'bracket' ? 'meets' : id === 'bar-through' || id === 'bar-size' ? 'not needed' : 'not on the drawing',
      ),
    )
    expect(one('bracket', { bracket: 'no' }, standing).verdict).toBe('falls short')
    expect(one('bracket', { bracket: 'no' }).verdict).toBe('meets')
    expect(one('bracket', { bracket: 'yes' }).verdict).toBe('not needed')
    expect(one('bar-through', { barThrough: 'yes' }, standing).verdict).toBe('falls short')
  })

  it('a bar must lie in concrete', () => {
    expect(one('bar-through', { barThrough: 'yes' }).verdict).toBe('meets')
    expect(one('bar-through', { barThrough: 'yes' }, { ...level, bars: null })).toMatchObject({
      verdict: 'falls short',
      why: 'no-bar-through',
    })
    expect(one('bar-through', { barThrough: 'yes' }, filled('dry-full-height')).verdict).toBe("can't be verified")
    expect(one('bar-through', { barThrough: 'yes' }, filled('flowable-fill'))).toMatchObject({
      verdict: 'falls short',
      why: 'bar-not-in-concrete',
    })
  })

  it('treatment may be stronger than drawn', () => {
    expect(one('treatment', { treatment: 'UC4A' }).verdict).toBe('meets')
    expect(one('treatment', { treatment: 'UC4C' }).verdict).toBe('falls short')
  })

  it('frost of the drawing must be passed, and a site that freezes deeper is told', () => {
    expect(one('frost', { frostDepth: inch(42) }).verdict).toBe('meets')
    expect(one('frost', { frostDepth: inch(60) })).toMatchObject({ verdict: 'falls short', why: 'above-drawn-frost' })
    const site = one('frost', { frostDepth: inch(36) })
    expect(site).toMatchObject({ verdict: 'falls short', why: 'site-freezes-deeper' })
    close(fromSI(number(site, 'site-frost'), 'in'), 6, { abs: 1e-9, rel: 0 })
  })

  it('a top that ends below the ground on the uphill side is not full height', () => {
    const low = { ...level, top: { ...level.top, rim: inch(-2) } }
    close(fromSI(number(one('encasement', { encasement: 'yes' }, low), 'unencased-length'), 'in'), -2, { abs: 1e-9, rel: 0 })
  })
})

describe('[D7] every kind and every drawing', () => {
  const full: Callout = {
    ...calloutFields.first,
    diameter: inch(18),
    depth: inch(48),
    strength: psi(3000),
    mixed: 'yes',
    encasement: 'yes',
    barThrough: 'yes',
    barSize: '#5',
    section: '6x6',
    treatment: 'UC4B',
    bracket: 'no',
    uplift: lb(800),
    frostDepth: inch(42),
    soil: 'sand',
  }

  it.each(fillKinds.map((kind) => kind.id))('%s has a verdict on each item, with words', (id) => {
    const { items, checked } = check(full, filled(id))
    expect(checked).toBe(calloutItemIds.length)
    for (const item of items) {
      expect(item.verdict).not.toBe('not on the drawing')
      expect(item.verify.length).toBeGreaterThan(0)
    }
    const open = items.filter((item) => item.verdict === "can't be verified").map((item) => item.id)
    expect(open.includes('strength')).toBe(id.startsWith('dry-'))
  })

  it('names only words that are there, zones that are there and finite numbers', () => {
    let seen = 0
    fc.assert(
      fc.property(arbitraryPier(), ({ spec }) => {
        const result = derivePier({ ...spec, callout: { ...full, ...spec.callout } })
        const zones = new Set(result.zones.map((zone) => zone.id))
        for (const item of result.callout?.items ?? []) {
          seen++
          expect(Object.hasOwn(wordsOf('drawing').why, item.why), item.why).toBe(true)
          for (const key of item.verify) expect(Object.hasOwn(wordsOf('drawing').verify, key), key).toBe(true)
          for (const what of item.consequences) {
            expect(Object.hasOwn(wordsOf('drawing').consequences, what.id), what.id).toBe(true)
            expect(Number.isFinite(what.value)).toBe(true)
          }
          for (const value of [item.drawn, item.set]) {
            if (value?.as === 'word') expect(Object.hasOwn(wordsOf('drawing').words, value.word), value.word).toBe(true)
            if (value?.as === 'choice') expect(wordsOf('choices')[value.path]?.[value.choice], value.path).toBeDefined()
            if (value?.as === 'number') expect(Number.isFinite(value.value)).toBe(true)
          }
          for (const zone of item.where) expect(zones.has(zone), zone).toBe(true)
        }
      }),
      { numRuns: 60, seed: 5 },
    )
    expect(seen).toBeGreaterThan(500)
  })
})
