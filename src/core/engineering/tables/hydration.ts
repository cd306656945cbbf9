import type { UnitWeight } from '../../units/quantity.ts'
import { cited } from '../cited.ts'

/** Water for each weight of cement: bound at full hydration; bound and in the gel; least for all of it to hydrate, with more water from outside. Source: hydration-water, powers-1948. */
export const hydrationWaterShares = {
  bound: cited(0.23, '1', 'hydration-water', 'secondary'),
  boundAndGel: cited(0.42, '1', 'hydration-water', 'secondary'),
  powersLeast: cited(0.44, '1', 'powers-1948', 'abstract only'),
} as const

/** Water-cement ratio at which all cement can hydrate: sealed, and with water from outside. Source: hydration-water, powers-gel-space. */
export const fullHydrationRatio = {
  sealed: cited(0.42, '1', 'hydration-water', 'secondary'),
  outsideWater: cited(0.36, '1', 'powers-gel-space', 'from memory'),
} as const

/** Cement in a volume of mixed concrete, lb/yd3: 5.5, 6 and 6.5 sacks of 94 lb. No bag of mix was found that prints its own. Source: cement-content. */
export const cementPerVolume = {
  low: cited<UnitWeight>(517, 'lb/yd3', 'cement-content', 'secondary'),
  usual: cited<UnitWeight>(564, 'lb/yd3', 'cement-content', 'secondary'),
  high: cited<UnitWeight>(611, 'lb/yd3', 'cement-content', 'secondary'),
} as const

/** Loose dry mix: unit weight as poured, and specific gravity of its solids; project choices, none published. Source: assumption. */
export const looseMix = {
  low: cited<UnitWeight>(100, 'pcf', 'assumption', 'assumed here'),
  usual: cited<UnitWeight>(110, 'pcf', 'assumption', 'assumed here'),
  high: cited<UnitWeight>(120, 'pcf', 'assumption', 'assumed here'),
  solidsGravity: cited(2.7, '1', 'assumption', 'assumed here'),
} as const

/** Gel and hydrated-cement coefficients of the gel-space law. Source: powers-gel-space; gel-space-textbook. */
export const gelSpaceCoefficients = {
  powers: { gel: cited(0.68, '1', 'powers-gel-space', 'from memory'), hydrated: cited(0.32, '1', 'powers-gel-space', 'from memory') },
  textbook: {
    gel: cited(0.657, '1', 'gel-space-textbook', 'secondary'),
    hydrated: cited(0.319, '1', 'gel-space-textbook', 'secondary'),
  },
} as const

/** Exponent of the gel-space law, and the range in use. Source: powers-gel-space, nist-hydration. */
export const gelSpaceExponent = {
  usual: cited(3, '1', 'powers-gel-space', 'from memory'),
  low: cited(2.6, '1', 'nist-hydration', 'read'),
  high: cited(3, '1', 'nist-hydration', 'read'),
} as const

/**
 * Strength of pure gel as three sources have it, MPa. They differ threefold, since each is fitted to its own cement:
 * no strength is worked out from any of them here, only ratios to a known mix. Source: powers-gel-space, gel-space-textbook, nist-hydration.
 */
export const intrinsicStrengths = [
  cited(234, 'MPa', 'powers-gel-space', 'from memory'),
  cited(240, 'MPa', 'gel-space-textbook', 'secondary'),
  cited(83.55, 'MPa', 'nist-hydration', 'read'),
] as const

/** A mixed, well compacted concrete to compare with: its water-cement ratio and hydration. Source: assumption. */
export const referenceMix = {
  space: cited(0.55, '1', 'assumption', 'assumed here'),
  hydration: cited(0.8, '1', 'assumption', 'assumed here'),
} as const
