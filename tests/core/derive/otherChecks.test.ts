import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { setChoice } from '../../../src/core/spec/edit.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { fromSI, toSI } from '../../../src/core/units/factors.ts'
import { metres, pascals, pressureGradient, slope } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { checkOf, entered, figure, foot, inch, plainPier, pound, stepOf } from './pierOf.ts'

/** Hand sheets computed for this project from the sections that are named; ids only tell the cases apart. */
const lateral = (feet: number, pounds: number) => entered({ lateral: pound(pounds), lateralHeight: foot(feet) })
const soil = (site: Partial<PierSpec['site']>): PierSpec['site'] => ({ ...plainPier.site, ...site })
/** A soil of the user's, sand but for what is given. */
const user = (values: Readonly<{ bearing?: number; side?: number }>): PierSpec['site']['soil'] => ({
  kind: 'user',
  unitWeight: toSI(110, 'pcf') as never,
  frictionAngle: toSI(30, 'deg') as never,
  cohesion: pascals(0),
  allowableBearing: pascals(toSI(values.bearing ?? 2000, 'psf')),
  lateral: pressureGradient(toSI(values.side ?? 150, 'psf/ft')),
  sideFriction: pascals(0),
})

describe('[C2] sideways, by the exact root of IBC Equation 18-1 and its kin', () => {
  const w27 = { ...plainPier, loads: lateral(6, 800) }
  const needed = (spec: PierSpec, step = 'needed-embedment-as-tabulated') => figure(spec, 'lateral-embedment', step, 'ft')

  it('W2.7 and W2.8: 800 lb at 6 ft asks for 6.202 ft, 4.724 with twice the value', () => {
    close(needed(w27), 6.202, { abs: 0.0005, rel: 0 })
    close(needed(w27, 'needed-embedment-doubled'), 4.724, { abs: 0.0005, rel: 0 })
  })
  it.each([
    [100, 7.297],
    [200, 5.535],
  ])('W2.8: %i psf/ft asks for %s ft', (side, feet) => {
    close(needed({ ...w27, site: soil({ soil: user({ side }) }) }), feet, { abs: 0.0005, rel: 0 })
  })
  it('W2.9: 5 ft allow 462.9 lb, 925.8 lb doubled; the one chosen is held against the load', () => {
    const at = (ground: PierSpec['sideways']['ground']) =>
      checkOf(derivePier({ ...w27, sideways: { ground, top: 'free' } }), 'lateral-embedment')
    const allowed = (value: number | undefined, want: number) => close(fromSI(value ?? Number.NaN, 'lb'), want, { abs: 0.05, rel: 0 })
    allowed(at('as-tabulated').allowable?.value, 462.9)
    allowed(stepOf(at('as-tabulated'), 'allowable-lateral-doubled').value, 925.8)
    allowed(at('doubled').allowable?.value, 925.8)
    close(at('doubled').ratio ?? Number.NaN, 800 / 925.8, { abs: 1e-4, rel: 0 })
  })
  it('W2.3: 480 lb at 5 ft on an 18 in pier in 100 psf/ft, almost 6.5 ft as a forum has it', () => {
    const sign = { ...w27, hole: { ...w27.hole, diameter: inch(18) }, site: soil({ soil: user({ side: 100 }) }), loads: lateral(5, 480) }
    close(needed(sign), 6.44, { abs: 0.0005, rel: 0 })
  })
  it('W8.3: on 1 in 3 the height grows by r s; 4.782 ft below the downhill edge, 5.116 ft on the axis', () => {
    const steep = { ...w27, site: soil({ slope: slope(1 / 3) }), sideways: { ground: 'doubled', top: 'free' } } as const
    close(needed(steep, 'needed-embedment-doubled'), 4.782, { abs: 0.0005, rel: 0 })
    close(needed(steep, 'needed-depth-at-axis'), 5.116, { abs: 0.0005, rel: 0 })
    expect(checkOf(derivePier(steep), 'lateral-embedment').counted).toBe("engineer's judgement")
  })
  it('W8.3: a foot of topsoil counts for nothing: 4.894 ft below it, 5.894 ft in all', () => {
    const soft = { ...w27, site: soil({ topsoil: foot(1) }), sideways: { ground: 'doubled', top: 'free' } } as const
    close(needed(soft, 'needed-embedment-doubled'), 4.894, { abs: 0.0005, rel: 0 })
    close(needed(soft, 'needed-depth-at-axis'), 5.894, { abs: 0.0005, rel: 0 })
  })
  it('a foot of frost left out gives what a foot of topsoil would, and the check does not use it', () => {
    const of = (site: Partial<PierSpec['site']>) => checkOf(derivePier({ ...w27, site: soil(site) }), 'lateral-embedment')
    const cold = of({ frostDepth: foot(1) })
    const soft = of({ topsoil: foot(1) })
    close(stepOf(cold, 'allowable-lateral-below-frost').value, soft.allowable?.value ?? Number.NaN, { abs: 0, rel: 1e-12 })
    expect(cold.allowable?.value).toBe(of({}).allowable?.value)
  })
  it('W2.10: held at grade, 4,800 lb-ft ask for 4.082 ft, and never with twice the value', () => {
    const held = (ground: PierSpec['sideways']['ground']) => ({ ...w27, sideways: { ground, top: 'held-at-grade' } }) as const
    for (const ground of ['as-tabulated', 'doubled'] as const) {
      close(figure(held(ground), 'lateral-held-at-grade', 'needed-embedment-held', 'ft'), 4.082, { abs: 0.0005, rel: 0 })
    }
    expect(checkOf(derivePier(held('doubled')), 'lateral-held-at-grade').why).toBe('held-so-not-doubled')
    // Allowed by the same form: P = k Lt b d^3 / (4.25 h) = 150 x 2 x 125 / 25.5.
    close(
      fromSI(checkOf(derivePier(held('doubled')), 'lateral-held-at-grade').allowable?.value ?? Number.NaN, 'lb'),
      (150 * 2 * 125) / 25.5,
      { abs: 0.01, rel: 0 },
    )
  })
  it('W2.13: Broms in sand of 30 degrees, 110 pcf: 3.969 ft, beside the rule of the code and never instead of it', () => {
    const sand = { ...w27, site: soil({ soil: user({}) }) }
    close(figure(sand, 'lateral-broms', 'broms-drained', 'ft'), 3.969, { abs: 0.0006, rel: 0 })
    expect(checkOf(derivePier(sand), 'lateral-broms').counted).toBe("engineer's judgement")
  })
  it('W2.13: Broms in clay of 1,000 psf: 5.191 ft', () => {
    const clay = { ...user({}), cohesion: pascals(toSI(1000, 'psf')) } as PierSpec['site']['soil']
    close(figure({ ...w27, site: soil({ soil: clay }) }, 'lateral-broms', 'broms-undrained', 'ft'), 5.191, { abs: 0.0006, rel: 0 })
  })
  it('the width is the hole in concrete, the post corner to corner in flowable fill, and soil thrown back is not counted', () => {
    const width = (fill: string) => {
      const chosen = setChoice({ ...defaultDocument, spec: w27 }, 'fill.kind', fill)
      const { spec } = chosen.ok ? chosen.value : expect.fail(fill)
      return checkOf(derivePier({ ...spec, hole: w27.hole, loads: w27.loads, site: w27.site }), 'lateral-embedment')
    }
    close(stepOf(width('mixed-full-height'), 'bearing-width').value, inch(24), { abs: 1e-12, rel: 0 })
    close(stepOf(width('flowable-fill'), 'bearing-width').value, Math.hypot(inch(5.5), inch(5.5)), { abs: 1e-12, rel: 0 })
    for (const fill of ['dry-bag-at-foot', 'mixed-collar', 'dry-full-height']) {
      expect(width(fill)).toMatchObject({ counted: 'not counted', allowable: null })
      expect(width(fill).ratio).toBeUndefined()
    }
  })
  it('water takes the value down and ground without a value holds nothing that can be told', () => {
    const wet = figure({ ...w27, site: soil({ waterTable: foot(2) }) }, 'lateral-embedment', 'allowable-lateral-as-tabulated', 'lb')
    expect(wet).toBeLessThan(462.9)
    expect(wet).toBeGreaterThan(0.5 * 462.9)
    const none = checkOf(derivePier({ ...w27, site: soil({ soil: user({ side: 0 }) }) }), 'lateral-embedment')
    expect(none).toMatchObject({ counted: 'not counted', why: 'no-sideways-value' })
  })
  it('asks for a load where there is none', () => {
    expect(checkOf(derivePier(plainPier), 'lateral-embedment')).toMatchObject({ allowable: null, why: 'needs-load-and-height' })
  })
})

