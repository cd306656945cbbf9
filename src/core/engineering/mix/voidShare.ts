import { type CubicMetres, cubicMetres, type UnitWeight } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type ShareInputs = Readonly<{ bulk: UnitWeight; solidsGravity: number; water: UnitWeight }>

/**
 * Share of a dry pack that is not solid.
 * @param bulk unit weight of the pack, dry [N/m3], positive
 * @param solidsGravity specific gravity of the grains [1], positive
 * @param water unit weight of water [N/m3]
 * @returns void share [1]; null where the pack would be heavier than its own grains
 * Formula: n = 1 - g/(Gs w)
 * Valid: dry. Outside: no value.
 * Source: phase-relations
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function voidShare({ bulk, solidsGravity, water }: ShareInputs): number | null {
  const voids = 1 - bulk / (solidsGravity * water)
  return voids >= 0 ? voids : null
}

type FillInputs = Readonly<{ volume: CubicMetres; voids: number }>

/**
 * Water that fills every void of a pack.
 * @param volume of the pack [m3], non-negative
 * @param voids share that is not solid [1]
 * @returns water [m3]
 * Formula: V_w = n V
 * Valid: a pack that does not settle when wetted. Outside: a pack that settles takes less.
 * Source: phase-relations
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function voidWater({ volume, voids }: FillInputs): CubicMetres {
  return cubicMetres(volume * voids)
}

/** Void share, with its work shown. */
export const workedVoidShare = showing({
  id: 'void-share',
  quantity: 'ratio',
  formula: String.raw`n = 1 - \frac{\gamma}{G_s w}`,
  terms: { bulk: [String.raw`\gamma`, 'unitWeight'], solidsGravity: ['G_s', 'ratio'], water: ['w', 'unitWeight'] },
  sources: ['phase-relations'],
  of: voidShare,
})

/** Water to fill the voids, with its work shown. */
export const workedVoidWater = showing({
  id: 'void-water',
  quantity: 'volume',
  formula: 'V_w = n\\,V',
  terms: { voids: ['n', 'ratio'], volume: ['V', 'volume'] },
  sources: ['phase-relations'],
  of: voidWater,
})
