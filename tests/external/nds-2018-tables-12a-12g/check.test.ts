import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bearingAcrossGrain, bearingAlongGrain, steelBearing, tabulatedBearing } from '../../../src/core/engineering/wood/dowelBearing.ts'
import { type YieldInputs, workedYieldMode, workedYieldValue, yieldValue } from '../../../src/core/engineering/wood/yieldEquations.ts'
import type { Metres, Pascals, Radians } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { type Case, at, digits, published, readCases, si } from '../cases.ts'

const wood = (row: Case, across: boolean): Pascals => {
  const gravity = digits(row, 'G')
  const strength = across ? bearingAcrossGrain({ gravity, diameter: si(row, 'D_in', 'in') }) : bearingAlongGrain({ gravity })
  return tabulatedBearing(strength ?? (Number.NaN as Pascals))
}
const joint = (row: Case): YieldInputs => ({
  diameter: si(row, 'D_in', 'in'),
  main: si(row, 'lm_in', 'in'),
  side: si(row, 'ls_in', 'in'),
  mainBearing: wood(row, row.across === 'main' || row.across === 'both'),
  sideBearing: row.side === 'plate' ? steelBearing(si(row, 'ls_in', 'in')) : wood(row, row.across === 'side' || row.across === 'both'),
  bendingYield: at(45_000, 'psi'),
  angle: at(row.across === '' ? 0 : 90, 'deg'),
  planes: row.planes as 'single' | 'double',
})

describe('bolt values as printed', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const found = yieldValue(joint(row))
    published(found?.value ?? Number.NaN, row, '=Z_lb', 'lb')
    const pounds = (found?.value ?? Number.NaN) / at<number>(1, 'lb')
    expect(10 * Math.floor(pounds / 10 + 0.5 + 1e-9)).toBe(digits(row, '=table_lb'))
    expect(found?.governing).toBe(row.mode)
    expect(workedYieldValue(joint(row))?.value).toBe(found?.value)
  })
})

describe('steps on the way', () => {
  it.each(readCases(import.meta.url, 'terms.csv').map((row) => [row.id, row] as const))('%s', (_, row) => {
    const inputs: YieldInputs = {
      diameter: si(row, 'D_in', 'in'),
      main: si(row, 'lm_in', 'in'),
      side: si(row, 'ls_in', 'in'),
      mainBearing: si(row, 'Fem_psi', 'psi'),
      sideBearing: si(row, 'Fes_psi', 'psi'),
      bendingYield: at(45_000, 'psi'),
      angle: si(row, 'angle_deg', 'deg'),
      planes: 'single',
    }
    const found = yieldValue(inputs)
    if (!found) throw new Error('no value')
    published(found.terms.re, row, '=Re')
    published(found.terms.k1, row, '=k1')
    published(found.terms.angleFactor, row, '=Ktheta')
    for (const mode of ['Im', 'Is', 'II', 'IIIm', 'IIIs', 'IV'] as const) {
      published(found.modes[mode] ?? Number.NaN, row, `=${mode}_lb`, 'lb')
      expect(workedYieldMode(mode)(inputs)?.value).toBe(found.modes[mode])
    }
    expect(found.governing).toBe(row.governs)
  })
})

describe('senses and limits', () => {
  const base: YieldInputs = {
    diameter: at(0.5, 'in'),
    main: at(5.5, 'in'),
    side: at(3, 'in'),
    mainBearing: at(6150, 'psi'),
    sideBearing: at(7500, 'psi'),
    bendingYield: at(45_000, 'psi'),
    angle: 0 as Radians,
    planes: 'double',
  }
  it('is never weaker with more length, strength or yield', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('single', 'double'),
        fc.double({ min: 0.25, max: 0.9, noNaN: true }),
        fc.double({ min: 0.2, max: 8, noNaN: true }),
        fc.double({ min: 0.1, max: 8, noNaN: true }),
        fc.constantFrom('main', 'side', 'mainBearing', 'sideBearing', 'bendingYield', 'diameter'),
        (planes, d, lm, ls, more) => {
          const given = { ...base, planes, diameter: at(d, 'in'), main: at(lm, 'in'), side: at(ls, 'in') } as YieldInputs
          const before = yieldValue(given)?.value ?? Number.NaN
          const after = yieldValue({ ...given, [more]: given[more] * 1.05 })?.value ?? Number.NaN
          expect(after).toBeGreaterThanOrEqual(before * (1 - 1e-12))
        },
      ),
      { numRuns: 500 },
    )
  })
  it('double shear of thick sides is twice the single value in the modes that it has', () => {
    const both = yieldValue(base)
    const one = yieldValue({ ...base, planes: 'single' })
    for (const mode of ['Is', 'IIIs', 'IV'] as const)
      close(both?.modes[mode] ?? Number.NaN, 2 * (one?.modes[mode] ?? Number.NaN), { abs: 0, rel: 1e-12 })
    expect([both?.modes.II, both?.modes.IIIm]).toEqual([undefined, undefined])
    expect(workedYieldMode('II')(base)).toBeNull()
  })
  it('gives nothing for a dowel over 1 in or a member without length', () => {
    expect(yieldValue({ ...base, diameter: at(1.01, 'in') })).toBeNull()
    expect(yieldValue({ ...base, side: 0 as Metres })).toBeNull()
    expect(yieldValue({ ...base, diameter: at(1, 'in') })).not.toBeNull()
  })
  it('is the same number whatever the unit of length', () => {
    const scaled = (k: number) => yieldValue({ ...base, main: (base.main * k) as Metres, side: (base.side * k) as Metres })
    close(scaled(1)?.terms.rt ?? Number.NaN, scaled(2)?.terms.rt ?? Number.NaN, { abs: 0, rel: 1e-12 })
  })
})