describe('[C3] bearing, gross and net, IBC 1807.3.2.3', () => {
  it('W2.11: 3,200 lb on 12 in and 1,500 psf: 1,178 lb at the most, 4,074 psf under the load alone', () => {
    const deck: PierSpec = {
      ...plainPier,
      support: { kind: 'embedded', foot: inch(8) },
      hole: { ...plainPier.hole, diameter: inch(12) },
      site: soil({ soil: { kind: 'presumptive', class: 'clay' } as const }),
      loads: entered({ gravity: pound(3200) }),
    }
    expect(checkOf(derivePier({ ...deck, support: { kind: 'embedded', foot: inch(6) } }), 'bearing-gross').why).toBe(
      'concrete-too-thin-to-spread',
    )
    close(figure(deck, 'bearing-gross', 'bearing-capacity', 'lb'), 1178, { abs: 0.5, rel: 0 })
    const gross = stepOf(checkOf(derivePier(deck), 'bearing-gross'), 'gross-pressure')
    const weight = gross.inputs.find((term) => term.name === 'weight')?.value ?? Number.NaN
    close(fromSI(gross.value, 'psf') - fromSI(weight, 'lb') / (Math.PI / 4), 4074, { abs: 0.5, rel: 0 })
    expect(checkOf(derivePier(deck), 'bearing-gross').ratio).toBeGreaterThan(4074 / 1500)
  })
  it('W2.12: 24 in x 4 ft, 3,200 lb, 145 on 110 pcf: 1,599 psf gross, 1,159 net', () => {
    const chosen = setChoice(defaultDocument, 'fill.kind', 'mixed-bracket-pier')
    const { spec } = chosen.ok ? chosen.value : expect.fail('no bracket pier')
    const pier: PierSpec = {
      ...spec,
      site: soil({ soil: user({}) }),
      hole: { ...plainPier.hole, depth: foot(4) },
      top: { shape: 'flat', rise: metres(0), rim: metres(0), heaped: metres(0) },
      loads: entered({ gravity: pound(3200) }),
    }
    // The steel of the bracket weighs on it too: under 20 lb on 3.14 ft2.
    const gross = figure(pier, 'bearing-gross', 'gross-pressure', 'psf')
    expect(gross).toBeGreaterThan(1599)
    close(gross, 1599, { abs: 7, rel: 0 })
    close(gross - figure(pier, 'bearing-net', 'net-pressure', 'psf'), 440, { abs: 0.01, rel: 0 })
    expect(checkOf(derivePier(pier), 'bearing-net').counted).toBe("engineer's judgement")
  })
  it('a post that reaches the ground bears on its own end', () => {
    const onEnd = { ...plainPier, support: { kind: 'embedded', foot: metres(0) } as const }
    close(figure(onEnd, 'bearing-gross', 'bearing-area', 'in2'), 5.5 * 5.5, { abs: 1e-9, rel: 0 })
    const onPad = { ...onEnd, hole: { ...plainPier.hole, base: { material: 'concrete', thickness: inch(8) } as const } }
    const lifted = { ...onPad, support: { kind: 'embedded', foot: inch(8) } as const }
    close(figure(lifted, 'bearing-gross', 'bearing-area', 'ft2'), Math.PI, { abs: 1e-9, rel: 0 })
  })
  it('bears on the soil that is down there, and on no topsoil', () => {
    const lower = { from: foot(4), soil: { kind: 'presumptive', class: 'clay' } as const }
    close(figure({ ...plainPier, site: soil({ lower }) }, 'bearing-gross', 'bearing-value', 'psf'), 1500, { abs: 1e-9, rel: 0 })
    expect(checkOf(derivePier({ ...plainPier, site: soil({ topsoil: foot(5) }) }), 'bearing-gross')).toMatchObject({
      counted: 'not counted',
      why: 'bears-in-topsoil',
    })
  })
})

