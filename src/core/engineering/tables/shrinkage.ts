import type { SpeciesId } from '../../model/spec.ts'
import type { Standing } from '../../model/worked.ts'
import { type Cited, cited } from '../cited.ts'

/** Shrinkage from green to oven-dry, share of the green size (volumetric: of the green volume). */
export type Shrinkage = Readonly<{ radial: Cited; tangential: Cited; volumetric: Cited }>
const row = (radial: number, tangential: number, volumetric: number, standing: Standing): Shrinkage => ({
  radial: cited(radial, '%', 'wood-handbook-4-3', standing),
  tangential: cited(tangential, '%', 'wood-handbook-4-3', standing),
  volumetric: cited(volumetric, '%', 'wood-handbook-4-3', standing),
})

/** Percent, as printed. The page with cedars, Douglas-fir and the firs was read; hemlock, pines and spruces are from memory. Source: wood-handbook-4-3. */
export const shrinkage = {
  'douglas-fir-coast': row(4.8, 7.6, 12.4, 'read'),
  'douglas-fir-interior-north': row(3.8, 6.9, 10.7, 'read'),
  'douglas-fir-interior-west': row(4.8, 7.5, 11.8, 'read'),
  'western-redcedar': row(2.4, 5, 6.8, 'read'),
  'northern-white-cedar': row(2.2, 4.9, 7.2, 'read'),
  'fir-balsam': row(2.9, 6.9, 11.2, 'read'),
  'fir-california-red': row(4.5, 7.9, 11.4, 'read'),
  'fir-grand': row(3.4, 7.5, 11, 'read'),
  'fir-noble': row(4.3, 8.3, 12.4, 'read'),
  'fir-pacific-silver': row(4.4, 9.2, 13, 'read'),
  'fir-white': row(3.3, 7, 9.8, 'read'),
  'hemlock-western': row(4.2, 7.8, 12.4, 'from memory'),
  'pine-loblolly': row(4.8, 7.4, 12.3, 'from memory'),
  'pine-longleaf': row(5.1, 7.5, 12.2, 'from memory'),
  'pine-shortleaf': row(4.6, 7.7, 12.3, 'from memory'),
  'pine-slash': row(5.4, 7.6, 12.1, 'from memory'),
  'pine-lodgepole': row(4.3, 6.7, 11.1, 'from memory'),
  'pine-ponderosa': row(3.9, 6.2, 9.7, 'from memory'),
  'spruce-black': row(4.1, 6.8, 11.3, 'from memory'),
  'spruce-engelmann': row(3.8, 7.1, 11, 'from memory'),
  'spruce-red': row(3.8, 7.8, 11.8, 'from memory'),
} as const satisfies Readonly<Record<string, Shrinkage>>
export type ShrinkageRow = keyof typeof shrinkage

/** Species of the table that a post of each group may be. Source: nds-2018-12-3-3 (groups); the pairing is ours, assumption. */
export const speciesOfGroup: Readonly<Record<SpeciesId, readonly ShrinkageRow[]>> = {
  'southern-pine': ['pine-loblolly', 'pine-longleaf', 'pine-shortleaf', 'pine-slash'],
  'douglas-fir-larch': ['douglas-fir-coast', 'douglas-fir-interior-north', 'douglas-fir-interior-west'],
  'hem-fir': ['hemlock-western', 'fir-california-red', 'fir-grand', 'fir-noble', 'fir-pacific-silver', 'fir-white'],
  'spruce-pine-fir': ['fir-balsam', 'pine-lodgepole', 'spruce-black', 'spruce-engelmann', 'spruce-red'],
  cedar: ['western-redcedar', 'northern-white-cedar'],
}

/**
 * Least and greatest shrinkage of the species in a group, in one direction.
 * @param group species group of the post
 * @param direction across the growth rings ('radial') or along them ('tangential')
 * @returns the two rows [1]
 * Source: wood-handbook-4-3
 * Checked by: tests/external/wood-handbook-4-3/check.test.ts
 */
export function groupShrinkage(group: SpeciesId, direction: 'radial' | 'tangential'): Readonly<{ low: Cited; high: Cited }> {
  const rows = speciesOfGroup[group].map((id) => shrinkage[id][direction])
  const [first] = rows
  if (!first) throw new Error(`groupShrinkage: no species in ${group}`)
  return {
    low: rows.reduce((least, one) => (one.value < least.value ? one : least), first),
    high: rows.reduce((most, one) => (one.value > most.value ? one : most), first),
  }
}
