import type { Radians } from '../../units/quantity.ts'
import { toPrinted } from '../cited.ts'
import { interpolate } from '../interpolate.ts'
import {
  type Flow,
  type FreeRoofRow,
  type FreeRoofCase,
  type FreeRoofShape,
  type WindOn,
  alongRidge,
  monoslopeRoof,
  pitchedRoof,
  troughedRoof,
} from '../tables/windRoof.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ shape: FreeRoofShape; angle: Radians; flow: Flow; loadCase: FreeRoofCase; windOn: WindOn }>
export type RoofHalves = Readonly<{ windward: number; leeward: number }>

const read = (rows: readonly FreeRoofRow[], cell: string, degrees: number): RoofHalves | null => {
  const column = (half: 0 | 1) =>
    rows.flatMap((row) => {
      const found = row.cells[cell]
      return found ? [[row.degrees, found[half]] as const] : []
    })
  const windward = interpolate(column(0), degrees)
  const leeward = interpolate(column(1), degrees)
  return windward === null || leeward === null ? null : { windward, leeward }
}

/**
 * Net pressure coefficients of a free roof, wind square to the ridge or eave.
 * @param shape of the roof [1]
 * @param angle of the roof [rad], 0 to 0.785; monoslope 0 to 0.524
 * @param flow clear, or obstructed by more than half below [1]
 * @param loadCase A or B; both are to be run [1]
 * @param windOn which eave meets the wind, for a monoslope roof [1]
 * @returns CN on the windward and leeward halves [1]; null where the figure has no cell
 * Formula: straight line between printed angles; below 7.5 degrees every shape takes the level monoslope row
 * Valid: 0.25 <= h/L <= 1, h mean roof height. Outside: no value past 45 degrees (monoslope 30), nor for an obstructed trough.
 * Source: asce-7-16-27-3
 * Checked by: tests/external/asce-7-16-27-3/check.test.ts
 */
export function freeRoofCoefficients({ shape, angle, flow, loadCase, windOn }: Inputs): RoofHalves | null {
  const degrees = Math.round(toPrinted(angle, 'deg') * 1e9) / 1e9
  if (degrees < 7.5) return degrees < 0 ? null : read(monoslopeRoof, `${windOn} ${loadCase} ${flow}`, 0)
  if (shape === 'monoslope') return read(monoslopeRoof.slice(1), `${windOn} ${loadCase} ${flow}`, degrees)
  return read(shape === 'pitched' ? pitchedRoof : troughedRoof, `${loadCase} ${flow}`, degrees)
}

type AlongInputs = Readonly<{ flow: Flow; loadCase: FreeRoofCase; distanceOverHeight: number }>

/**
 * Net pressure coefficient of a free roof with wind along the ridge.
 * @param flow clear or obstructed [1]
 * @param loadCase A or B [1]
 * @param distanceOverHeight distance from the windward edge over mean roof height [1], non-negative
 * @returns CN [1]
 * Formula: printed zones: up to h, up to 2h, beyond
 * Valid: any shape. Outside: none.
 * Source: asce-7-16-27-3
 * Checked by: tests/external/asce-7-16-27-3/check.test.ts
 */
export function alongRidgeCoefficient({ flow, loadCase, distanceOverHeight }: AlongInputs): number {
  const [near, middle, far] = alongRidge[`${loadCase} ${flow}`]
  return distanceOverHeight <= 1 ? near : distanceOverHeight <= 2 ? middle : far
}

/** CN on the windward half, with its work shown. */
export const workedFreeRoofWindward = showing({
  id: 'free-roof-windward',
  quantity: 'ratio',
  formula: String.raw`C_{NW}(\theta)`,
  terms: { angle: [String.raw`\theta`, 'angle'] },
  sources: ['asce-7-16-27-3'],
  of: (inputs: Inputs): number | null => freeRoofCoefficients(inputs)?.windward ?? null,
})

/** CN on the leeward half, with its work shown. */
export const workedFreeRoofLeeward = showing({
  id: 'free-roof-leeward',
  quantity: 'ratio',
  formula: String.raw`C_{NL}(\theta)`,
  terms: { angle: [String.raw`\theta`, 'angle'] },
  sources: ['asce-7-16-27-3'],
  of: (inputs: Inputs): number | null => freeRoofCoefficients(inputs)?.leeward ?? null,
})

/** CN with wind along the ridge, with its work shown. */
export const workedAlongRidge = showing({
  id: 'along-ridge',
  quantity: 'ratio',
  formula: 'C_N(x/h)',
  terms: { distanceOverHeight: ['x/h', 'ratio'] },
  sources: ['asce-7-16-27-3'],
  of: alongRidgeCoefficient,
})