describe('[C4] frost: a depth to reach, and a warning that is never a verdict', () => {
  it('W6.1: 24 in x 6 ft, 42 in of frost in clay: 29,854 lb against weight and 3,927 lb of friction', () => {
    const cold: PierSpec = {
      ...plainPier,
      hole: { ...plainPier.hole, depth: foot(6) },
      site: soil({ frostDepth: inch(42), soil: { kind: 'presumptive', class: 'clay' } }),
    }
    close(figure(cold, 'frost-jacking', 'adfreeze-force', 'lb'), 29_854, { abs: 2, rel: 0 })
    close(figure(cold, 'frost-jacking', 'friction-below-frost', 'lb'), 3927, { abs: 0.5, rel: 0 })
    const check = checkOf(derivePier(cold), 'frost-jacking')
    expect(check).toMatchObject({ counted: "engineer's judgement", why: 'frost-jacking-is-a-warning' })
    expect(check.ratio).toBeUndefined()
    close(check.allowable?.value ?? Number.NaN, stepOf(check, 'pier-weight').value + stepOf(check, 'friction-below-frost').value, {
      abs: 1e-9,
      rel: 0,
    })
  })
  it('a post in soil thrown back is gripped on its own outline: 22 in, 8,711 lb', () => {
    const chosen = setChoice(defaultDocument, 'fill.kind', 'dry-bag-at-foot')
    const { spec } = chosen.ok ? chosen.value : expect.fail('no bag at the foot')
    close(figure({ ...spec, site: soil({ frostDepth: inch(42) }) }, 'frost-jacking', 'adfreeze-force', 'lb'), 8711, { abs: 2, rel: 0 })
  })
  it('no number for clean ground, and no check without frost', () => {
    const clean = soil({ frostDepth: inch(42), soil: { kind: 'presumptive', class: 'gravel' } })
    expect(checkOf(derivePier({ ...plainPier, site: clean }), 'frost-jacking')).toMatchObject({ counted: 'not counted', allowable: null })
    expect(derivePier(plainPier).checks.some((check) => check.id === 'frost-jacking')).toBe(false)
  })
})

