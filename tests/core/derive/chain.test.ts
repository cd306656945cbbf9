import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { bracketKinds, fillKinds } from '../../../src/core/kinds/index.ts'
import type { LoadEstimate, PierSpec } from '../../../src/core/model/spec.ts'
import type { Check } from '../../../src/core/model/worked.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { setChoice } from '../../../src/core/spec/edit.ts'
import { loadFields } from '../../../src/core/spec/pier/loads.ts'
import { toSI } from '../../../src/core/units/factors.ts'
import { metres, pascals, radians, slope } from '../../../src/core/units/quantity.ts'
import { randomNumbers } from '../../../src/core/uncertainty/randomNumbers.ts'
import { close } from '../../close.ts'
import { soundDocument, soundPier } from '../../soundPier.ts'
import { checkOf, entered, foot, inch, plainPier, pound, stepOf } from './pierOf.ts'

const psi = (value: number) => pascals(toSI(value, 'psi'))
const links: ReadonlySet<Check['group']> = new Set(['uplift-post', 'uplift-connection', 'uplift-concrete'])
const w4: LoadEstimate = { ...loadFields.fields.estimate.first, flow: 'obstructed', roofAngle: radians(Math.atan(4 / 12)) }

const filled = (kind: string): PierSpec => {
  const chosen = setChoice(soundDocument, 'fill.kind', kind)
  return chosen.ok ? chosen.value.spec : expect.fail(kind)
}
const bracketed = (kind: string, rating: number | null): PierSpec => {
  const chosen = setChoice({ ...soundDocument, spec: filled('mixed-bracket-pier') }, 'support.bracket.kind', kind)
  const { spec } = chosen.ok ? chosen.value : expect.fail(kind)
  if (spec.support.kind !== 'bracket') return expect.fail('no bracket')
  const bracket = { ...spec.support.bracket, embedment: inch(16), rating: rating === null ? null : pound(rating) }
  return { ...spec, support: { ...spec.support, bracket } }
}

describe('[C6] the load path of the reference held against its wind, end to end', () => {
  /**
   * 6x6 southern pine No.2, 18 in pier, 2,500 psi, Grade 60 #5 bar 4 in above the post's end, under W4's estimate of 2,525 lb. The post stands
   * 15 in over the bottom, so that upright bars reach the 16 in that they need below the bar.
   */
  const example: PierSpec = {
    ...soundPier,
    support: { kind: 'embedded', foot: inch(15) },
    site: { ...defaultSpec.site, slope: slope(0) },
    hole: { ...defaultSpec.hole, diameter: inch(18) },
    concrete: { ...defaultSpec.concrete, strength: psi(2500) },
    bars: { size: '#5', count: 1, aboveFoot: inch(4), spacing: inch(4), length: inch(12), grade: '60', coating: 'galvanised' },
    loads: { entered: null, estimate: w4 },
  }
  it.each([
    ['post-net-tension', 0.11],
    ['post-tear-out', 0.43],
    ['bar-through-post', 0.87],
    ['bar-shear', 0.19],
    ['concrete-breakout', 0.43],
  ])('%s: %s, as printed', (id, ratio) => close(checkOf(derivePier(example), id).ratio ?? Number.NaN, ratio, { abs: 0.0051, rel: 0 }))

  it('a #4 bar: 1.24', () => {
    const bars = example.bars ?? expect.fail('a bar')
    const { ratio } = checkOf(derivePier({ ...example, bars: { ...bars, size: '#4' } }), 'bar-through-post')
    close(ratio ?? Number.NaN, 1.24, { abs: 0.0051, rel: 0 })
  })
  it('the chain holds as much as its least link, the ground here', () => {
    const { uplift, demand, checks } = derivePier(example)
    const least = Math.min(
      ...checks.filter((one) => links.has(one.group) || one.id === uplift.soil).map((one) => one.allowable?.value ?? 0),
    )
    expect(uplift.allowable).toBe(least)
    close(uplift.ratio ?? Number.NaN, (demand.uplift?.value ?? 0) / least, { abs: 0, rel: 1e-12 })
    expect(uplift.governing).toBe('friction-and-weight')
  })
})

