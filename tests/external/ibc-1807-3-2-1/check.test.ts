import fc from 'fast-check'
import { bignumber, evaluate } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { depthAtDownhillEdge } from '../../../src/core/engineering/soil/depths.ts'
import { heightAboveSoundGround } from '../../../src/core/engineering/soil/lateralGround.ts'
import {
  allowableLateral,
  embedmentForPressure,
  embedmentNonconstrained,
  lateralDepthLimit,
} from '../../../src/core/engineering/soil/lateralNonconstrained.ts'
import type { Metres, Newtons, Pascals, PressureGradient, Slope } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { type Case, at, digits, published, readCases, si } from '../cases.ts'

const load = (row: Case) => ({
  force: si<Newtons>(row, 'P_lb', 'lb'),
  height: si<Metres>(row, 'h_ft', 'ft'),
  gradient: si<PressureGradient>(row, 'Lt_psf/ft', 'psf/ft'),
  multiplier: si(row, 'k'),
  width: si<Metres>(row, 'b_ft', 'ft'),
})
const some = (value: number | null): number => value ?? Number.NaN

describe('required embedment, nothing holding the post at grade', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const inputs = load(row)
    const depth = some(embedmentNonconstrained(inputs))
    published(depth, row, '=d_ft', 'ft')
    const pressure = (inputs.multiplier * inputs.gradient * depth) / 3
    published(pressure, row, '=S1_psf', 'psf')
    published((2.34 * inputs.force) / (pressure * inputs.width), row, '=A_ft', 'ft')
    published((7.02 * inputs.force) / (inputs.multiplier * inputs.gradient * inputs.width), row, '=C_ft2', 'ft2')
    // The code's own implicit form, at the pressure that belongs to the root, gives the root back.
    close(embedmentForPressure({ ...inputs, pressure: pressure as Pascals }).depth, depth, { abs: 0, rel: 1e-12 })
  })

  it('a root by bisection at high precision agrees, on both branches of the cubic', () => {
    for (const [p, h, b, lt] of [
      [800, 6, 2, 150],
      [2000, 0.5, 2, 100],
      [1, 0, 1, 400],
      [5, 300, 4, 1200],
      [3000, 0.01, 1, 400],
    ] as const) {
      const c = evaluate('7.02 p / (lt b)', { p: bignumber(p), lt: bignumber(lt), b: bignumber(b) })
      let low = bignumber(0)
      let high = bignumber(1000)
      for (let i = 0; i < 120; i++) {
        const middle = evaluate('(low + high) / 2', { low, high })
        if (Number(evaluate('d^3 - c d - 1.09 c h', { d: middle, c, h: bignumber(h) })) > 0) high = middle
        else low = middle
      }
      const depth = embedmentNonconstrained({
        force: at(p, 'lb'),
        height: at(h, 'ft'),
        gradient: at(lt, 'psf/ft'),
        multiplier: 1,
        width: at(b, 'ft'),
      })
      if (Number(low) > 12) expect(depth).toBeNull()
      else close(some(depth), at(Number(low), 'ft'), { abs: 0, rel: 1e-12 })
    }
  })

  it('gives no depth past 12 ft, and none for no force', () => {
    const deep = {
      force: at<Newtons>(60_000, 'lb'),
      height: at<Metres>(5, 'ft'),
      gradient: at<PressureGradient>(100, 'psf/ft'),
      multiplier: 1,
      width: at<Metres>(2, 'ft'),
    }
    expect(embedmentNonconstrained(deep)).toBeNull()
    expect(embedmentNonconstrained({ ...deep, force: 0 as Newtons })).toBe(0)
    expect(allowableLateral({ ...deep, depth: (lateralDepthLimit.value + 0.01) as Metres })).toBeNull()
  })
})

describe('allowable force for the depth that is there', () => {
  it.each(readCases(import.meta.url, 'allowable.csv').map((row) => [row.id, row] as const))('%s', (_, row) => {
    const { height, gradient, multiplier, width } = load({ ...row, P_lb: '0' })
    published(some(allowableLateral({ depth: si(row, 'd_ft', 'ft'), height, gradient, multiplier, width })), row, '=P_lb', 'lb')
  })
})

describe('T21, W8.3: on a slope the depth counts below the downhill edge', () => {
  it('adds the lost height to the arm and to the hole', () => {
    const row = readCases(import.meta.url).find(({ id }) => id === 'T21') as Case
    const radius = at<Metres>(1, 'ft')
    const lost = at<number>(1, 'ft') - depthAtDownhillEdge({ depthAtAxis: at(1, 'ft'), radius, slope: (1 / 3) as Slope })
    const height = heightAboveSoundGround({ height: at(6, 'ft'), lost: lost as Metres })
    const depth = some(embedmentNonconstrained({ ...load(row), height }))
    close(depth, at(digits(row, '=d_ft'), 'ft'), { abs: at(0.00005, 'ft'), rel: 0 })
    close(depth + lost, at(5.1157, 'ft'), { abs: at(0.00005, 'ft'), rel: 0 })
  })
  it('W8.3: ignoring 1 ft of topsoil asks 5.894 ft in all', () => {
    const row = readCases(import.meta.url).find(({ id }) => id === 'W8.3-topsoil') as Case
    close(some(embedmentNonconstrained(load(row))) + at<number>(1, 'ft'), at(5.894, 'ft'), { abs: at(0.0005, 'ft'), rel: 0 })
  })
})

type Load = Parameters<typeof embedmentNonconstrained>[0]

describe('senses', () => {
  const inputs = fc.record({
    force: fc.double({ min: 1, max: 2e4, noNaN: true }),
    height: fc.double({ min: 0, max: 6, noNaN: true }),
    gradient: fc.double({ min: 1e4, max: 2e5, noNaN: true }),
    multiplier: fc.constantFrom(1, 2),
    width: fc.double({ min: 0.1, max: 1.2, noNaN: true }),
  }) as fc.Arbitrary<unknown> as fc.Arbitrary<Load>
  const less = (from: Load, change: Partial<Record<keyof Load, number>>) => {
    const before = embedmentNonconstrained(from)
    const after = embedmentNonconstrained({ ...from, ...change } as Load)
    return before === null || (after !== null && after <= before * (1 + 1e-12))
  }

  it('depth falls with width, soil and doubling, and grows with force and arm', () => {
    fc.assert(
      fc.property(
        inputs,
        (given) =>
          less(given, { width: given.width * 1.1 }) &&
          less(given, { gradient: given.gradient * 1.1 }) &&
          less(given, { force: given.force * 0.9 }) &&
          less(given, { height: given.height * 0.9 }),
      ),
      { numRuns: 300 },
    )
  })
  it('doubling is the same as twice the soil, and the allowable force undoes the depth', () => {
    fc.assert(
      fc.property(inputs, (given) => {
        const depth = embedmentNonconstrained(given)
        if (depth === null || depth >= lateralDepthLimit.value) return
        close(
          some(embedmentNonconstrained({ ...given, multiplier: 1, gradient: (given.gradient * given.multiplier) as PressureGradient })),
          depth,
          { abs: 0, rel: 1e-9 },
        )
        close(some(allowableLateral({ ...given, depth })), given.force, { abs: 0, rel: 1e-6 })
      }),
      { numRuns: 300 },
    )
  })
})
