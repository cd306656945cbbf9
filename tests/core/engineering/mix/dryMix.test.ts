import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  localWaterCement,
  saturationForRatio,
  spaceRatio,
  waterCementAtDepth,
  workedLocalWaterCement,
  workedSaturationForRatio,
  workedSpaceRatio,
} from '../../../../src/core/engineering/mix/localWaterCement.ts'
import { voidShare, workedVoidShare, workedVoidWater } from '../../../../src/core/engineering/mix/voidShare.ts'
import { waterUnitWeight } from '../../../../src/core/engineering/tables/materials.ts'
import type { CubicMetres, Metres, UnitWeight } from '../../../../src/core/units/quantity.ts'
import { close } from '../../../close.ts'

const water = waterUnitWeight.value
const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const packs = fc.record({
  bulk: unit(12_000, 20_000).map((v) => v as UnitWeight),
  solidsGravity: unit(2.5, 2.9),
  cementShare: unit(0.1, 0.25),
})

describe('a loose pack', () => {
  it('full of water has the ratio of its whole space', () => {
    fc.assert(
      fc.property(packs, ({ bulk, solidsGravity, cementShare }) => {
        const voids = voidShare({ bulk, solidsGravity, water }) ?? Number.NaN
        const space = spaceRatio({ bulk, solidsGravity, cementShare, water }) ?? Number.NaN
        close(localWaterCement({ saturation: 1, voids, bulk, cementShare, water }), space, { abs: 0, rel: 1e-9 })
      }),
    )
  })
  it('a ratio and its share of the voids go back and forth', () => {
    fc.assert(
      fc.property(packs, unit(0.05, 1), ({ bulk, solidsGravity, cementShare }, saturation) => {
        const pack = { voids: voidShare({ bulk, solidsGravity, water }) ?? Number.NaN, bulk, cementShare, water }
        const ratio = localWaterCement({ saturation, ...pack })
        close(saturationForRatio({ ratio, ...pack }), saturation, { abs: 0, rel: 1e-12 })
      }),
    )
  })
  it('packed denser has less space', () => {
    fc.assert(
      fc.property(packs, ({ bulk, ...rest }) => {
        const space = (weight: number) => spaceRatio({ ...rest, bulk: weight as UnitWeight, water }) ?? Number.NaN
        expect(space(1.05 * bulk)).toBeLessThan(space(bulk))
      }),
    )
  })
  it('is wet above the front and dry below it', () => {
    const pack = { saturation: 0.6, voids: 0.35, bulk: 17_280 as UnitWeight, cementShare: 0.157, water, front: 0.3 as Metres }
    expect(waterCementAtDepth({ ...pack, below: 0.3 as Metres })).toBe(localWaterCement(pack))
    expect(waterCementAtDepth({ ...pack, below: 0.31 as Metres })).toBe(0)
  })
  it('cannot be heavier than its own grains', () => {
    expect(voidShare({ bulk: 30_000 as UnitWeight, solidsGravity: 2.7, water })).toBeNull()
    expect(spaceRatio({ bulk: 30_000 as UnitWeight, solidsGravity: 2.7, cementShare: 0.15, water })).toBeNull()
  })
  it('shows its work', () => {
    const pack = { voids: 0.35, bulk: 17_280 as UnitWeight, cementShare: 0.157, water }
    expect(workedLocalWaterCement({ saturation: 1, ...pack }).standing).toBe('computed here')
    expect(workedSaturationForRatio({ ratio: 0.42, ...pack }).inputs).toHaveLength(5)
    expect(workedSpaceRatio({ bulk: pack.bulk, solidsGravity: 2.7, cementShare: 0.157, water })?.quantity).toBe('ratio')
    expect(workedVoidShare({ bulk: pack.bulk, solidsGravity: 2.7, water })?.quantity).toBe('ratio')
    expect(workedVoidWater({ volume: 1 as CubicMetres, voids: 0.35 }).value).toBe(0.35)
  })
})
