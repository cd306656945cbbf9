import { describe, expect, test } from 'vitest'
import { deriveMoisture } from '../../../../src/core/derive/moisture/deriveMoisture.ts'
import type { MoistureResult } from '../../../../src/core/model/moistureResult.ts'
import type { FillId, PierSpec } from '../../../../src/core/model/spec.ts'
import { defaultDocument } from '../../../../src/core/spec/defaults.ts'
import { setChoice } from '../../../../src/core/spec/edit.ts'
import { fromSI } from '../../../../src/core/units/factors.ts'
import { metres } from '../../../../src/core/units/quantity.ts'
import { inch, plainPier } from '../pierOf.ts'

const methods: readonly FillId[] = ['dry-bag-at-foot', 'dry-full-height', 'mixed-full-height', 'mixed-bracket-pier']
const specOf = (kind: FillId): PierSpec => {
  const result = setChoice(defaultDocument, 'fill.kind', kind)
  return result.ok ? result.value.spec : expect.fail(kind)
}
const results = new Map<FillId, MoistureResult>(methods.map((kind) => [kind, deriveMoisture(specOf(kind))]))
const of = (kind: FillId): MoistureResult => results.get(kind) ?? expect.fail(kind)
const downTheAxis = (result: MoistureResult) =>
  result.profile.filter((one) => one.side === 'axis').map((one) => `${one.touch} ${one.wetness}`)

describe('[W10] four methods at one site', () => {
  test('no two give the same picture down the post', () => {
    const pictures = methods.map((kind) => downTheAxis(of(kind)).join(', '))
    expect(new Set(pictures).size).toBe(methods.length)
  })

  test('soil against the post meets water and air at grade; concrete at its own top; a bracket nowhere', () => {
    expect(methods.map((kind) => of(kind).groundline.at)).toEqual(['grade', 'top-of-concrete', 'top-of-concrete', 'none'])
    expect(of('dry-bag-at-foot').joint).toBeNull()
    expect(of('mixed-bracket-pier')).toMatchObject({ joint: null, shares: [] })
    const { groundline, joint } = of('mixed-full-height')
    expect(groundline.bands.uphill.to).toBe(joint?.top.uphill)
    expect(groundline.standing).toBe('assumed here')
  })

  test('concrete lets in less air than soil does', () => {
    expect(of('mixed-full-height').wetAndAiry).toBeLessThan(of('dry-full-height').wetAndAiry)
    expect(of('mixed-bracket-pier').wetAndAiry).toBeLessThan(of('mixed-full-height').wetAndAiry)
  })

  test('every class of the buried wood is marked as reasoned', () => {
    for (const kind of methods) for (const one of of(kind).profile) expect(one.standing).toBe('assumed here')
  })

  test('[trap 15] gravel round a post stays wet where the ground stays wet', () => {
    const gravel = specOf('granular-on-pad')
    const touching = (ground: PierSpec['water']['ground']) =>
      deriveMoisture({ ...gravel, water: { ...gravel.water, ground } }).profile.find((one) => one.touch === 'granular')?.wetness
    expect([touching('drains'), touching('damp'), touching('wet')]).toEqual(['wet-at-times', 'wet-at-times', 'stays-wet'])
  })
})

describe('places go before what fills them', () => {
  const wet: PierSpec = { ...plainPier, site: { ...plainPier.site, waterTable: inch(40) } }

  test('below the water table there is water and no air, whatever is there', () => {
    for (const fill of [wet.fill, { kind: 'granular-on-pad', pad: inch(8) } as const]) {
      const below = deriveMoisture({ ...wet, fill, bars: null }).profile.filter((one) => one.to <= -inch(40))
      expect(below.length).toBeGreaterThan(0)
      for (const one of below)
        expect(one).toMatchObject({ touch: 'below-water', wetness: 'stays-wet', oxygen: 'little', waterAndAir: false, ground: 'wet' })
    }
  })

  test('sand lifts water 125 mm for certain and 500 mm at most above the table', () => {
    const { fringe, profile } = deriveMoisture({ ...wet, water: { ...wet.water, ground: 'drains' } })
    expect(fringe?.low?.value).toBeCloseTo(inch(40) - 0.125, 9)
    expect(fringe?.high?.value).toBeCloseTo(inch(40) - 0.5, 9)
    const reasons = profile.filter((one) => one.side === 'axis').map((one) => one.groundReason)
    expect(new Set(reasons)).toEqual(
      new Set(['ground-as-entered', 'in-reach-of-capillary-rise', 'in-capillary-fringe', 'below-water-table']),
    )
  })

  test('a coarse layer stops water that a fine one below it lifts', () => {
    const layered: PierSpec = {
      ...wet,
      site: { ...wet.site, lower: { from: inch(30), soil: { kind: 'presumptive', class: 'clay' } } },
      water: { ...wet.water, ground: 'drains' },
    }
    expect(deriveMoisture(layered).fringe?.low?.value).toBeCloseTo(inch(30), 12)
  })

  test('a top that feeds the joint keeps it wet; a closed joint is none', () => {
    const joint = (spec: PierSpec) => deriveMoisture(spec).profile.find((one) => one.touch === 'joint')
    expect(joint(plainPier)?.wetness).toBe('wet-at-times')
    expect(joint({ ...plainPier, top: { ...plainPier.top, shape: 'dished' } })?.wetness).toBe('stays-wet')
    const swollen: PierSpec = { ...plainPier, water: { ...plainPier.water, atSetting: 0.12, inService: 0.19 } }
    expect(joint(swollen)).toBeUndefined()
    expect(deriveMoisture(swollen).joint).toMatchObject({ widest: 0, reach: 0, conductivity: null, capillaryHold: null })
  })

  test('the joint is drawn no deeper than the wood stands in what has set', () => {
    const deep: PierSpec = { ...plainPier, water: { ...plainPier.water, jointReach: metres(9) } }
    const { joint, profile } = deriveMoisture(deep)
    expect(joint?.reach).toBeCloseTo((joint?.top.axis ?? 0) - Math.min(...profile.map((one) => one.from)), 9)
  })
})

/** Printed: 5.5 in loblolly, 30 to 15 %, 0.102 in a face along the rings, 0.066 across them. Source: wood-handbook-4-3 by the formula of wood-handbook-4. */
describe('the joint of a square southern pine post', () => {
  const { joint } = deriveMoisture({ ...plainPier, water: { ...plainPier.water, atSetting: 0.3, inService: 0.15 } })
  const gap = (id: string) => fromSI(joint?.gaps.find((one) => one.id === id)?.value ?? Number.NaN, 'in')

  test('brackets the printed gaps of loblolly by the species of its group', () => {
    expect(gap('joint-gap-width-along-rings')).toBeGreaterThanOrEqual(0.102)
    expect(gap('joint-gap-width-across-rings')).toBeLessThanOrEqual(0.066)
    expect(gap('joint-gap-width-along-rings')).toBeLessThan(0.11)
    expect(gap('joint-gap-width-across-rings')).toBeGreaterThan(0.06)
  })

  test('carries water a thousand million times better than sound concrete, and is from memory at best', () => {
    expect(joint?.against.find((one) => one.id === 'joint-against-concrete')?.value).toBeGreaterThan(1e9)
    expect(joint?.conductivity?.standing).toBe('from memory')
    expect(joint?.standing).toBe('assumed here')
  })
})
