import { type Metres, metres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

const times = (printed: number) => cited(printed, '1', 'nds-2018-12-5', 'secondary')
/** Distances in dowel diameters: for a full value, and the floor below which the connection is not permitted. Source: nds-2018-12-5. */
export const dowelDistances = {
  endInTension: { full: times(7), floor: times(3.5) },
  endInTensionHardwood: { full: times(5), floor: times(2.5) },
  endAway: { full: times(4), floor: times(2) },
  spacingInRow: { full: times(4), floor: times(3) },
  edgeSlender: times(1.5),
  rowSpacing: times(1.5),
} as const
/** Greatest distance across the grain between outer dowels, unless shrinkage is seen to. Source: nds-2018-12-5. */
export const greatestAcrossGrain = cited<Metres>(5, 'in', 'nds-2018-12-5', 'secondary')

type Inputs = Readonly<{ actual: Metres; diameter: Metres; full: number; floor: number }>

/**
 * Geometry factor for one distance of a dowel.
 * @param actual distance that is there [m], non-negative
 * @param diameter of the dowel [m], positive
 * @param full distance for the whole value, in diameters [1]
 * @param floor least distance permitted, in diameters [1]
 * @returns Cdelta [1], at most 1; null below the floor, where the connection is not permitted
 * Formula: Cdelta = actual/(n D) <= 1
 * Valid: load along the grain, D of 1/4 in and more. Outside: no value; the smallest of all distances counts for the whole group.
 * Source: nds-2018-12-5
 * Checked by: tests/external/load-path-example/check.test.ts
 */
export function geometryFactor({ actual, diameter, full, floor }: Inputs): number | null {
  if (actual < floor * diameter * (1 - 1e-9)) return null
  return Math.min(1, actual / (full * diameter))
}

type EdgeInputs = Readonly<{ diameter: Metres; bearingLength: Metres; rowSpacing: Metres | null }>

/**
 * Least edge distance for load along the grain.
 * @param diameter of the dowel [m]
 * @param bearingLength l: the smaller of the main length and the total side length [m]
 * @param rowSpacing between rows [m], null for one row
 * @returns least edge distance [m]; a hard limit, no reduction
 * Formula: l/D <= 6: 1.5 D; else the larger of 1.5 D and half the row spacing
 * Valid: load along the grain. Outside: across the grain 4 D loaded, 1.5 D unloaded.
 * Source: nds-2018-12-5
 * Checked by: tests/core/engineering/wood/dowelSpacing.test.ts
 */
export function leastEdgeDistance({ diameter, bearingLength, rowSpacing }: EdgeInputs): Metres {
  const plain = dowelDistances.edgeSlender.value * diameter
  return metres(bearingLength / diameter <= 6 || rowSpacing === null ? plain : Math.max(plain, rowSpacing / 2))
}

/** Geometry factor, with its work shown. */
export const workedGeometryFactor = showing({
  id: 'geometry-factor',
  quantity: 'ratio',
  formula: String.raw`C_\Delta = \min\left(1,\ \frac{a}{n D}\right)`,
  terms: { actual: ['a', 'length'], full: ['n', 'ratio'], diameter: ['D', 'length'] },
  sources: ['nds-2018-12-5'],
  of: geometryFactor,
})

/** Least edge distance, with its work shown. */
export const workedLeastEdgeDistance = showing({
  id: 'least-edge-distance',
  quantity: 'length',
  formula: String.raw`e \ge 1.5D`,
  terms: { diameter: ['D', 'length'], bearingLength: ['l', 'length'], rowSpacing: ['s_r', 'length'] },
  sources: ['nds-2018-12-5'],
  of: leastEdgeDistance,
})
