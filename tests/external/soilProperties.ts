import type { Standing } from '../../src/core/model/worked.ts'
import type { Pascals, Radians, UnitWeight } from '../../src/core/units/quantity.ts'
import { type Cited, cited } from '../../src/core/engineering/cited.ts'
import type { SourceId } from '../../src/core/engineering/sources.ts'

type Range<T extends number> = Readonly<{ low: Cited<T> | null; high: Cited<T> | null }>
const range = <T extends number>(
  low: number | null,
  high: number | null,
  unit: 'deg' | 'pcf' | '1' | 'psf',
  source: SourceId,
  standing: Standing,
): Range<T> => ({
  low: low === null ? null : cited<T>(low, unit, source, standing),
  high: high === null ? null : cited<T>(high, unit, source, standing),
})

export type DensityState = 'very-loose' | 'loose' | 'medium' | 'dense' | 'very-dense'
export type GranularState = Readonly<{
  blows: Range<number>
  frictionAngle: Range<Radians>
  moist: Range<UnitWeight>
  submerged: Range<UnitWeight>
}>
const em = 'em-1110-2-2504'
const granular = (
  blows: readonly [number | null, number | null],
  angle: readonly [number | null, number | null],
  moist: readonly [number | null, number | null],
  submerged: readonly [number | null, number | null],
): GranularState => ({
  blows: range(blows[0], blows[1], '1', em, 'read'),
  frictionAngle: range<Radians>(angle[0], angle[1], 'deg', em, 'read'),
  moist: range<UnitWeight>(moist[0], moist[1], 'pcf', em, 'read'),
  submerged: range<UnitWeight>(submerged[0], submerged[1], 'pcf', em, 'read'),
})
/** Granular soil by density: SPT blow count, friction angle, unit weights. Null end: open ("less than", "more than"). Source: em-1110-2-2504 Table 3-1. */
export const granularStates: Readonly<Record<DensityState, GranularState>> = {
  'very-loose': granular([0, 4], [null, 28], [null, 100], [null, 60]),
  loose: granular([5, 10], [28, 30], [95, 125], [55, 65]),
  medium: granular([11, 30], [31, 36], [110, 130], [60, 70]),
  dense: granular([31, 50], [37, 41], [110, 140], [65, 85]),
  'very-dense': granular([51, null], [41, null], [130, null], [75, null]),
}

export type SoilGroup = 'GW' | 'GP' | 'GM' | 'GC' | 'SW' | 'SP' | 'SM' | 'SC' | 'ML' | 'CL' | 'MH' | 'CH'
/** Dry unit weight, water content by mass, specific gravity of solids; printed moist, saturated and buoyant weights. */
export type GroupDefaults = Readonly<{
  dry: Cited<UnitWeight>
  waterContent: number
  solidsGravity: number
  printed: Readonly<{ moist: number; saturated: number; buoyant: number }>
}>
const group = (
  dry: number,
  waterContent: number,
  solidsGravity: number,
  moist: number,
  saturated: number,
  buoyant: number,
): GroupDefaults => ({
  dry: cited<UnitWeight>(dry, 'pcf', 'assumption', 'assumed here'),
  waterContent,
  solidsGravity,
  printed: { moist, saturated, buoyant },
})
/** Suggested unit weights by USCS group, chosen inside the published ranges; derived weights in pcf, rounded. Source: assumption. */
export const groupDefaults: Readonly<Record<SoilGroup, GroupDefaults>> = {
  GW: group(130, 0.05, 2.65, 136, 143, 81),
  GP: group(120, 0.05, 2.65, 126, 137, 75),
  GM: group(125, 0.08, 2.67, 135, 141, 78),
  GC: group(122, 0.1, 2.68, 134, 139, 76),
  SW: group(118, 0.08, 2.65, 127, 136, 73),
  SP: group(110, 0.08, 2.65, 119, 131, 68),
  SM: group(112, 0.1, 2.67, 123, 132, 70),
  SC: group(112, 0.12, 2.68, 125, 133, 70),
  ML: group(105, 0.15, 2.68, 121, 128, 66),
  CL: group(105, 0.17, 2.7, 123, 128, 66),
  MH: group(85, 0.28, 2.7, 109, 116, 54),
  CH: group(90, 0.27, 2.72, 114, 119, 57),
}

/** Friction angle of compacted soil by USCS group, degrees; gravels are printed as "more than". Source: usbr-huang-1983 Table 3.1. */
export const compactedFrictionAngles: Readonly<Record<SoilGroup, Cited<Radians>>> = Object.freeze(
  Object.fromEntries(
    Object.entries({ GW: 38, GP: 37, GM: 34, GC: 31, SW: 38, SP: 37, SM: 34, SC: 31, ML: 32, CL: 28, MH: 25, CH: 19 }).map(
      ([id, degrees]) => [id, cited<Radians>(degrees, 'deg', 'usbr-huang-1983', 'secondary')],
    ),
  ) as Record<SoilGroup, Cited<Radians>>,
)

export type Consistency = 'very-soft' | 'soft' | 'medium' | 'stiff' | 'very-stiff' | 'hard'
/** Undrained shear strength of clay by consistency, half of the printed unconfined strength. Null end: open. Source: memory (classic values, secondary web table). */
export const consistencies: Readonly<Record<Consistency, Range<Pascals>>> = {
  'very-soft': range(null, 250, 'psf', 'common-practice', 'secondary'),
  soft: range(250, 500, 'psf', 'common-practice', 'secondary'),
  medium: range(500, 1000, 'psf', 'common-practice', 'secondary'),
  stiff: range(1000, 2000, 'psf', 'common-practice', 'secondary'),
  'very-stiff': range(2000, 4000, 'psf', 'common-practice', 'secondary'),
  hard: range(4000, null, 'psf', 'common-practice', 'secondary'),
}
