import type { SpeciesId } from '../../model/spec.ts'
import type { Standing } from '../../model/worked.ts'
import type { Pascals } from '../../units/quantity.ts'
import { type Cited, cited } from '../cited.ts'
import type { PostSection } from './postSections.ts'
import type { SourceId } from '../sources.ts'

/** Reference design values of one grade of sawn wood, before any factor. */
export type DesignValues = Readonly<{
  bending: Cited<Pascals>
  tension: Cited<Pascals>
  shear: Cited<Pascals>
  compressionAcross: Cited<Pascals>
  compression: Cited<Pascals>
  elasticity: Cited<Pascals>
  elasticityMin: Cited<Pascals>
  /** Multipliers in wet service. */
  wet: Readonly<{ tension: Cited; shear: Cited; compression: Cited; elasticity: Cited }>
}>
export type Grade = 'Select Structural' | 'No.1' | 'No.2'
export type Species = Readonly<{
  /** Specific gravity, oven-dry, assigned to the group. */
  gravity: Cited
  /** 5x5 and larger ("posts and timbers"). */
  timber: Readonly<Partial<Record<Grade, DesignValues>> & { 'No.2': DesignValues }>
  /** 2 to 4 in thick; for southern pine the values of a 4-in width, which already hold the size factor. */
  lumber: Readonly<{ 'No.2': DesignValues }>
}>

type Seven = readonly [fb: number, ft: number, fv: number, fcAcross: number, fc: number, e: number, eMin: number]
type Wet = readonly [tension: number, shear: number, compression: number, elasticity: number]
const values = (
  row: Seven,
  wet: Wet,
  source: SourceId,
  standing: Standing,
  better: Partial<Record<'compression' | 'elasticity', Standing>> = {},
): DesignValues => {
  const psi = (printed: number, at: Standing = standing) => cited<Pascals>(printed, 'psi', source, at)
  const factor = (printed: number, at: Standing) => cited(printed, '1', source, at)
  const wetStanding = source === 'nds-supplement-4d' && wet[2] === 0.91 ? 'secondary' : 'from memory'
  return {
    bending: psi(row[0]),
    tension: psi(row[1]),
    shear: psi(row[2]),
    compressionAcross: psi(row[3]),
    compression: psi(row[4], better.compression),
    elasticity: psi(row[5], better.elasticity),
    elasticityMin: psi(row[6]),
    wet: {
      tension: factor(wet[0], wetStanding),
      shear: factor(wet[1], wetStanding),
      compression: factor(wet[2], wetStanding),
      elasticity: factor(wet[3], wetStanding),
    },
  }
}
const timber = (row: Seven, standing: Standing = 'from memory') => values(row, [1, 1, 0.91, 1], 'nds-supplement-4d', standing)
/** Printed southern pine timber values already hold wet service. */
const pineTimber = (row: Seven, better = {}) => values(row, [1, 1, 1, 1], 'nds-supplement-4d', 'from memory', better)
const lumber = (row: Seven, standing: Standing) => values(row, [1, 0.97, 0.8, 0.9], 'nds-supplement-4a', standing)
const gravity = (printed: number) => cited(printed, '1', 'nds-2018-12-3-3', 'secondary')

/**
 * Species groups, psi. Order in each row: Fb, Ft, Fv, Fc across the grain, Fc, E, Emin.
 * Source: nds-2018-12-3-3 (gravity), nds-supplement-4d (timbers), nds-supplement-4a (lumber).
 */
export const species: Readonly<Record<SpeciesId, Species>> = {
  'southern-pine': {
    gravity: gravity(0.55),
    timber: {
      'Select Structural': pineTimber([1500, 1000, 165, 375, 950, 1.5e6, 550e3]),
      'No.1': pineTimber([1350, 900, 165, 375, 825, 1.5e6, 550e3]),
      'No.2': pineTimber([850, 550, 165, 375, 525, 1.2e6, 440e3], { compression: 'secondary', elasticity: 'secondary' }),
    },
    lumber: { 'No.2': lumber([1100, 675, 175, 565, 1450, 1.4e6, 510e3], 'from memory') },
  },
  'douglas-fir-larch': {
    gravity: gravity(0.5),
    timber: {
      'No.1': timber([1200, 825, 170, 625, 1000, 1.6e6, 580e3]),
      'No.2': timber([750, 475, 170, 625, 700, 1.3e6, 470e3], 'secondary'),
    },
    lumber: { 'No.2': lumber([900, 575, 180, 625, 1350, 1.6e6, 580e3], 'secondary') },
  },
  'hem-fir': {
    gravity: gravity(0.43),
    timber: { 'No.2': timber([575, 375, 140, 405, 575, 1.1e6, 400e3]) },
    lumber: { 'No.2': lumber([850, 525, 150, 405, 1300, 1.3e6, 470e3], 'secondary') },
  },
  'spruce-pine-fir': {
    gravity: gravity(0.42),
    timber: { 'No.2': timber([500, 325, 125, 425, 500, 1e6, 370e3]) },
    lumber: { 'No.2': lumber([875, 450, 135, 425, 1150, 1.4e6, 510e3], 'secondary') },
  },
  cedar: {
    gravity: gravity(0.36),
    timber: { 'No.2': timber([500, 350, 140, 425, 500, 0.8e6, 290e3]) },
    lumber: { 'No.2': lumber([700, 425, 155, 425, 650, 1e6, 370e3], 'from memory') },
  },
}

/**
 * No.2 values for a post by how it is made. Poles take the timber row: chapter 6 of the NDS, which has their own values, was not read.
 * @param id species group
 * @param make how the post is made, from the table of sections
 * @returns reference design values of grade No.2
 * Source: nds-supplement-4d, nds-supplement-4a
 * Checked by: tests/core/engineering/tables/species.test.ts
 */
export const postDesignValues = (id: SpeciesId, make: PostSection['make']): DesignValues =>
  make === 'lumber' || make === 'laminated' ? species[id].lumber['No.2'] : species[id].timber['No.2']

export type SpeciesGroup =
  | 'southern-pine'
  | 'douglas-fir-larch'
  | 'douglas-fir-larch-north'
  | 'douglas-fir-south'
  | 'hem-fir-north'
  | 'hem-fir'
  | 'spruce-pine-fir'
  | 'spruce-pine-fir-south'
  | 'western-cedars'
  | 'mixed-southern-pine'
  | 'ponderosa-pine'
  | 'red-pine'
  | 'redwood'
  | 'western-woods'
/** Assigned specific gravities, the whole list that was seen. Source: nds-2018-12-3-3. */
export const assignedGravity: Readonly<Record<SpeciesGroup, Cited>> = {
  'southern-pine': gravity(0.55),
  'douglas-fir-larch': gravity(0.5),
  'douglas-fir-larch-north': gravity(0.49),
  'douglas-fir-south': gravity(0.46),
  'hem-fir-north': gravity(0.46),
  'hem-fir': gravity(0.43),
  'spruce-pine-fir': gravity(0.42),
  'spruce-pine-fir-south': gravity(0.36),
  'western-cedars': gravity(0.36),
  'mixed-southern-pine': gravity(0.51),
  'ponderosa-pine': gravity(0.43),
  'red-pine': gravity(0.44),
  redwood: gravity(0.37),
  'western-woods': gravity(0.36),
}
