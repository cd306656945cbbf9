import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { pierFrame } from '../../../src/core/derive/pierFrame.ts'
import { tableProperties } from '../../../src/core/derive/properties.ts'
import { studyLinks } from '../../../src/core/derive/uplift/chain.ts'
import { blockShear, blockUplift, blockWeight, groupRule, meetingDepth } from '../../../src/core/engineering/soil/pierGroup.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { fromSI, toSI } from '../../../src/core/units/factors.ts'
import { metres, newtons, pascals } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { ofEach } from './manyPiers.ts'
import { checkOf, figure, foot, inch, plainPier, pound, stepOf } from './pierOf.ts'

const spaced = (feet: number | null, pier: PierSpec = plainPier): PierSpec => ({ ...pier, spacing: feet === null ? null : foot(feet) })
const hasBlock = (spec: PierSpec) => derivePier(spec).checks.some((check) => check.id === 'block-of-piers')
const belled: PierSpec = { ...plainPier, hole: { ...plainPier.hole, bell: { diameter: inch(36), height: inch(10) } } }
const pounds = (value: number) => fromSI(value, 'lb')

describe('[C18] piers that stand close share their ground once', () => {
  it('the rule: closer than three widths, two thirds of block and faces, IBC 1810.3.3.1.6 as the reference reads it', () => {
    expect(groupRule.closerThan.value).toBe(3)
    expect(groupRule.share.value).toBe(2 / 3)
    for (const [feet, has] of [
      [null, false],
      [6, false],
      [5.9, true],
      [2.5, true],
    ] as const)
      expect(hasBlock(spaced(feet))).toBe(has)
  })
  it('by hand: 2 ft piers 4 ft apart, 600 psf at the bottom, 2,000 lb of pier, 3,000 lb of friction', () => {
    // Pair: plan (4 + 2) x 2 ft, half of it 6 sq ft, less pi sq ft of pier; faces 2 (4 + 2) + 2 x 2 = 16 ft, half 8 ft, of 2 pi ft.
    const block = { spacing: foot(4), diameter: foot(2) }
    const weight = blockWeight({ ...block, pier: pound(2000), stress: pascals(toSI(600, 'psf')) })
    close(pounds(weight), 2000 + 600 * (6 - Math.PI), { abs: 0.01, rel: 0 })
    const faces = blockShear({ ...block, ultimate: pound(3000) })
    close(pounds(faces), (3000 * 8) / (2 * Math.PI), { abs: 0.01, rel: 0 })
    close(pounds(blockUplift({ weight, faces, share: 2 / 3 })), (2 / 3) * (2000 + 600 * (6 - Math.PI) + 12_000 / Math.PI), {
      abs: 0.01,
      rel: 0,
    })
  })
  it('nearer than two widths a row has less face for each pier than a pair has', () => {
    close(pounds(blockShear({ ultimate: pound(1000), spacing: foot(3), diameter: foot(2) })), (1000 * 6) / (2 * Math.PI), {
      abs: 0.01,
      rel: 0,
    })
  })
  it('the steps of a pier come to its allowable', () => {
    const check = checkOf(derivePier(spaced(4)), 'block-of-piers')
    expect(check).toMatchObject({ counted: "engineer's judgement", why: 'piers-share-a-block' })
    const friction = stepOf(check, 'side-friction-lower-bound-ultimate').value
    // 119 pcf over 5 ft at the bottom.
    close(stepOf(check, 'block-weight').value - stepOf(check, 'pier-weight').value, toSI(119 * 5 * (6 - Math.PI), 'lb'), {
      abs: 0,
      rel: 1e-6,
    })
    close(stepOf(check, 'block-shear').value, (friction * 8) / (2 * Math.PI), { abs: 0, rel: 1e-9 })
    close(check.allowable?.value ?? 0, (2 / 3) * (stepOf(check, 'block-weight').value + stepOf(check, 'block-shear').value), {
      abs: 0,
      rel: 1e-9,
    })
  })
  it('a way that somebody answers for is capped by the block', () => {
    const judged = (pier: PierSpec): PierSpec => ({ ...pier, judgement: { mechanism: 'cone-over-ledge', reason: 'told by the engineer' } })
    const alone = derivePier(judged(belled))
    expect(alone.uplift.soil).toBe('cone-over-ledge')
    const near = derivePier(judged(spaced(3, belled)))
    const cone = checkOf(near, 'cone-over-ledge').allowable?.value ?? 0
    const block = checkOf(near, 'block-of-piers').allowable?.value ?? 0
    expect(near.uplift.soil).toBe(cone <= block ? 'cone-over-ledge' : 'block-of-piers')
    expect(checkOf(near, near.uplift.soil).allowable?.value).toBe(Math.min(cone, block))
  })
  it('no way to hold is stronger beside a neighbour than alone, and none grows as it comes nearer', () => {
    for (const pier of [plainPier, belled, { ...belled, hole: { ...belled.hole, depth: foot(9) } }]) {
      let before = new Map(derivePier(pier).checks.map((check) => [check.id, check.allowable?.value]))
      for (const feet of [12, 9, 7, 6, 5.5, 5, 4.5, 4, 3.5, 3.1]) {
        const now = new Map(derivePier(spaced(feet, pier)).checks.map((check) => [check.id, check.allowable?.value]))
        for (const id of ['friction-and-weight', 'cone-over-ledge', 'breakout-of-ledge', 'block-of-piers'] as const) {
          const [was, is] = [before.get(id), now.get(id)]
          if (was !== undefined && is !== undefined) expect(is, `${id} at ${feet} ft`).toBeLessThanOrEqual(was * (1 + 1e-9))
        }
        before = new Map([...before, ...now])
      }
    }
  })
  it('breakout takes its factor at the depth where the two zones meet, and says so', () => {
    const near = checkOf(derivePier(spaced(5, belled)), 'breakout-of-ledge')
    expect(near.why).toBe('breakout-in-sand-shared')
    // 2.5 ft less 1.5 ft of bell, at 30 degrees from the upright.
    close(figure(spaced(5, belled), 'breakout-of-ledge', 'meeting-depth', 'ft'), 1 / Math.tan(Math.PI / 6), { abs: 1e-6, rel: 0 })
    expect(checkOf(derivePier(spaced(20, belled)), 'breakout-of-ledge').why).toBe('breakout-in-sand')
    expect(meetingDepth({ reach: metres(0.4), radius: metres(0.5), spread: 0.5 })).toBe(0)
  })
  it('deeper is never weaker for it', () => {
    for (const pier of [plainPier, belled])
      for (const id of ['block-of-piers', 'breakout-of-ledge']) {
        let before = 0
        for (let feet = 4; feet <= 12; feet += 0.5) {
          const spec = spaced(4, { ...pier, hole: { ...pier.hole, depth: foot(feet) } })
          const value = derivePier(spec).checks.find((check) => check.id === id)?.allowable?.value ?? before
          expect(value).toBeGreaterThanOrEqual(before * (1 - 1e-9))
          before = value
        }
      }
  })
  it('the study of chances sees the same numbers, on random piers with and without a neighbour', () => {
    let seen = 0
    ofEach((pier, i) => {
      if (i % 2 > 0) return
      const spec = { ...pier, spacing: metres((1.2 + (i % 5) * 0.4) * pier.hole.diameter) }
      const block = derivePier(spec).checks.find((check) => check.id === 'block-of-piers')
      const hold = studyLinks(pierFrame(spec), tableProperties(spec)).find((one) => one.id === 'block-of-piers')
      expect(hold === undefined).toBe(block === undefined)
      if (!block || !hold) return
      seen++
      close(hold.allowable?.value ?? Number.NaN, block.allowable?.value ?? Number.NaN, { abs: 1e-6, rel: 1e-9 })
    })
    expect(seen).toBeGreaterThan(20)
  })
  it('weight alone where nothing grips', () => {
    expect(blockShear({ ultimate: newtons(0), spacing: foot(3), diameter: foot(2) })).toBe(0)
  })
})
