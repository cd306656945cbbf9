import { type UnitWeight, unitWeight } from '../../../src/core/units/quantity.ts'
import { showing } from '../../../src/core/engineering/showing.ts'

type Inputs = Readonly<{ dry: UnitWeight; waterContent: number; solidsGravity: number; water: UnitWeight }>
export type SoilWeights = Readonly<{ voidRatio: number; moist: UnitWeight; saturated: UnitWeight; buoyant: UnitWeight }>

/**
 * Unit weights of soil from its dry unit weight.
 * @param dry dry unit weight [N/m3], positive
 * @param waterContent water by mass of solids [1], non-negative
 * @param solidsGravity specific gravity of the solids [1], about 2.65 to 2.72
 * @param water unit weight of water [N/m3]
 * @returns void ratio [1], moist, saturated and buoyant unit weights [N/m3]
 * Formula: e = Gs gw/gd - 1; gm = gd (1 + w); gsat = gw (Gs + e)/(1 + e); g' = gsat - gw
 * Valid: gd < Gs gw. Outside: a denser soil has no voids; the void ratio comes out negative.
 * Source: phase-relations
 * Checked by: tests/external/phase-relations/check.test.ts
 */
export function soilWeights({ dry, waterContent, solidsGravity, water }: Inputs): SoilWeights {
  const voidRatio = (solidsGravity * water) / dry - 1
  const saturated = (water * (solidsGravity + voidRatio)) / (1 + voidRatio)
  return {
    voidRatio,
    moist: unitWeight(dry * (1 + waterContent)),
    saturated: unitWeight(saturated),
    buoyant: unitWeight(saturated - water),
  }
}

type FromMoist = Readonly<{ moist: UnitWeight; waterContent: number; solidsGravity: number; water: UnitWeight }>
/** Water content and solids gravity taken when only a moist weight is known. Source: assumption. */
export const moistDefaults = { waterContent: 0.1, solidsGravity: 2.65 } as const

/**
 * Saturated unit weight of soil when only its moist weight is known.
 * @param moist moist unit weight [N/m3], positive
 * @param waterContent water by mass of solids [1]
 * @param solidsGravity specific gravity of the solids [1]
 * @param water unit weight of water [N/m3]
 * @returns saturated unit weight [N/m3], never less than `moist`
 * Formula: gd = gm/(1 + w); then as soilWeights
 * Valid: an estimate. Outside: soil entered heavier than its saturated weight is taken as saturated already.
 * Source: phase-relations, assumption
 * Checked by: tests/external/phase-relations/check.test.ts
 */
export function saturatedFromMoist({ moist, waterContent, solidsGravity, water }: FromMoist): UnitWeight {
  const { saturated } = soilWeights({ dry: unitWeight(moist / (1 + waterContent)), waterContent, solidsGravity, water })
  return unitWeight(Math.max(moist, saturated))
}

/** Saturated unit weight from a moist one, with its work shown. */
export const workedSaturatedFromMoist = showing({
  id: 'saturated-from-moist',
  quantity: 'unitWeight',
  formula: String.raw`\gamma_{sat} = \gamma_w\,\frac{G_s + e}{1 + e},\quad e = \frac{G_s\gamma_w(1+w)}{\gamma_m} - 1`,
  terms: {
    moist: [String.raw`\gamma_m`, 'unitWeight'],
    waterContent: ['w', 'ratio'],
    solidsGravity: ['G_s', 'ratio'],
    water: [String.raw`\gamma_w`, 'unitWeight'],
  },
  sources: ['phase-relations', 'assumption'],
  of: saturatedFromMoist,
})