describe('[C7] a ratio only where the whole chain may be counted', () => {
  it.each(fillKinds.map((kind) => kind.id))('%s', (kind) => {
    const { checks, uplift } = derivePier({ ...filled(kind), loads: entered({ uplift: pound(800) }) })
    const chain = checks.filter((check) => links.has(check.group) || check.id === uplift.soil)
    expect(chain.every((check) => check.demand !== undefined)).toBe(true)
    const isWhole = uplift.uncounted.length === 0
    expect(chain.every((check) => (check.ratio !== undefined) === isWhole)).toBe(true)
    expect(uplift.ratio === null).toBe(!isWhole)
    // A mechanism that is not in use is held against nothing.
    for (const check of checks)
      if (check.group === 'uplift-soil' && check.id !== uplift.soil) expect([check.ratio, check.demand]).toEqual([undefined, undefined])
  })

  it('without a load no link has a demand but the one that carries what hangs below it', () => {
    const { checks, uplift } = derivePier(defaultSpec)
    expect(uplift.ratio).toBeNull()
    const asked = checks.filter((check) => check.group.startsWith('uplift') && check.demand)
    expect(asked.map((check) => check.id)).toEqual(['concrete-tension'])
  })
})

describe('[C8] what may be counted', () => {
  const cores = (first: number, second: number, third: number) => ({ first: psi(first), second: psi(second), third: psi(third) })
  const dry = filled('dry-full-height')
  const cored = (taken: ReturnType<typeof cores>, strength = 6000): PierSpec => ({
    ...dry,
    concrete: { ...dry.concrete, strength: psi(strength), cores: taken },
  })

  it('a dry pour can’t be verified, and says what would be lost if it parted', () => {
    const result = derivePier({ ...dry, site: { ...dry.site, frostDepth: metres(0) } })
    expect(result.uplift).toMatchObject({ allowable: null, ratio: null })
    const part = checkOf(result, 'concrete-tension')
    expect(part).toMatchObject({ counted: 'not counted', allowable: null, why: 'strength-of-dry-mix' })
    const steps = ['parting-level', 'weight-below-plane', 'friction-below-plane'].map((id) => stepOf(part, id).value)
    for (const value of steps) expect(value).toBeGreaterThan(0)
    close(part.demand?.value ?? Number.NaN, (steps[1] ?? 0) + (steps[2] ?? 0), { abs: 1e-9, rel: 0 })
  })
  it('without a bar it parts at the end of the post', () => {
    const part = checkOf(derivePier({ ...dry, bars: null }), 'concrete-tension')
    const { hole, support } = dry
    close(stepOf(part, 'parting-level').value, hole.depth - (support.kind === 'embedded' ? support.foot : 0), { abs: 1e-12, rel: 0 })
    expect(derivePier({ ...defaultSpec, bars: null }).checks.some((check) => check.id === 'concrete-tension')).toBe(false)
  })
  it('cores of ACI’s own example, 84.9 percent read as 85, let an engineer count it', () => {
    const result = derivePier(cored(cores(4940, 4970, 5370)))
    expect(result.uplift.uncounted).toEqual([])
    expect(result.uplift.allowable).toBeGreaterThan(0)
    for (const id of ['friction-and-weight', 'bar-through-post', 'concrete-tension', 'concrete-breakout'])
      expect(checkOf(result, id).counted).not.toBe('not counted')
    expect(checkOf(result, 'bar-through-post')).toMatchObject({ counted: "engineer's judgement", why: 'cores-not-below-limits' })
    expect(checkOf(result, 'cores-mean').ratio).toBe(1)
    close(stepOf(checkOf(result, 'cores-mean'), 'cores-mean-exact').value, 0.849, { abs: 0.0005, rel: 0 })
  })
  it('one weak core, and it can’t be verified again', () => {
    const result = derivePier(cored(cores(4470, 6000, 6000)))
    expect(checkOf(result, 'cores-mean').ratio).toBeLessThanOrEqual(1)
    expect(checkOf(result, 'cores-each').ratio).toBe(1)
    const weaker = derivePier(cored(cores(4460, 6000, 6000)))
    expect(checkOf(weaker, 'cores-each').ratio).toBeGreaterThan(1)
    expect(weaker.uplift.allowable).toBeNull()
  })
  it('cores count what mixed concrete of the same pier would, and no more', () => {
    const mixed = derivePier({ ...cored(cores(6000, 6000, 6000)), fill: { kind: 'mixed-full-height' } })
    const spoken = derivePier(cored(cores(6000, 6000, 6000)))
    close(checkOf(spoken, 'bar-through-post').allowable?.value ?? 0, checkOf(mixed, 'bar-through-post').allowable?.value ?? 1, {
      abs: 0,
      rel: 1e-12,
    })
    expect(checkOf(spoken, 'friction-and-weight').allowable?.value).toBeLessThanOrEqual(
      checkOf(mixed, 'friction-and-weight').allowable?.value ?? 0,
    )
  })
  it('cores change nothing for a bag at the foot, which has no place to take three from', () => {
    const bag = filled('dry-bag-at-foot')
    const taken = { ...bag, concrete: { ...bag.concrete, cores: cores(6000, 6000, 6000) } }
    expect(derivePier(taken).uplift.allowable).toBeNull()
  })

  it.each(bracketKinds.map((kind) => kind.id))('%s: a rating governs bolts and anchorage and is the user’s', (kind) => {
    const result = derivePier(bracketed(kind, 1234))
    for (const id of ['bracket-bolts', 'concrete-breakout']) {
      const check = checkOf(result, id)
      expect(check).toMatchObject({ counted: 'counted', why: 'rating-entered-by-user' })
      expect(check.sources).toContain('user')
      expect(check.allowable?.id).toBe('bracket-rating')
      close(check.allowable?.value ?? Number.NaN, pound(1234), { abs: 1e-9, rel: 0 })
      // What would be worked out of bolts or concrete stays in sight.
      expect(check.worked.length).toBeGreaterThan(1)
    }
  })
  it('anchors set after the pour stay out without a rating', () => {
    const anchored = bracketKinds.find((kind) => kind.anchorage === 'anchored after curing') ?? expect.fail('no such bracket')
    expect(checkOf(derivePier(bracketed(anchored.id, null)), 'concrete-breakout')).toMatchObject({
      counted: 'not counted',
      why: 'anchors-need-evaluation',
    })
    expect(derivePier(bracketed(anchored.id, null)).uplift.allowable).toBeNull()
    expect(derivePier(bracketed(anchored.id, 1234)).uplift.allowable).not.toBeNull()
  })
})