describe('[C5] details, each against its own figure', () => {
  it('W5.1: a 6x6 on 24 in asks for 72 in to its neighbour', () => {
    const near = { ...plainPier, spacing: inch(60) }
    close(figure(near, 'pier-spacing', 'least-post-spacing', 'in'), 72, { abs: 1e-9, rel: 0 })
    close(checkOf(derivePier(near), 'pier-spacing').ratio ?? Number.NaN, 72 / 60, { abs: 1e-12, rel: 0 })
  })
  it('W3.3 and W8.4: a 12 ft slope of 1 in 2 asks for 4 ft; the base of a 5 ft pier has 9 ft', () => {
    const bank = { ...plainPier, site: soil({ slope: slope(0.5), slopeHeight: foot(12) }) }
    close(figure(bank, 'setback-from-slope', 'setback-asked', 'ft'), 4, { abs: 1e-9, rel: 0 })
    close(figure(bank, 'setback-from-slope', 'distance-to-daylight', 'ft'), 9, { abs: 1e-9, rel: 0 })
    expect(checkOf(derivePier({ ...bank, site: { ...bank.site, slopeHeight: null } }), 'setback-from-slope').counted).toBe('not counted')
    expect(derivePier({ ...bank, site: { ...bank.site, slope: slope(1 / 3) } }).checks.some((one) => one.id === 'setback-from-slope')).toBe(
      false,
    )
  })
  it('room for concrete round a post: 11.78 in for a 6x6, 13.30 in for a 6x8', () => {
    close(figure(plainPier, 'post-clearance', 'least-hole-for-concrete', 'in'), 11.78, { abs: 0.005, rel: 0 })
    const wide = { ...plainPier, post: { ...plainPier.post, section: '6x8' as const } }
    close(figure(wide, 'post-clearance', 'least-hole-for-concrete', 'in'), 13.3, { abs: 0.005, rel: 0 })
  })
  it('a bar that just keeps its cover meets it, to the last bit', () => {
    const bars = plainPier.bars ?? expect.fail('a pier with a bar')
    const fits = { ...plainPier, bars: { ...bars, length: inch(18) } }
    expect(checkOf(derivePier(fits), 'bar-end-cover').ratio).toBe(1)
    close(figure(fits, 'bar-end-cover', 'longest-bar', 'in'), 18, { abs: 1e-9, rel: 0 })
    expect(checkOf(derivePier({ ...fits, bars: { ...bars, length: inch(19) } }), 'bar-end-cover').ratio).toBeGreaterThan(1)
    close(figure(fits, 'bar-outside-post', 'bar-outside-there', 'in'), 6.25, { abs: 1e-9, rel: 0 })
  })
  it.each([
    ['negligible', 2500],
    ['moderate', 3000],
    ['severe', 3000],
  ] as const)('concrete above the ground in %s weather: %i psi; below the ground 2,500', (weathering, psi) => {
    const out = { ...plainPier, site: soil({ weathering }) }
    close(figure(out, 'strength-weather', 'strength-weather-least', 'psi'), psi, { abs: 1e-6, rel: 0 })
    const below = { ...out, top: { shape: 'flat', rise: metres(0), rim: inch(-3), heaped: metres(0) } as const }
    close(figure(below, 'strength-weather', 'strength-weather-least', 'psi'), 2500, { abs: 1e-6, rel: 0 })
  })
  it('treatment and coating are choices: UC4B in the ground, galvanised or stainless in treated wood', () => {
    const of = (treatment: PierSpec['post']['treatment'], coating: 'plain' | 'galvanised' | 'stainless') => {
      const bars = plainPier.bars ?? expect.fail('a pier with a bar')
      return derivePier({ ...plainPier, post: { ...plainPier.post, treatment }, bars: { ...bars, coating } })
    }
    const choice = (result: ReturnType<typeof of>, id: string) => checkOf(result, id).choice
    expect(choice(of('UC4A', 'plain'), 'treatment-class')).toEqual({ path: 'post.treatment', is: 'UC4A', asked: 'UC4B', reached: false })
    expect(choice(of('UC4C', 'plain'), 'treatment-class')?.reached).toBe(true)
    expect(choice(of('UC4B', 'plain'), 'bar-in-treated-wood')?.reached).toBe(false)
    expect(choice(of('UC4B', 'stainless'), 'bar-in-treated-wood')?.reached).toBe(true)
    expect(of('untreated', 'plain').checks.some((check) => check.id === 'bar-in-treated-wood')).toBe(false)
  })
  it.each([
    ['irc-2012-2018', 6, 'stand-off-is-a-condition'],
    ['ibc-2012', 6, 'stand-off-needs-both'],
    ['ibc-2018', 8, 'stand-off-not-in-weather'],
  ] as const)('%s asks for %i in above earth', (code, inches, why) => {
    const chosen = setChoice(defaultDocument, 'fill.kind', 'mixed-bracket-pier')
    const { spec } = chosen.ok ? chosen.value : expect.fail('no bracket pier')
    const pier = { ...spec, code }
    close(figure(pier, 'stand-off-above-earth', 'stand-off-above-earth-least', 'in'), inches, { abs: 1e-9, rel: 0 })
    expect(checkOf(derivePier(pier), 'stand-off-above-earth').why).toBe(why)
  })
})

