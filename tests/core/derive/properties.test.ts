import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { pullPasses } from '../../../src/core/derive/uplift/governing.ts'
import { soilCone, soilConeWithin } from '../../../src/core/engineering/soil/soilCone.ts'
import type { PierResult } from '../../../src/core/model/result.ts'
import type { PierDocument, PierSpec } from '../../../src/core/model/spec.ts'
import type { Check } from '../../../src/core/model/worked.ts'
import { setField } from '../../../src/core/spec/edit.ts'
import { visibleFields } from '../../../src/core/spec/fields.ts'
import { valueAt } from '../../../src/core/spec/path.ts'
import { fromSI, unitsOf } from '../../../src/core/units/factors.ts'
import { metres, radians } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { countedPier } from '../uncertainty/countedPier.ts'
import { ofEach } from './manyPiers.ts'

const chainGroups: ReadonlySet<Check['group']> = new Set(['uplift-post', 'uplift-connection', 'uplift-concrete'])
const inChain = ({ checks, uplift }: PierResult) =>
  checks.filter((check) => (chainGroups.has(check.group) && pullPasses(check.id, uplift.soil)) || check.id === uplift.soil)

describe('[C10] what a chain is, whatever the pier', () => {
  it('governing is the least of the links that count, and a chain with a gap has no number', () => {
    let whole = 0
    const ask = (spec: PierSpec) => {
      const result = derivePier(spec)
      const links = inChain(result)
      if (links.some((link) => link.allowable === null)) {
        expect(result.uplift).toMatchObject({ allowable: null, governing: null, ratio: null })
        expect(links.every((link) => link.ratio === undefined)).toBe(true)
        return
      }
      whole++
      const least = links.reduce((a, b) => ((b.allowable?.value ?? 0) < (a.allowable?.value ?? 0) ? b : a))
      expect(result.uplift.governing).toBe(least.id)
      expect(result.uplift.allowable).toBe(least.allowable?.value)
    }
    ofEach(ask)
    for (const spec of fc.sample(countedPier, { numRuns: 120, seed: 12 })) ask(spec)
    expect(whole).toBeGreaterThan(30)
  })

  it('each soil mechanism takes its soil once: friction and 0.6 of the weight, or a cone with it, or breakout alone', () => {
    const kinds = new Set<string>()
    ofEach((spec) => {
      for (const check of derivePier(spec).checks) {
        if (check.group !== 'uplift-soil' || !check.allowable) continue
        const step = (id: string) => check.worked.find((one) => one.id === id)?.value
        const frictions = check.worked.filter((one) =>
          /^side-friction-.*-allowable$|^clay-adhesion-allowable$|^user-friction$/.test(one.id),
        )
        const cone = step('cone-soil-weight')
        const breakout = step('breakout-sand') ?? step('breakout-clay')
        expect([frictions.length > 0, cone !== undefined, breakout !== undefined].filter(Boolean).length).toBeLessThanOrEqual(1)
        const weight = step('pier-weight') ?? 0
        const block = step('block-weight')
        const want =
          block !== undefined
            ? (2 / 3) * (block + (step('block-shear') ?? 0))
            : breakout !== undefined
              ? breakout / 2
              : cone !== undefined
                ? 0.6 * (step('cone-and-pier-weight') ?? 0)
                : (frictions[0]?.value ?? 0) + 0.6 * weight
        close(check.allowable.value, want, { abs: 1e-6, rel: 1e-9 }, check.id)
        kinds.add(check.id)
      }
    })
    expect(kinds.size).toBeGreaterThanOrEqual(4)
  })

  it('cones of two neighbours never hold more soil than lies there', () => {
    const size = (low: number, high: number) => fc.integer({ min: 0, max: 1000 }).map((share) => low + ((high - low) * share) / 1000)
    fc.assert(
      fc.property(size(0.2, 0.8), size(0.3, 3), size(0.5, 6), (radius, height, spacing) => {
        fc.pre(spacing > 2 * radius)
        const cone = { radius: metres(radius), height: metres(height), angle: radians(Math.PI / 6) }
        // Two circles level by level, what they share taken once.
        const levels = 400
        let both = 0
        for (let i = 0; i < levels; i++) {
          const r = radius + ((i + 0.5) / levels) * height * Math.tan(Math.PI / 6)
          const half = spacing / 2
          const shared = r <= half ? 0 : 2 * (r * r * Math.acos(half / r) - half * Math.sqrt(r * r - half * half))
          both += (2 * Math.PI * r * r - shared) * (height / levels)
        }
        const counted = 2 * soilConeWithin({ ...cone, reach: metres(spacing / 2) })
        expect(counted).toBeLessThanOrEqual(both * (1 + 1e-4))
        expect(counted).toBeLessThanOrEqual(2 * soilCone(cone).volume * (1 + 1e-12))
      }),
      { numRuns: 200, seed: 5 },
    )
  })
})