describe('[C9] what hangs below the weak level of a pier', () => {
  it('by hand: 24 in, bar 2 ft up, 145 pcf; friction of the lower bound from there to the bottom', () => {
    const bars = plainPier.bars ?? expect.fail('a bar')
    const pier: PierSpec = {
      ...plainPier,
      support: { kind: 'embedded', foot: foot(1) },
      bars: { ...bars, aboveFoot: foot(1) },
      verticalBars: soundPier.verticalBars,
    }
    const part = checkOf(derivePier(pier), 'concrete-tension')
    close(stepOf(part, 'parting-level').value, foot(3), { abs: 1e-12, rel: 0 })
    // Post from 1 ft up: one foot of 5.5 x 5.5 in is wood.
    close(stepOf(part, 'weight-below-plane').value, pound(145 * (2 * Math.PI - (5.5 / 12) ** 2)), { abs: 0, rel: 1e-9 })
    // beta (1 - sin 30) tan 30 = 0.28868, mean stress 119 pcf x 4 ft, over 2 pi x 2 ft, half of it with wind.
    close(stepOf(part, 'friction-below-plane').value, pound((0.5 * Math.tan(Math.PI / 6) * 119 * 4 * 2 * Math.PI * 2) / 2), {
      abs: 0,
      rel: 1e-6,
    })
    close(part.ratio ?? Number.NaN, (part.demand?.value ?? 0) / (part.allowable?.value ?? 1), { abs: 0, rel: 1e-12 })
  })
  it('nothing is left below a bar deeper than the counted length but weight', () => {
    const frost = { ...plainPier, site: { ...plainPier.site, frostDepth: foot(6) } }
    const part = checkOf(derivePier(frost), 'concrete-tension')
    expect(part.worked.some((one) => one.id === 'friction-below-plane')).toBe(false)
    close(part.demand?.value ?? Number.NaN, stepOf(part, 'weight-below-plane').value, { abs: 1e-9, rel: 0 })
  })
  it('a bell below it pulls with its soil', () => {
    const belled: PierSpec = {
      ...plainPier,
      hole: { ...plainPier.hole, bell: { diameter: inch(36), height: inch(10) } },
      judgement: { mechanism: 'cone-over-ledge', reason: 'told by the engineer' },
      bars: plainPier.bars && { ...plainPier.bars, aboveFoot: foot(2) },
    }
    const part = checkOf(derivePier(belled), 'concrete-tension')
    expect(stepOf(part, 'soil-held-below-plane').value).toBe(
      stepOf(checkOf(derivePier(belled), 'cone-over-ledge'), 'cone-soil-weight').value,
    )
  })
})