describe('[C22] bearing over concrete that has to spread the load', () => {
  const hole = (diameter: number, thick: number, change: Partial<PierSpec> = {}): PierSpec => ({
    ...plainPier,
    support: { kind: 'embedded', foot: inch(thick) },
    hole: { ...plainPier.hole, diameter: inch(diameter) },
    bars: null,
    loads: entered({ gravity: pound(3200) }),
    ...change,
  })
  const capacity = (spec: PierSpec) => figure(spec, 'bearing-gross', 'bearing-capacity', 'lb')
  const why = (spec: PierSpec) => checkOf(derivePier(spec), 'bearing-gross').why

  it('a post raised 1/2 in off the bottom of a 48 in hole carries what its own end does, 420 lb, and no 25,133', () => {
    for (const thick of [0, 0.5, 4, 7.5]) close(capacity(hole(48, thick)), (2000 * 30.25) / 144, { abs: 0.01, rel: 0 })
    expect([0, 0.5].map((thick) => why(hole(48, thick)))).toEqual(['post-stands-on-its-end', 'concrete-too-thin-to-spread'])
  })
  it('a 4 in pad in a 48 in hole is no footing either, and an 8 in one reaches 8 in beyond the post', () => {
    const pad = (inches: number) => hole(48, inches, { fill: { kind: 'granular-on-pad', pad: inch(inches) } })
    close(capacity(pad(4)), (2000 * 30.25) / 144, { abs: 0.01, rel: 0 })
    close(capacity(pad(8)), (2000 * (5.5 + 16) ** 2) / 144, { abs: 0.1, rel: 0 })
    expect(why(pad(8))).toBe('bears-on-what-spreads')
  })
  it('stiff ground stops the reach by bending: 12,000 psf on 10 in of 2,500 psi, h 8 in: 8 sqrt(50/133.3) = 4.90 in by hand', () => {
    const rock = hole(36, 10, {
      concrete: { ...plainPier.concrete, strength: pascals(toSI(2500, 'psi')) },
      site: soil({ soil: { kind: 'presumptive', class: 'crystalline-rock' } }),
    })
    close(figure(rock, 'bearing-gross', 'reach-by-bending', 'in'), 8 * Math.sqrt(50 / ((1.6 * 12_000) / 144)), { abs: 1e-6, rel: 0 })
    close(capacity(rock), (12_000 * (5.5 + 2 * 4.899) ** 2) / 144, { abs: 5, rel: 0 })
  })
  it('a bell spreads no farther beyond its shaft than it is high', () => {
    const belled = (height: number) =>
      hole(18, 24, { hole: { ...plainPier.hole, diameter: inch(18), bell: { diameter: inch(42), height: inch(height) } } })
    // Square of the shaft, 9 sqrt(pi) = 15.95 in, and a bell too low to be a footing; then 10 in beyond it; then all of 42 in.
    close(figure(belled(6), 'bearing-gross', 'bearing-area', 'in2'), Math.PI * 81, { abs: 1e-6, rel: 0 })
    close(figure(belled(10), 'bearing-gross', 'bearing-area', 'in2'), (9 * Math.sqrt(Math.PI) + 20) ** 2, { abs: 1e-6, rel: 0 })
    close(figure(belled(16), 'bearing-gross', 'bearing-area', 'in2'), Math.PI * 21 ** 2, { abs: 1e-6, rel: 0 })
  })
  it('more concrete under the post never carries less', () => {
    for (const diameter of [12, 20, 36, 48]) {
      const all = Array.from({ length: 80 }, (_, half) => capacity(hole(diameter, half / 2)))
      expect(all).toEqual([...all].sort((a, b) => a - b))
    }
  })
  it('the end of the post presses with 0.75 of the wood: 0.75 x 525 x 30.25 = 11,911 lb, and not at all on concrete below 2,500 psi', () => {
    const end = (psi: number) =>
      checkOf(derivePier(hole(24, 8, { concrete: { ...plainPier.concrete, strength: pascals(toSI(psi, 'psi')) } })), 'post-end-on-concrete')
    close(fromSI(end(2500).allowable?.value ?? Number.NaN, 'lb'), 11_911, { abs: 0.5, rel: 0 })
    close(end(2500).ratio ?? Number.NaN, 3200 / 11_911, { abs: 1e-4, rel: 0 })
    expect(end(2400)).toMatchObject({ counted: 'not counted', why: 'concrete-below-code' })
  })
  it('weak concrete and flowable fill spread nothing that counts', () => {
    const weak = hole(24, 12, { concrete: { ...plainPier.concrete, strength: pascals(toSI(2400, 'psi')) } })
    const flowable = hole(24, 12, { fill: { kind: 'flowable-fill' } })
    for (const spec of [weak, flowable]) {
      expect(checkOf(derivePier(spec), 'bearing-gross')).toMatchObject({
        counted: 'not counted',
        why: 'concrete-below-code',
        allowable: null,
      })
    }
  })
})

