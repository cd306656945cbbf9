import type { PresumptiveClass } from '../../model/spec.ts'
import type { Standing } from '../../model/worked.ts'
import type { Metres } from '../../units/quantity.ts'
import { type Cited, cited } from '../cited.ts'
import type { SourceId } from '../sources.ts'

const rise = (printed: number, source: SourceId, standing: Standing = 'secondary') => cited<Metres>(printed, 'cm', source, standing)

/** Height that water rises above the water table, cm. Source: heath-1983. */
export const riseByHeath = {
  'coarse-sand': rise(12.5, 'heath-1983'),
  'medium-sand': rise(25, 'heath-1983'),
  'fine-sand': rise(40, 'heath-1983'),
  silt: rise(100, 'heath-1983'),
} as const

/** Height that water rises, cm, from an equation made for coarse grains. Its own readers doubt the silts. Source: fetter-1994; doubt: salim-hampton-2012. */
export const riseByFetter: Readonly<Record<string, Readonly<{ rise: Cited<Metres>; doubted: boolean }>>> = {
  'fine-silt': { rise: rise(750, 'fetter-1994'), doubted: true },
  'coarse-silt': { rise: rise(300, 'fetter-1994'), doubted: true },
  'very-fine-sand': { rise: rise(100, 'fetter-1994'), doubted: true },
  'fine-sand': { rise: rise(50, 'fetter-1994'), doubted: false },
  'medium-sand': { rise: rise(25, 'fetter-1994'), doubted: false },
  'coarse-sand': { rise: rise(15, 'fetter-1994'), doubted: false },
  'very-coarse-sand': { rise: rise(4, 'fetter-1994'), doubted: false },
  'fine-gravel': { rise: rise(1.5, 'fetter-1994'), doubted: false },
}

/**
 * Range of rise for each presumptive class: published rows that bracket it. `high` is null where no figure that others
 * agree with was found (silt and clay: a metre and more); both null for rock. Source: heath-1983, fetter-1994; the pairing is ours.
 */
export const capillaryRise: Readonly<Record<PresumptiveClass, Readonly<{ low: Cited<Metres> | null; high: Cited<Metres> | null }>>> = {
  'crystalline-rock': { low: null, high: null },
  'foliated-rock': { low: null, high: null },
  gravel: { low: rise(1.5, 'fetter-1994', 'assumed here'), high: rise(4, 'fetter-1994', 'assumed here') },
  sand: { low: rise(12.5, 'heath-1983', 'assumed here'), high: rise(50, 'fetter-1994', 'assumed here') },
  clay: { low: rise(100, 'heath-1983', 'assumed here'), high: null },
}
