import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { deriveMix } from '../../../src/core/derive/mix/deriveMix.ts'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { bags } from '../../../src/core/engineering/tables/bags.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { castRoles } from '../../../src/core/model/solid.ts'
import { withChoice } from '../../../src/core/spec/choose.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { fromSI, toSI } from '../../../src/core/units/factors.ts'
import type { UnitWeight } from '../../../src/core/units/quantity.ts'
import { arbitraryPier } from '../../arbitraryPier.ts'

const loose = (pcf: number) => ({ placing: { ...defaultSpec.placing, looseWeight: toSI(pcf, 'pcf') as UnitWeight } })
const built = (kind: string, change: Partial<PierSpec> = {}): PierSpec => ({ ...withChoice(defaultSpec, 'fill.kind', kind), ...change })
const lineOf = (spec: PierSpec) => derivePier(spec).quantities.find(({ role }) => role === 'dry-mix') ?? expect.fail('no dry mix')
const mixOf = (spec: PierSpec) => {
  const { concrete } = deriveMix(spec)
  return concrete?.as === 'dry' ? concrete : expect.fail('no dry mix')
}
const need = (spec: PierSpec, id: string) => mixOf(spec).needs.find((one) => one.id === id)?.value ?? Number.NaN

describe('[Q1] mix placed dry has one mass, from the hole to the order', () => {
  it.each(['dry-full-height', 'dry-bag-at-foot'])('%s: in the hole, extra and left over are what is ordered', (kind) => {
    for (const pcf of [90, 110, 133]) {
      const spec = built(kind, loose(pcf))
      const line = lineOf(spec)
      const { mass } = mixOf(spec)
      expect(mass.placed).toBeCloseTo(line.weight, 6)
      expect(line.weight).toBeCloseTo(line.volume.value * toSI(pcf, 'pcf'), 6)
      expect(mass.placed + mass.extra + mass.left).toBeCloseTo(mass.ordered, 6)
      expect(mass.left).toBeLessThan(mass.bag)
      expect(line.orders).toEqual([expect.objectContaining({ as: 'bags', bagSize: mass.bagSize, each: mass.each, job: mass.job })])
    }
  })

  it('needs as much water as the bags that lie in the hole, by their label', () => {
    const spec = built('dry-full-height', { concrete: { ...defaultSpec.concrete, bagSize: 60 } })
    const inHole = lineOf(spec).weight / bags[60].weight.value
    // 2 to 3.5 qt for a bag of 60 lb: bag-yields.
    expect(need(spec, 'label-water-least')).toBeCloseTo(inHole * toSI(2, 'qt'), 12)
    expect(need(spec, 'label-water-most')).toBeCloseTo(inHole * toSI(3.5, 'qt'), 12)
  })

  it('takes the bags of a fill that is placed by the bag: their size, their weight and the water for them', () => {
    const spec = built('dry-bag-at-foot', { concrete: { ...defaultSpec.concrete, bagSize: 60 } })
    // One bag of 80 lb, whatever size the order of concrete is counted in.
    expect(fromSI(lineOf(spec).weight, 'lb')).toBeCloseTo(80, 9)
    expect(need(spec, 'label-water-least')).toBeCloseTo(toSI(3, 'qt'), 12)
  })

  it('weighs more, and is ordered more of, where it lies denser: all of it changes or none', () => {
    const [light, heavy] = [90, 135].map((pcf) => built('dry-full-height', loose(pcf)))
    if (!light || !heavy) expect.fail('two piers')
    const share = 135 / 90
    expect(lineOf(heavy).weight / lineOf(light).weight).toBeCloseTo(share, 9)
    expect(mixOf(heavy).mass.extra / mixOf(light).mass.extra).toBeCloseTo(share, 9)
    expect(need(heavy, 'hydration-water') / need(light, 'hydration-water')).toBeCloseTo(share, 9)
    expect(mixOf(heavy).mass.each).toBeGreaterThan(mixOf(light).mass.each)
    // By the bag the mass is known and the room it takes is not.
    const [wide, low] = [90, 135].map((pcf) => lineOf(built('dry-bag-at-foot', loose(pcf))))
    expect((wide?.volume.value ?? 0) / (low?.volume.value ?? 1)).toBeCloseTo(share, 9)
    expect(wide?.weight).toBeCloseTo(low?.weight ?? 0, 9)
  })
})

describe('[Q2] what is poured is told apart: in the hole, above grade, to order', () => {
  it('never fills the hole with more than it holds, and both parts are the whole', () => {
    fc.assert(
      fc.property(arbitraryPier(), ({ spec }) => {
        const { quantities, hole, headlines } = derivePier(spec)
        const mix = quantities.filter(({ role }) => castRoles.has(role))
        const inHole = mix.reduce((sum, line) => sum + line.inHole, 0)
        expect(inHole).toBeLessThanOrEqual(hole.volume.value * (1 + 1e-9))
        for (const line of mix) {
          expect(line.inHole).toBeGreaterThanOrEqual(-1e-9)
          expect(line.inHole).toBeLessThanOrEqual(line.volume.value + 1e-9)
        }
        const told = headlines.find(({ id }) => id === 'mix-volume') ?? expect.fail('no mix')
        expect(told.inputs.reduce((sum, { value }) => sum + value, 0)).toBeCloseTo(told.value, 8)
        expect(told.inputs[0]).toMatchObject({ name: 'mix-in-hole' })
      }),
      { numRuns: 300, seed: 6 },
    )
  })

  it('says what stands above grade of a pier that is poured 12 in out of the ground', () => {
    const spec: PierSpec = { ...defaultSpec, top: { ...defaultSpec.top, rim: toSI(12, 'in') as PierSpec['top']['rim'] } }
    const { headlines, hole } = derivePier(spec)
    const mix = headlines.find(({ id }) => id === 'mix-volume') ?? expect.fail('no mix')
    expect(mix.value).toBeGreaterThan(hole.volume.value * 0.9)
    expect(mix.inputs.map(({ name }) => name)).toEqual(['mix-in-hole', 'mix-above-grade'])
  })

  it('orders what is placed and its extra, and says the share', () => {
    for (const { volume, orders } of derivePier(defaultSpec).quantities)
      for (const order of orders)
        if (order.as === 'ready-mix') {
          expect(order.extra).toBe(defaultSpec.concrete.waste)
          expect(order.each).toBeCloseTo(volume.value * (1 + order.extra), 12)
        }
  })
})
