import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { pierFrame } from '../../../src/core/derive/pierFrame.ts'
import { tableProperties } from '../../../src/core/derive/properties.ts'
import { studyLinks } from '../../../src/core/derive/uplift/chain.ts'
import { bracketKinds } from '../../../src/core/kinds/index.ts'
import type { Bracket, PierSpec } from '../../../src/core/model/spec.ts'
import type { Check } from '../../../src/core/model/worked.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { fromSI, toSI } from '../../../src/core/units/factors.ts'
import { metres, pascals, slope } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { checkOf, foot, inch, pound, stepOf } from './pierOf.ts'

const psi = (value: number) => pascals(toSI(value, 'psi'))
const record = (kind: Bracket['kind']) => bracketKinds.find((one) => one.id === kind) ?? expect.fail(kind)

/** A 24 in pier, 5 ft deep, of 3,000 psi concrete, with a bracket whose steel reaches `embedment` down. */
const pierWith = (kind: Bracket['kind'], embedment: number, change: Partial<Bracket> = {}): PierSpec => ({
  ...defaultSpec,
  site: { ...defaultSpec.site, slope: slope(0) },
  hole: { ...defaultSpec.hole, diameter: inch(24), depth: foot(5) },
  fill: { kind: 'mixed-bracket-pier' },
  support: { kind: 'bracket', bracket: { ...record(kind).defaults, embedment: inch(embedment), ...change }, standOff: metres(0.0254) },
  bars: null,
  concrete: { ...defaultSpec.concrete, strength: psi(3000) },
})
const legs = (spec: PierSpec): Check => checkOf(derivePier(spec), 'bracket-legs-hold')
const inches = (check: Check, id: string) => fromSI(stepOf(check, id).value, 'in')

