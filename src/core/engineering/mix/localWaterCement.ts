import type { Metres, UnitWeight } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type LocalInputs = Readonly<{ saturation: number; voids: number; bulk: UnitWeight; cementShare: number; water: UnitWeight }>

/**
 * Water-cement ratio of dry mix whose voids are filled to a share.
 * @param saturation share of the voids that holds water [1], 0 to 1
 * @param voids share of the pack that is not solid [1]
 * @param bulk unit weight of the pack, dry [N/m3], positive
 * @param cementShare cement in the dry mix by weight [1], positive
 * @param water unit weight of water [N/m3]
 * @returns water over cement by weight [1]
 * Formula: w/c = Sw n w/(c g)
 * Valid: water where it was put, none drawn off by the soil. Outside: it moves for days.
 * Source: computed-here
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function localWaterCement({ saturation, voids, bulk, cementShare, water }: LocalInputs): number {
  return (saturation * voids * water) / (cementShare * bulk)
}

type SaturationInputs = Readonly<{ ratio: number; voids: number; bulk: UnitWeight; cementShare: number; water: UnitWeight }>

/**
 * Share of the voids that water for a given ratio fills.
 * @param ratio water over cement by weight [1]
 * @param voids share of the pack that is not solid [1], positive
 * @param bulk unit weight of the pack, dry [N/m3]
 * @param cementShare cement in the dry mix by weight [1]
 * @param water unit weight of water [N/m3]
 * @returns share of the voids [1]; above 1 the pack cannot hold that much
 * Formula: Sw = (w/c) c g/(n w)
 * Valid: as above. Outside: none.
 * Source: computed-here
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function saturationForRatio({ ratio, voids, bulk, cementShare, water }: SaturationInputs): number {
  return (ratio * cementShare * bulk) / (voids * water)
}

type DepthInputs = LocalInputs & Readonly<{ below: Metres; front: Metres }>

/**
 * Water-cement ratio at a depth in a pour wetted from the top.
 * @param saturation share of the voids filled behind the front [1]
 * @param voids share of the pack that is not solid [1]
 * @param bulk unit weight of the pack, dry [N/m3]
 * @param cementShare cement in the dry mix by weight [1]
 * @param water unit weight of water [N/m3]
 * @param below depth below the top of the mix [m], non-negative
 * @param front depth that the water reached [m]
 * @returns water over cement by weight [1]; zero below the front
 * Formula: w/c behind the front, 0 below it
 * Valid: a sharp front. Outside: real fronts are uneven; water goes on moving.
 * Source: computed-here
 * Checked by: tests/core/engineering/mix/dryMix.test.ts
 */
export function waterCementAtDepth({ below, front, ...pack }: DepthInputs): number {
  return below <= front ? localWaterCement(pack) : 0
}

type SpaceInputs = Readonly<{ bulk: UnitWeight; solidsGravity: number; cementShare: number; water: UnitWeight }>

/**
 * Space in a pack that gel would have to fill, as the water that would fit there for each weight of cement.
 * @param bulk unit weight of the pack, dry [N/m3], positive
 * @param solidsGravity specific gravity of the grains [1]
 * @param cementShare cement in the dry mix by weight [1], positive
 * @param water unit weight of water [N/m3]
 * @returns space over cement by weight of water [1], in mL for each gram of cement; null where the pack would be heavier than its grains
 * Formula: s = (1/g - 1/(Gs w)) w/c
 * Valid: loose or packed, wet or dry: air counts as space. Outside: no value.
 * Source: computed-here
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function spaceRatio({ bulk, solidsGravity, cementShare, water }: SpaceInputs): number | null {
  const space = (water / bulk - 1 / solidsGravity) / cementShare
  return space >= 0 ? space : null
}

const packTerms = {
  voids: ['n', 'ratio'],
  water: ['w', 'unitWeight'],
  cementShare: ['c', 'ratio'],
  bulk: [String.raw`\gamma`, 'unitWeight'],
} as const

/** Local water-cement ratio, with its work shown. */
export const workedLocalWaterCement = showing({
  id: 'local-water-cement',
  quantity: 'ratio',
  formula: String.raw`w/c = \frac{S_w\,n\,w}{c\,\gamma}`,
  terms: { saturation: ['S_w', 'ratio'], ...packTerms },
  sources: ['computed-here'],
  of: localWaterCement,
})

/** Share of voids filled, with its work shown. */
export const workedSaturationForRatio = showing({
  id: 'saturation-for-ratio',
  quantity: 'ratio',
  formula: String.raw`S_w = \frac{(w/c)\,c\,\gamma}{n\,w}`,
  terms: { ratio: ['w/c', 'ratio'], ...packTerms },
  sources: ['computed-here'],
  of: saturationForRatio,
})

/** Space to fill, with its work shown. */
export const workedSpaceRatio = showing({
  id: 'space-ratio',
  quantity: 'ratio',
  formula: String.raw`s = \frac{1}{c}\left(\frac{w}{\gamma} - \frac{1}{G_s}\right)`,
  terms: {
    cementShare: ['c', 'ratio'],
    water: ['w', 'unitWeight'],
    bulk: [String.raw`\gamma`, 'unitWeight'],
    solidsGravity: ['G_s', 'ratio'],
  },
  sources: ['computed-here'],
  of: spaceRatio,
})
