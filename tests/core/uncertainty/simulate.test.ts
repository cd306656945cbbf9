import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { fillKinds } from '../../../src/core/kinds/index.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { setChoice } from '../../../src/core/spec/edit.ts'
import { toSI } from '../../../src/core/units/factors.ts'
import { metres } from '../../../src/core/units/quantity.ts'
import { type Assumption, startingAssumptions } from '../../../src/core/uncertainty/assumptions.ts'
import { type Spread, valueAtShare } from '../../../src/core/uncertainty/distributions.ts'
import { asEntered, type InputId, inputsOf } from '../../../src/core/uncertainty/inputs.ts'
import { isAlwaysPossible, isPossible } from '../../../src/core/uncertainty/possible.ts'
import { chunk, simulate } from '../../../src/core/uncertainty/simulate.ts'
import type { SpreadOfUplift, Study } from '../../../src/core/uncertainty/sureResult.ts'
import { upliftSample } from '../../../src/core/uncertainty/upliftSample.ts'
import { close } from '../../close.ts'
import { soundPier } from '../../soundPier.ts'
import { countedPier } from './countedPier.ts'

const inch = (value: number) => metres(toSI(value, 'in'))
const study: Study = { samples: 2000, seed: 3 }
const spreadOf = (spec: PierSpec, assumptions = startingAssumptions, asked: Study = study): SpreadOfUplift => {
  const result = simulate(spec, assumptions, asked)
  if (result?.kind !== 'spread') throw new Error(`no spread but ${result?.kind}`)
  return result
}
const only = (ids: readonly InputId[]): readonly Assumption[] =>
  startingAssumptions.map((one) => ({ ...one, varies: ids.includes(one.id) }))
const withSpread = (id: InputId, spread: Spread): readonly Assumption[] =>
  startingAssumptions.map((one) => (one.id === id ? { ...one, spread } : one))
const total = (tallies: readonly Readonly<{ count: number }>[]): number => tallies.reduce((sum, { count }) => sum + count, 0)

describe('[N6] a study', () => {
  it('gives the same answer for the same seed, and another for another', () => {
    expect(spreadOf(soundPier)).toEqual(spreadOf(soundPier))
    expect(spreadOf(soundPier, startingAssumptions, { ...study, seed: 4 }).allowable).not.toEqual(spreadOf(soundPier).allowable)
  })

  it('counts every try once: with a number and a governing link, or without, and why', () => {
    fc.assert(
      fc.property(countedPier, fc.nat({ max: 1000 }), (spec, seed) => {
        const result = simulate(spec, startingAssumptions, { samples: 150, seed })
        if (result?.kind !== 'spread') {
          expect(result?.links.length).toBeGreaterThan(0)
          return
        }
        expect(result.allowable.length).toBe(total(result.governing))
        expect(total(result.governing) + total(result.without)).toBe(150)
        expect([...result.allowable].every(Number.isFinite)).toBe(true)
        expect(result.allowable).toEqual(result.allowable.slice().sort())
        if (result.histogram) expect(result.histogram.counts.reduce((sum, count) => sum + count, 0)).toBe(result.allowable.length)
      }),
      { numRuns: 120, seed: 31 },
    )
  })

  it('is told how far it is, and stops when told to', () => {
    const told: number[] = []
    simulate(soundPier, startingAssumptions, study, (done) => told.push(done))
    expect(told).toEqual([chunk, 2 * chunk, 3 * chunk])
    let looks = 0
    const stopped = simulate(
      soundPier,
      startingAssumptions,
      { samples: 200_000, seed: 1 },
      () => undefined,
      () => ++looks === 2,
    )
    expect(stopped).toBeNull()
    expect(looks).toBe(2)
  })

  it.each(fillKinds.map(({ id }) => id))('of %s has no spread where a link is not counted, and names the links', (id) => {
    const chosen = setChoice(defaultDocument, 'fill.kind', id)
    if (!chosen.ok) throw new Error('not built')
    const { uplift } = derivePier(chosen.value.spec)
    const result = simulate(chosen.value.spec, startingAssumptions, { samples: 200, seed: 1 })
    if (uplift.uncounted.length === 0) expect(result?.kind).toBe('spread')
    else expect(result).toEqual({ kind: 'unverified', links: uplift.uncounted })
  })

  it('with nothing that varies is the pier as entered, every time', () => {
    const { uplift } = derivePier(soundPier)
    const result = spreadOf(soundPier, only([]))
    expect(result.swings).toEqual([])
    expect(new Set(result.allowable).size).toBe(1)
    for (const value of [result.asEntered, result.allowable[0], result.quantiles?.low, result.quantiles?.high])
      close(value ?? Number.NaN, uplift.allowable ?? Number.NaN, { abs: 0, rel: 1e-12 })
  })

  it('with one input that varies follows the chain through it, quantile by quantile', () => {
    // The default pier holds by weight alone, so that more concrete always holds more: quantiles pass straight through.
    const result = spreadOf(soundPier, only(['hole-diameter']), { samples: 20_000, seed: 5 })
    const spread = startingAssumptions.find(({ id }) => id === 'hole-diameter')?.spread
    if (!spread || !result.quantiles) throw new Error('nothing to compare')
    const { low, middle, high } = result.quantiles
    for (const [got, share] of [
      [low, 0.05],
      [middle, 0.5],
      [high, 0.95],
    ] as const) {
      const at = (p: number) =>
        upliftSample(soundPier, { ...asEntered(), 'hole-diameter': valueAtShare(spread)(p) }).governing?.allowable?.value
      // Five standard errors of a share among 20,000.
      const slack = 5 * Math.sqrt((share * (1 - share)) / 20_000)
      expect(got).toBeGreaterThan(at(share - slack) ?? Number.NaN)
      expect(got).toBeLessThan(at(share + slack) ?? Number.NaN)
    }
  })

  it('switching one input off leaves the tries of the others alike', () => {
    const ids: readonly InputId[] = ['hole-diameter', 'concrete-weight']
    const fixed = spreadOf(soundPier, only(['hole-diameter']))
    const still = withSpread('concrete-weight', { kind: 'uniform', low: 1 - 1e-12, high: 1 + 1e-12 }).map((one) => ({
      ...one,
      varies: ids.includes(one.id),
    }))
    const almost = spreadOf(soundPier, still)
    fixed.allowable.forEach((value, i) => {
      close(almost.allowable[i] ?? Number.NaN, value, { abs: 0, rel: 1e-10 })
    })
  })
})

