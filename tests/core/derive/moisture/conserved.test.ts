import { describe, expect, test } from 'vitest'
import { derivePier } from '../../../../src/core/derive/derivePier.ts'
import { exposureLines } from '../../../../src/core/derive/exposure.ts'
import { deriveMoisture } from '../../../../src/core/derive/moisture/deriveMoisture.ts'
import { pierFrame } from '../../../../src/core/derive/pierFrame.ts'
import { heightAlong } from '../../../../src/core/geometry/corner.ts'
import { surfaceOf } from '../../../../src/core/geometry/fillStack.ts'
import { radiusAlong } from '../../../../src/core/geometry/radial.ts'
import type { MoistureResult } from '../../../../src/core/model/moistureResult.ts'
import type { PierSpec } from '../../../../src/core/model/spec.ts'
import { defaultSpec } from '../../../../src/core/spec/defaults.ts'
import { metres, slope } from '../../../../src/core/units/quantity.ts'
import { ofEach } from '../manyPiers.ts'
import { inch, plainPier } from '../pierOf.ts'

const sum = (list: readonly number[]): number => list.reduce((total, one) => total + one, 0)
const areaOf = ({ shares }: MoistureResult): number => sum(shares.map((one) => one.area))

/** Numbers anywhere in a value, with the way to each. */
function numbersIn(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, `${path}.${key}`))
}

/** Area of the sides above grade inside concrete or dry mix, by stepping along the outline: nothing of the code under test. */
function concreteAboveGrade(spec: PierSpec): number {
  const frame = pierFrame(spec)
  const last = frame.lifts.at(-1)
  if (!frame.standing || !last || !['concrete', 'dry-mix'].includes(last.role)) return 0
  const top = surfaceOf(frame.profile, last.to)
  const steps = 200_000
  let area = 0
  for (let i = 0; i < steps; i++) {
    const [a, b] = [(2 * Math.PI * i) / steps, (2 * Math.PI * (i + 1)) / steps]
    const middle = (a + b) / 2
    const r = radiusAlong(frame.postOutline, Math.cos(middle), Math.sin(middle))
    const p = radiusAlong(frame.postOutline, Math.cos(a), Math.sin(a))
    const q = radiusAlong(frame.postOutline, Math.cos(b), Math.sin(b))
    const width = Math.sqrt(p * p + q * q - 2 * p * q * Math.cos(b - a))
    const rise = heightAlong(top, r, Math.cos(middle), Math.sin(middle)) - heightAlong(frame.grade, r, Math.cos(middle), Math.sin(middle))
    area += width * Math.max(0, rise)
  }
  return area
}

describe('wood is counted once', () => {
  test('300 piers: classes sum to the wood below grade and what is in concrete above it, and no number is none', () => {
    ofEach((spec) => {
      const result = deriveMoisture(spec)
      expect(numbersIn(result).filter(([, value]) => !Number.isFinite(value))).toEqual([])
      const below = derivePier(spec).exposure.areaBelowGrade
      const frame = pierFrame(spec)
      // On a leaning post surfaces pass each other elsewhere than on a plumb one, and the two integrals part there on their own.
      const digits = frame.leaning ? 4 : 9
      expect(areaOf(result)).toBeGreaterThanOrEqual(below - 10 ** -digits)
      const lines = exposureLines(frame)
      if (lines.every((line) => line.inConcreteAboveGrade < 1e-12)) expect(areaOf(result)).toBeCloseTo(below, digits)
      if (result.shares.length > 0) expect(sum(result.shares.map((one) => one.share))).toBeCloseTo(1, 12)
      for (const { side, belowGrade, inConcreteAboveGrade } of lines)
        if (result.shares.length > 0)
          expect(sum(result.shares.map((one) => one.length[side]))).toBeCloseTo(belowGrade + inConcreteAboveGrade, 9)
    })
  })

  test('a crown over a slope: what is inside concrete above grade is the area that stepping along the outline gives', () => {
    for (const shape of ['crowned', 'flat'] as const) {
      const spec: PierSpec = {
        ...plainPier,
        site: { ...plainPier.site, slope: slope(0.1), downhill: defaultSpec.site.downhill },
        top: { shape, rise: inch(1), rim: inch(2), heaped: metres(0) },
      }
      const above = areaOf(deriveMoisture(spec)) - derivePier(spec).exposure.areaBelowGrade
      expect(above).toBeGreaterThan(0.02)
      expect(above).toBeCloseTo(concreteAboveGrade(spec), 8)
    }
  })

  test('stretches of a side follow each other without a gap, top down to the foot', () => {
    ofEach((spec) => {
      const { profile } = deriveMoisture(spec)
      for (const side of ['uphill', 'axis', 'downhill'] as const) {
        const own = profile.filter((one) => one.side === side)
        own.forEach((one, i) => {
          expect(one.to).toBeGreaterThan(one.from)
          if (i > 0) expect(one.to).toBe(own[i - 1]?.from)
        })
        const frame = pierFrame(spec)
        if (own.length > 0 && frame.leaning === null) expect(own.at(-1)?.from).toBe(frame.foot)
        else if (own.length > 0) expect(own.at(-1)?.from).toBeGreaterThanOrEqual(frame.foot - 1e-12)
      }
    })
  })
})
