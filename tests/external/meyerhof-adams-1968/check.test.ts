import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { breakoutFactorSand, breakoutSand, workedBreakoutSand } from '../../../src/core/engineering/soil/breakoutSand.ts'
import type { Metres, SquareMetres, UnitWeight } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, has, published, readCases, si } from '../cases.ts'

const round = (width: number, depth: number, degrees: number) =>
  breakoutFactorSand({
    width: width as Metres,
    length: width as Metres,
    depth: depth as Metres,
    frictionAngle: at(degrees, 'deg'),
    round: true,
  })

describe('breakout of a round pad in sand', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const metric = has(row, 'B_m')
    const width = metric ? si(row, 'B_m') : si(row, 'B_in', 'in')
    const depth = metric ? si(row, 'Df_m') : si(row, 'Df_ft', 'ft')
    const factor = round(width, depth, si(row, 'phi_deg'))
    published(factor?.ratio ?? Number.NaN, row, '=R')
    published(factor?.fq ?? Number.NaN, row, '=Fq')
    const inputs = {
      fq: factor?.fq ?? Number.NaN,
      unitWeight: metric ? si<UnitWeight>(row, 'g_kN/m3', 'kN/m3') : si<UnitWeight>(row, 'g_pcf', 'pcf'),
      area: ((Math.PI * width ** 2) / 4) as SquareMetres,
      depth: depth as Metres,
    }
    const ultimate = breakoutSand(inputs)
    published(ultimate, row, '=Qu_kN', 'kN')
    // W4.5's pounds are the rounded kilonewtons: 27,357, printed 27,360.
    published(ultimate, row, '=Qu_lb', 'lb', row.id === 'W4.5' ? 4.5 : 0)
    published(ultimate / 3, row, '=third_lb', 'lb')
    expect(workedBreakoutSand(inputs).standing).toBe('from memory')
  })
  it.each(readCases(import.meta.url, 'critical.csv').map((row) => [row.id, row] as const))(
    'Fq at the critical ratio, %s degrees',
    (_, row) => {
      published(round(1, si(row, 'Rcr'), si(row, 'phi_deg'))?.fq ?? Number.NaN, row, '=Fq')
    },
  )
  it('stays at its critical value when deeper, and says so', () => {
    const at30 = (ratio: number) => round(1, ratio, 30)
    expect(at30(9)?.fq).toBe(at30(4)?.fq)
    expect([at30(4)?.deep, at30(9)?.deep]).toEqual([false, true])
  })
  it('gives nothing outside 20 to 45 degrees', () => {
    expect(round(1, 1, 19.9)).toBeNull()
    expect(round(1, 1, 45.1)).toBeNull()
    expect(round(1, 1, 20)).not.toBeNull()
    expect(round(1, 1, 45)).not.toBeNull()
  })
  it('a square asked for as a rectangle is the round form', () => {
    const square = breakoutFactorSand({
      width: 1 as Metres,
      length: 1 as Metres,
      depth: 2 as Metres,
      frictionAngle: at(32, 'deg'),
      round: false,
    })
    close(square?.fq ?? Number.NaN, round(1, 2, 32)?.fq ?? Number.NaN, { abs: 0, rel: 1e-12 })
  })
  it('grows with depth and with friction', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 8, noNaN: true }), fc.double({ min: 20, max: 44, noNaN: true }), (ratio, degrees) => {
        const here = round(1, ratio, degrees)?.fq ?? Number.NaN
        expect(round(1, ratio * 1.1, degrees)?.fq ?? Number.NaN).toBeGreaterThanOrEqual(here)
        expect(round(1, ratio, degrees + 1)?.fq ?? Number.NaN).toBeGreaterThanOrEqual(here)
      }),
    )
  })
})