describe('[N7] the sense of a study', () => {
  it('what makes a pier stronger moves its range up', () => {
    const middle = (assumptions: readonly Assumption[]) => spreadOf(soundPier, assumptions).quantiles?.middle ?? Number.NaN
    const plain = middle(startingAssumptions)
    for (const [id, spread] of [
      ['hole-depth', { kind: 'uniform', low: inch(4), high: inch(6) }],
      ['hole-diameter', { kind: 'uniform', low: inch(2), high: inch(3) }],
      ['concrete-weight', { kind: 'uniform', low: 1.1, high: 1.15 }],
      ['soil-weight', { kind: 'uniform', low: 1.2, high: 1.3 }],
    ] as const)
      expect([id, middle(withSpread(id, spread)) > plain]).toEqual([id, true])
  })

  it('a wider spread of one input makes a wider range', () => {
    const width = (assumptions: readonly Assumption[]) => {
      const { quantiles } = spreadOf(soundPier, assumptions)
      return (quantiles?.high ?? Number.NaN) - (quantiles?.low ?? Number.NaN)
    }
    const widths = [1, 2, 3].map((half) =>
      width(withSpread('hole-depth', { kind: 'triangular', low: inch(-half), peak: 0, high: inch(half) })),
    )
    expect(widths).toEqual([...widths].sort((a, b) => a - b))
    expect(width(only(['hole-depth']))).toBeGreaterThan(0)
  })

  it('a greater demand is never met more often, and a try that just meets it is not below', () => {
    const counts = [0, 3000, 4000, 4200, 5000, 1e9].map(
      (demand) => spreadOf(soundPier, startingAssumptions, { ...study, demand }).below ?? -1,
    )
    expect(counts).toEqual([...counts].sort((a, b) => a - b))
    expect([counts[0], counts.at(-1)]).toEqual([0, spreadOf(soundPier).allowable.length])
    const { asEntered: held } = spreadOf(soundPier, only([]))
    expect(spreadOf(soundPier, only([]), { ...study, demand: held }).below).toBe(0)
    expect(spreadOf(soundPier).below).toBeNull()
  })

  it('swings stand widest first and are the chain at the tenth and ninetieth percentile', () => {
    const { swings } = spreadOf(soundPier)
    const widths = swings.map(({ allowable: [low, high] }) => Math.abs((high ?? 0) - (low ?? 0)))
    expect(swings.length).toBeGreaterThan(5)
    expect(widths).toEqual([...widths].sort((a, b) => b - a))
    for (const { id, at, allowable } of swings) {
      const spread = startingAssumptions.find((one) => one.id === id)?.spread
      if (!spread) throw new Error(id)
      expect(at).toEqual([valueAtShare(spread)(0.1), valueAtShare(spread)(0.9)])
      expect(allowable).toEqual(at.map((draw) => upliftSample(soundPier, { ...asEntered(), [id]: draw }).governing?.allowable?.value))
    }
  })

  it('a pier that could not be built as drawn is counted apart, never bent into shape', () => {
    const narrow = withSpread('hole-diameter', { kind: 'uniform', low: inch(-14), high: 0 })
    const result = spreadOf(soundPier, narrow)
    const apart = result.without.find(({ id }) => id === 'not-possible')?.count ?? 0
    expect(apart).toBeGreaterThan(100)
    expect(apart).toBeLessThan(study.samples)
    expect(result.swings[0]).toMatchObject({ id: 'hole-diameter', allowable: [null, expect.any(Number)] })
    const none = spreadOf(soundPier, withSpread('hole-diameter', { kind: 'uniform', low: inch(-19), high: inch(-17) }))
    expect(none).toMatchObject({ quantiles: null, histogram: null, without: [{ id: 'not-possible', count: study.samples }] })
  })

  it('where every corner of the ranges can be built, so can all between them', () => {
    let always = 0
    fc.assert(
      fc.property(countedPier, fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 16, maxLength: 16 }), (spec, parts) => {
        const here = inputsOf(spec).map(({ id }) => id)
        const rows = startingAssumptions.filter(({ id }) => here.includes(id))
        const ends = new Map(rows.map(({ id, spread }) => [id, [spread.low, spread.high] as const]))
        if (!isAlwaysPossible(spec, ends)) return
        always++
        const draw = asEntered()
        rows.forEach(({ id, spread }, i) => {
          draw[id] = spread.low + ((parts[i] ?? 0) / 1000) * (spread.high - spread.low)
        })
        expect(isPossible(spec, draw)).toBe(true)
      }),
      { numRuns: 300, seed: 33 },
    )
    expect(always).toBeGreaterThan(50)
  })

  it('a bar drawn too near the end leaves a try without a number, and says by which link', () => {
    const low = withSpread('bar-height', { kind: 'uniform', low: inch(-4.5), high: inch(-2.5) })
    const result = spreadOf(soundPier, low)
    expect(result.without.map(({ id }) => id)).toContain('bar-through-post')
    expect(total(result.governing) + total(result.without)).toBe(study.samples)
  })
})