describe('[C23] what carries a pull through the concrete', () => {
  const tension = (spec: PierSpec) => checkOf(derivePier(spec), 'concrete-tension')
  const upright = soundPier.verticalBars ?? expect.fail('upright bars')
  const raised = (up: number, bars: PierSpec['verticalBars'] = upright): PierSpec => ({
    ...plainPier,
    bars: plainPier.bars && { ...plainPier.bars, aboveFoot: inch(up) },
    support: { kind: 'embedded', foot: inch(6) },
    verticalBars: bars,
  })
  const inches = (check: Check, id: string) => stepOf(check, id).value / inch(1)

  it('plain concrete carries nothing that counts, so the chain has no number', () => {
    expect(tension(raised(20, null))).toMatchObject({ counted: 'not counted', why: 'plain-concrete-tension', allowable: null })
    expect(derivePier(raised(20, null)).uplift).toMatchObject({ allowable: null, uncounted: ['concrete-tension'] })
  })
  it('No. 4, Grade 60, 3,500 psi ask for 20.28 in by hand on both sides; a share of it counts for nothing', () => {
    const grade60 = { ...upright, grade: '60' } as const
    const short = tension(raised(10, grade60))
    expect(short).toMatchObject({ counted: 'not counted', why: 'vertical-bars-too-short', allowable: null })
    close(inches(short, 'development-straight'), (60_000 * 0.5) / (25 * Math.sqrt(3500)), { abs: 1e-6, rel: 0 })
    close(inches(short, 'bars-reach-below'), 6 + 10 - 3, { abs: 1e-9, rel: 0 })
    expect(tension(raised(17.2, grade60)).counted).toBe('not counted')
    expect(tension(raised(17.3, grade60))).toMatchObject({ counted: 'counted', why: 'vertical-bars-carry' })
  })
  it('never under 12 in, whatever the bar: No. 3, Grade 40 asks for 10.1 in by the table', () => {
    const thin = { ...upright, size: '#3', grade: '40' } as const
    expect(inches(tension(raised(8, thin)), 'development-straight')).toBeCloseTo(12, 9)
    expect([tension(raised(8.9, thin)).counted, tension(raised(9.1, thin)).counted]).toEqual(['not counted', 'counted'])
  })
  it('four No. 4 at 24 ksi hold 19,200 lb by hand', () => {
    close(tension(raised(20)).allowable?.value ?? Number.NaN, pound(4 * 0.2 * 24_000), { abs: 1, rel: 0 })
  })
  it('bars closer than two diameters, or with less cover than one, ask for half as much again', () => {
    const crowded = { ...upright, size: '#8', count: 12, cover: inch(8) } as const
    const asked = (bars: typeof upright) => inches(tension(raised(20, bars)), 'development-straight')
    close(asked(crowded), 1.5 * asked({ ...crowded, count: 4 }), { abs: 1e-6, rel: 0 })
  })
})

describe('[C24] a method counts within its range alone', () => {
  const withStrength = (spec: PierSpec, value: number): PierSpec => ({ ...spec, concrete: { ...spec.concrete, strength: psi(value) } })
  it.each(['bar-through-post', 'concrete-breakout', 'concrete-tension'])('%s: from 2,500 psi up', (id) => {
    expect(checkOf(derivePier(withStrength(soundPier, 2500)), id).counted).not.toBe('not counted')
    for (const weak of [1000, 2490])
      expect(checkOf(derivePier(withStrength(soundPier, weak)), id)).toMatchObject({
        counted: 'not counted',
        why: 'concrete-below-code',
        allowable: null,
      })
  })
  it('hooked legs of a bracket too', () => {
    const legs = (value: number) => checkOf(derivePier(withStrength(bracketed('bar-legs', null), value)), 'bracket-legs-hold')
    expect([legs(2500).counted, legs(2490).counted]).toEqual(['counted', 'not counted'])
  })
})