describe('[C24] a method counts within its range alone', () => {
  // IBC 1807.3.3: concrete around a post of 2,000 psi and more.
  it('the width of the hole bears sideways where the concrete around the post has 2,000 psi', () => {
    const pushed = (psi: number) =>
      derivePier({ ...plainPier, loads: lateral(5, 480), concrete: { ...plainPier.concrete, strength: pascals(toSI(psi, 'psi')) } })
    expect(checkOf(pushed(2000), 'lateral-embedment').counted).toBe('counted')
    expect(checkOf(pushed(1900), 'lateral-embedment')).toMatchObject({
      counted: 'not counted',
      why: 'concrete-around-post-too-weak',
      allowable: null,
    })
    expect(pushed(1900).checks.some((check) => check.id === 'lateral-broms')).toBe(false)
  })
})

describe('[C26] the hinge of a bracket passes no moment', () => {
  const chosen = setChoice(defaultDocument, 'fill.kind', 'mixed-bracket-pier')
  const { spec } = chosen.ok ? chosen.value : expect.fail('no bracket pier')
  const pushed = (feet: number) => derivePier({ ...spec, site: soil({}), loads: lateral(feet, 300) })

  it('a push 12 ft up has no number, by either method, and says whose call it is', () => {
    expect(checkOf(pushed(12), 'lateral-embedment')).toMatchObject({
      counted: 'not counted',
      why: 'hinge-passes-no-moment',
      allowable: null,
    })
    expect(pushed(12).checks.some((check) => check.id === 'lateral-broms')).toBe(false)
    const held = derivePier({
      ...spec,
      site: soil({}),
      loads: lateral(12, 300),
      sideways: { ground: 'as-tabulated', top: 'held-at-grade' },
    })
    expect(checkOf(held, 'lateral-held-at-grade')).toMatchObject({ counted: 'not counted', why: 'hinge-passes-no-moment' })
  })
  it('a push at the bracket reaches the pier as it is', () => {
    expect(checkOf(pushed(0.2), 'lateral-embedment')).toMatchObject({ counted: 'counted' })
    expect(checkOf(pushed(0.2), 'lateral-embedment').ratio).toBeGreaterThan(0)
  })
})
