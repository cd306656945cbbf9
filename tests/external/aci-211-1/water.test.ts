import { describe, expect, it } from 'vitest'
import { ratioWithAdded, strengthLeft, waterCementForStrength, workedStrengthLeft } from '../../../src/core/engineering/mix/addedWater.ts'
import { cementPerVolume } from '../../../src/core/engineering/tables/hydration.ts'
import { waterUnitWeight } from '../../../src/core/engineering/tables/materials.ts'
import { close } from '../../close.ts'
import { at, digits, has, published, readCases, si } from '../cases.ts'

const water = waterUnitWeight.value
const cement = cementPerVolume.usual.value
const gallonPerYard = at<number>(1, 'gal') / at<number>(1, 'yd3')

describe('water added at the site', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s psi, read the other way', (_, row) => {
    const strength = si<never>(row, '=psi', 'psi')
    close(waterCementForStrength({ strength, airEntrained: false }) ?? Number.NaN, digits(row, 'plain'), { abs: 1e-9, rel: 0 })
    if (has(row, 'air'))
      published(waterCementForStrength({ strength, airEntrained: true }) ?? Number.NaN, { ...row, '=air': row.air ?? '' }, '=air')
  })
  it('one gallon a cubic yard takes about what the trade says: 150 to 200 psi near 4500 psi', () => {
    const ratio = waterCementForStrength({ strength: at(4500, 'psi'), airEntrained: false }) ?? Number.NaN
    const left = strengthLeft({ ratio, cement, added: gallonPerYard, water, airEntrained: false }) ?? Number.NaN
    expect(4500 * (1 - left)).toBeGreaterThan(150)
    expect(4500 * (1 - left)).toBeLessThan(200)
    close(ratioWithAdded({ ratio, cement, added: gallonPerYard, water }) - ratio, 8.345 / 564, { abs: 0, rel: 1e-3 })
  })
  it('takes more the more is added, and has no value outside the table', () => {
    const left = (gallons: number) =>
      strengthLeft({ ratio: 0.5, cement, added: gallons * gallonPerYard, water, airEntrained: false }) ?? Number.NaN
    expect(left(0)).toBe(1)
    for (const gallons of [1, 2, 3, 5, 8]) expect(left(gallons)).toBeLessThan(left(gallons - 1))
    expect(workedStrengthLeft({ ratio: 0.5, cement, added: 40 * gallonPerYard, water, airEntrained: false })).toBeNull()
    expect(waterCementForStrength({ strength: at(1500, 'psi'), airEntrained: false })).toBeNull()
  })
})