describe('[C13] units are spelling', () => {
  /** The same pier with every number typed again in another unit, to all its digits. */
  const retyped = (document: PierDocument, turn: number): PierDocument =>
    visibleFields(document.spec).reduce((all, field, i) => {
      if (field.type !== 'number' || field.quantity === 'count' || field.quantity === 'slope') return all
      const value = valueAt(all.spec, field.path)
      const units = unitsOf[field.quantity]
      const unit = units[(i + turn) % units.length]
      if (typeof value !== 'number' || unit === undefined || unit === '1') return all
      const result = setField(all, field.path, `${fromSI(value, unit)} ${unit}`, 'us')
      return result.ok ? result.value : all
    }, document)

  it('every check of a pier is the same in whatever units it was typed', () => {
    let retypedSome = 0
    ofEach((_, i, document) => {
      if (i % 3 > 0) return
      const other = retyped(document, i % 7)
      if (other.spec !== document.spec) retypedSome++
      const first = derivePier(document.spec)
      const second = derivePier(other.spec)
      expect(second.checks.map((check) => check.id)).toEqual(first.checks.map((check) => check.id))
      first.checks.forEach((check, i) => {
        const again = second.checks[i]
        expect(again?.counted).toBe(check.counted)
        for (const part of ['allowable', 'demand'] as const)
          if (check[part]) close(again?.[part]?.value ?? Number.NaN, check[part].value, { abs: 1e-6, rel: 1e-8 }, `${check.id} ${part}`)
      })
    })
    expect(retypedSome).toBeGreaterThan(50)
  })
})

describe('[C14] no number that is none', () => {
  it('every step of every load and check of every pier is a finite number', () => {
    ofEach((spec) => {
      const { checks, demand, uplift } = derivePier(spec)
      const steps = [
        ...checks.flatMap((check) => [...check.worked, check.allowable, check.demand]),
        ...demand.worked,
        ...demand.cases.flatMap((one) => one.worked),
        demand.uplift,
        demand.gravity,
        demand.lateral,
      ]
      for (const step of steps) {
        if (!step) continue
        expect(Number.isFinite(step.value), step.id).toBe(true)
        for (const term of step.inputs) expect(Number.isFinite(term.value), `${step.id} ${term.name}`).toBe(true)
      }
      for (const check of checks) if (check.ratio !== undefined) expect(Number.isFinite(check.ratio), check.id).toBe(true)
      if (uplift.ratio !== null) expect(Number.isFinite(uplift.ratio)).toBe(true)
    })
  })
})

describe('[C15] every check points at something that is drawn', () => {
  it('each names zones that the pier has, and none names nothing', () => {
    ofEach((spec) => {
      const { checks, zones } = derivePier(spec)
      const known = new Set(zones.map((zone) => zone.id))
      for (const check of checks) {
        expect(check.where.length, check.id).toBeGreaterThan(0)
        expect(
          check.where.filter((id) => !known.has(id)),
          check.id,
        ).toEqual([])
      }
    })
  })
})