describe('[C25] a bell never lowers what a pier holds', () => {
  const random = randomNumbers(20_261_128)
  const between = (low: number, high: number) => low + (high - low) * random()
  const soils = ['gravel', 'sand', 'clay', 'crystalline-rock'] as const
  const anySoil = () => ({ kind: 'presumptive', class: soils[Math.floor(between(0, 4))] ?? 'sand' }) as const
  const drawn = (): PierSpec => {
    const diameter = inch(between(16, 30))
    const depth = inch(between(48, 100))
    return {
      ...soundPier,
      site: {
        ...soundPier.site,
        slope: slope(between(0, 0.15)),
        soil: anySoil(),
        lower: random() < 0.3 ? { from: inch(between(12, 60)), soil: anySoil() } : null,
        frostDepth: inch(between(0, 48)),
        waterTable: random() < 0.3 ? inch(between(6, 90)) : null,
        blows: random() < 0.3 ? Math.round(between(4, 40)) : null,
      },
      hole: { ...soundPier.hole, diameter, depth },
      bars: soundPier.bars && { ...soundPier.bars, aboveFoot: inch(between(12, 24)), length: metres(diameter - inch(6)) },
      spacing: random() < 0.2 ? inch(between(60, 100)) : null,
    }
  }
  const belled = (spec: PierSpec): PierSpec => ({
    ...spec,
    hole: {
      ...spec.hole,
      bell: { diameter: metres(spec.hole.diameter * between(1.1, 2)), height: metres(spec.hole.depth * between(0.1, 0.4)) },
    },
  })

  it('of 500 piers: not one holds less, or can no longer be verified, and many hold more', () => {
    let counted = 0
    let more = 0
    for (let i = 0; i < 500; i++) {
      const plain = drawn()
      const before = derivePier(plain).uplift.allowable
      const wide = belled(plain)
      const after = derivePier(wide).uplift
      if (before === null) continue
      counted++
      expect(after.allowable, JSON.stringify(wide.hole)).not.toBeNull()
      expect(after.allowable ?? 0, JSON.stringify(wide.hole)).toBeGreaterThanOrEqual(before * (1 - 1e-9))
      if ((after.allowable ?? 0) > before * 1.05) more++
    }
    expect(counted).toBeGreaterThan(300)
    expect(more).toBeGreaterThan(50)
  })

  const pier: PierSpec = { ...soundPier, site: { ...soundPier.site, slope: slope(0), frostDepth: metres(0) } }
  const withBell = (height: number): PierSpec => ({ ...pier, hole: { ...pier.hole, bell: { diameter: inch(32), height: inch(height) } } })
  it('its neck is a link of its own, needed where the ground over it is what is counted', () => {
    const short = derivePier(withBell(10))
    expect(checkOf(short, 'bell-neck')).toMatchObject({
      counted: 'not counted',
      why: 'vertical-bars-too-short',
      where: ['concrete', 'vertical-bars'],
    })
    expect(short.uplift.soil).toBe('friction-and-weight')
    expect(checkOf(short, 'friction-and-weight').why).toBe('bell-counted-as-shaft')
    expect(checkOf(short, 'bell-neck').ratio).toBeUndefined()
    const reached = derivePier(withBell(16))
    expect(checkOf(reached, 'bell-neck')).toMatchObject({ counted: 'counted', why: 'vertical-bars-carry' })
  })
  it('who counts on the ground over a bell whose neck nobody can verify has no number', () => {
    const judgement = { mechanism: 'cone-over-ledge', reason: 'told by the engineer' } as const
    expect(derivePier({ ...withBell(10), judgement }).uplift).toMatchObject({ allowable: null, uncounted: ['bell-neck'] })
    const whole = derivePier({ ...withBell(16), judgement })
    expect(whole.uplift.uncounted).toEqual([])
    const neck = checkOf(whole, 'bell-neck')
    expect(neck.demand?.value).toBeGreaterThan(stepOf(neck, 'weight-below-plane').value)
  })
})
