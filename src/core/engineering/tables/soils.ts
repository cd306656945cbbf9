import type { PresumptiveClass } from '../../model/spec.ts'
import type { Metres, Pascals, PressureGradient, Radians, UnitWeight } from '../../units/quantity.ts'
import { type Cited, cited } from '../cited.ts'

/**
 * Presumptive allowable values of one class, and estimates for what the table does not give.
 * `friction` multiplies dead load; `cohesion` multiplies contact area; each class has one of the two.
 */
export type PresumptiveSoil = Readonly<{
  bearing: Cited<Pascals>
  /** Lateral bearing gained per depth below grade. */
  lateral: Cited<PressureGradient>
  friction: Cited | null
  cohesion: Cited<Pascals> | null
  /** USCS groups that the class takes in. */
  groups: readonly string[]
  /**
   * Low estimates for a first look, never presumptive values of the code: the lightest row of the class among the
   * suggested unit weights, the lowest credible friction angle. `frictionAngle` null: no friction method for this class.
   */
  estimate: Readonly<{ moist: Cited<UnitWeight>; saturated: Cited<UnitWeight>; frictionAngle: Cited<Radians> | null }>
}>

const table = 'ibc-1806-2'
const psf = (printed: number) => cited<Pascals>(printed, 'psf', table, 'secondary')
const perFoot = (printed: number) => cited<PressureGradient>(printed, 'psf/ft', table, 'secondary')
const share = (printed: number) => cited(printed, '1', table, 'secondary')
const weights = (moist: number, saturated: number) => ({
  moist: cited<UnitWeight>(moist, 'pcf', 'assumption', 'assumed here'),
  saturated: cited<UnitWeight>(saturated, 'pcf', 'assumption', 'assumed here'),
})

/** IBC Table 1806.2, five classes. Printed psf, psf/ft. Source: ibc-1806-2. Estimates: see each row. */
export const presumptiveSoils: Readonly<Record<PresumptiveClass, PresumptiveSoil>> = {
  'crystalline-rock': {
    bearing: psf(12_000),
    lateral: perFoot(1200),
    friction: share(0.7),
    cohesion: null,
    groups: [],
    estimate: { ...weights(150, 155), frictionAngle: null },
  },
  'foliated-rock': {
    bearing: psf(4000),
    lateral: perFoot(400),
    friction: share(0.35),
    cohesion: null,
    groups: [],
    estimate: { ...weights(140, 145), frictionAngle: null },
  },
  gravel: {
    bearing: psf(3000),
    lateral: perFoot(200),
    friction: share(0.35),
    cohesion: null,
    groups: ['GW', 'GP'],
    // GP of the suggested weights; the top of "medium" in EM 1110-2-2504 Table 3-1.
    estimate: { ...weights(126, 137), frictionAngle: cited<Radians>(36, 'deg', 'em-1110-2-2504', 'assumed here') },
  },
  sand: {
    bearing: psf(2000),
    lateral: perFoot(150),
    friction: share(0.25),
    cohesion: null,
    groups: ['SW', 'SP', 'SM', 'SC', 'GM', 'GC'],
    // SP of the suggested weights; the top of "loose" in EM 1110-2-2504 Table 3-1.
    estimate: { ...weights(119, 131), frictionAngle: cited<Radians>(30, 'deg', 'em-1110-2-2504', 'assumed here') },
  },
  clay: {
    bearing: psf(1500),
    lateral: perFoot(100),
    friction: null,
    cohesion: psf(130),
    groups: ['CL', 'ML', 'MH', 'CH'],
    // MH of the suggested weights; CH, the lowest friction angle of the class in Huang's Table 3.1.
    estimate: { ...weights(109, 116), frictionAngle: cited<Radians>(19, 'deg', 'usbr-huang-1983', 'assumed here') },
  },
}

/** Depth below grade past which lateral bearing gains no more, 15 ft. Source: ibc-1806-3 (1806.3.3). */
export const lateralDepthCap = cited<Metres>(15, 'ft', 'ibc-1806-3', 'secondary')
/** Allowable shaft resistance is never more than this. Source: ibc-1810-3-3-1-4. */
export const shaftResistanceCap = cited<Pascals>(500, 'psf', 'ibc-1810-3-3-1-4', 'secondary')
/** Cast-in-place shafts narrower than this have no presumptive side friction. Source: ibc-1810-3-3-1-4, from memory. */
export const shaftResistanceMinDiameter = cited<Metres>(12, 'in', 'ibc-1810-3-3-1-4', 'from memory')
