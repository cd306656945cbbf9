import type { PresumptiveClass } from '../../model/spec.ts'
import { type Cited, cited } from '../cited.ts'

/** Volume once dug and once compacted, for one volume in the ground. */
export type Swell = Readonly<{ loose: Cited; compacted: Cited }>
const row = (loose: number, compacted: number): Swell => ({
  loose: cited(loose, '1', 'fm-5-434', 'from memory'),
  compacted: cited(compacted, '1', 'fm-5-434', 'from memory'),
})
/** Bank to loose and bank to compacted. Source: fm-5-434 Table 1-1. */
export const swell = {
  sand: row(1.11, 0.95),
  loam: row(1.25, 0.9),
  clay: row(1.43, 0.9),
  'blasted-rock': row(1.5, 1.3),
} as const satisfies Readonly<Record<string, Swell>>

const between = (low: Cited, high: Cited) => ({ low, high })
/** Range of bank-to-loose shown for each presumptive class: the table's own rows that bracket the class. Source: fm-5-434 Table 1-1. */
export const swellRange: Readonly<Record<PresumptiveClass, Readonly<{ low: Cited; high: Cited }>>> = {
  'crystalline-rock': between(swell['blasted-rock'].loose, swell['blasted-rock'].loose),
  'foliated-rock': between(swell.clay.loose, swell['blasted-rock'].loose),
  gravel: between(swell.sand.loose, swell.loam.loose),
  sand: between(swell.sand.loose, swell.loam.loose),
  clay: between(swell.loam.loose, swell.clay.loose),
}
/** The range for soil whose class is not known: every earth row. Source: fm-5-434 Table 1-1. */
export const swellRangeUnknown = between(swell.sand.loose, swell.clay.loose)