describe('[C16] legs of a bracket in the concrete', () => {
  it('No. 4, Grade 60, 3,000 psi: straight 21.9 in, hooked 5.63 and so 6 in, headed 6 in, as the reference prints them', () => {
    const check = legs(pierWith('bar-legs', 12))
    close(inches(check, 'development-straight'), 21.9, { abs: 0.05, rel: 0 })
    close(inches(check, 'development-hook'), 6, { abs: 1e-9, rel: 0 })
    close(inches(check, 'development-head'), 6, { abs: 1e-9, rel: 0 })
  })
  it('two bars of 0.2 sq in at 24 ksi hold 9,600 lb where the hooks reach far enough: 4.8 kip each, as the reference prints it', () => {
    const check = legs(pierWith('bar-legs', 12))
    expect(check).toMatchObject({ counted: 'counted', why: 'legs-reach-far-enough' })
    close(fromSI(check.allowable?.value ?? Number.NaN, 'lb'), 9600, { abs: 0.01, rel: 0 })
    close(fromSI((check.allowable?.value ?? Number.NaN) / 2, 'kip'), 4.8, { abs: 1e-6, rel: 0 })
  })
  it('bars closer than six diameters ask for 1.6 times the length', () => {
    const spec = pierWith('bar-legs', 12)
    const narrow: PierSpec = { ...spec, post: { ...spec.post, section: '4x4' } }
    // 5.63 in x 1.6, ACI 318-19 25.4.3: psi_r.
    close(inches(legs(narrow), 'development-hook'), 5.63 * 1.6, { abs: 0.01, rel: 0 })
  })
  it('a hook that is not deep enough is not counted, and the chain has no number', () => {
    const short = pierWith('bar-legs', 5)
    expect(legs(short)).toMatchObject({ counted: 'not counted', why: 'legs-too-short', allowable: null })
    expect(derivePier(short).uplift).toMatchObject({ allowable: null, governing: null })
    expect(derivePier(short).uplift.uncounted).toContain('bracket-legs-hold')
    expect(legs(pierWith('bar-legs', 6)).counted).toBe('counted')
  })
  it.each(['side-plates', 'knife-plate'] as const)('%s: no code speaks of flat legs, however deep', (kind) => {
    for (const depth of [6, 12, 36]) {
      const check = legs(pierWith(kind, depth))
      expect(check).toMatchObject({ counted: 'not counted', why: 'flat-legs-outside-code', allowable: null })
      expect(check.worked.map((one) => one.id)).toEqual(['legs-embedment'])
    }
  })
  it('what is anchored later has no legs', () => {
    expect(derivePier(pierWith('base-plate', 6)).checks.some((check) => check.id === 'bracket-legs-hold')).toBe(false)
  })
  it.each(['bar-legs', 'side-plates', 'knife-plate'] as const)('%s: a rating stands in for it', (kind) => {
    const check = legs(pierWith(kind, 12, { rating: pound(1500) }))
    expect(check).toMatchObject({ counted: 'counted', why: 'rating-entered-by-user' })
    close(fromSI(check.allowable?.value ?? Number.NaN, 'lb'), 1500, { abs: 1e-6, rel: 0 })
  })
  it('deeper legs and stronger concrete never hold less, and the study of chances sees the same number', () => {
    for (const kind of bracketKinds.map((one) => one.id)) {
      let before = -1
      for (let depth = 4; depth <= 30; depth += 1) {
        const spec = pierWith(kind, depth)
        const check = derivePier(spec).checks.find((one) => one.id === 'bracket-legs-hold')
        const hold = studyLinks(pierFrame(spec), tableProperties(spec)).find((one) => one.id === 'bracket-legs-hold')
        expect(hold === undefined).toBe(check === undefined)
        expect(hold?.counting.counted).toBe(check?.counted)
        expect(hold?.allowable?.value ?? null).toBe(check?.allowable?.value ?? null)
        const value = check?.allowable?.value ?? -1
        expect(value).toBeGreaterThanOrEqual(before)
        before = value
      }
    }
    const strengths = [2500, 3000, 4000, 5000].map((value) => {
      const spec = pierWith('bar-legs', 12)
      return inches(legs({ ...spec, concrete: { ...spec.concrete, strength: psi(value) } }), 'development-straight')
    })
    expect(strengths).toEqual([...strengths].sort((a, b) => b - a))
  })
  describe('bars with another end', () => {
    const kind = record('bar-legs')
    const { legs: own } = kind
    const withEnd = (end: 'straight' | 'head', ask: () => void) => {
      if (own?.shape !== 'bar') return expect.fail('no bars')
      Object.assign(kind, { legs: { ...own, end } })
      try {
        ask()
      } finally {
        Object.assign(kind, { legs: own })
      }
    }
    it('straight: nothing where they are short, which no code counts; all of the steel from 21.9 in', () =>
      withEnd('straight', () => {
        expect(legs(pierWith('bar-legs', 12))).toMatchObject({ counted: 'not counted', why: 'legs-too-short', allowable: null })
        expect(legs(pierWith('bar-legs', 22))).toMatchObject({ counted: 'counted', allowable: { value: pound(9600) } })
        for (const depth of [6, 12, 30]) {
          const spec = pierWith('bar-legs', depth)
          const hold = studyLinks(pierFrame(spec), tableProperties(spec)).find((one) => one.id === 'bracket-legs-hold')
          expect(hold?.allowable?.value).toBe(legs(spec).allowable?.value)
        }
      }))
    it('headed: nothing under its length, all from it on', () =>
      withEnd('head', () => {
        expect(legs(pierWith('bar-legs', 5)).counted).toBe('not counted')
        expect(legs(pierWith('bar-legs', 6))).toMatchObject({ counted: 'counted', why: 'legs-reach-far-enough' })
      }))
  })
  it('the hook that is drawn is the one that is counted: 12 in down, 7 db from leg to end', () => {
    const { zones } = derivePier(pierWith('bar-legs', 12))
    const drawn = zones.find((zone) => zone.id === 'bracket-legs')
    if (drawn?.build !== 'placed') return expect.fail('no legs')
    const rods = drawn.solids.flatMap((solid) => (solid.kind === 'rod' ? [solid] : []))
    const lowest = Math.min(...rods.flatMap((one) => [one.from[1], one.to[1]])) - inch(0.25)
    const landing = Math.max(...rods.flatMap((one) => [one.from[1], one.to[1]])) - inch(1 - 0.25)
    // The bend is drawn with chords, which end a little above its lowest point.
    close(landing - lowest, inch(12), { abs: 5e-4, rel: 0 })
    close(Math.max(...rods.map((one) => Math.abs(one.to[2]))), inch(7 * 0.5), { abs: 1e-9, rel: 0 })
  })
})
