import type { Radians } from '../../units/quantity.ts'
import { toPrinted } from '../cited.ts'
import { interpolate } from '../interpolate.ts'
import { edgeZones, leewardRoof, windwardRoof } from '../tables/windRoof.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ angle: Radians; heightOverLength: number }>
export type RoofCoefficients = Readonly<{ windward: readonly [least: number, most: number]; leeward: number }>

type Points = readonly (readonly [number, number])[]
/** Reads at the angle in each row, then between the rows of h/L, whose ends hold outwards as the figure prints them. */
const between = (rows: readonly Readonly<{ ratio: number; at: Points }>[], degrees: number, ratio: number): number | null => {
  const column: [number, number][] = []
  for (const row of rows) {
    const value = interpolate(row.at, degrees)
    if (value === null) return null
    column.push([row.ratio, value])
  }
  return interpolate(column, Math.min(1, Math.max(0.25, ratio)))
}

/**
 * Roof coefficients of an enclosed building, wind square to the ridge, 10 to 45 degrees.
 * @param angle of the roof [rad], 0.175 to 0.785
 * @param heightOverLength mean roof height over building length along the wind [1], positive
 * @returns windward Cp, least and most, both to be run, and leeward Cp [1]; null outside the angles
 * Formula: straight lines between the printed angles and between h/L of 0.25, 0.5 and 1
 * Valid: 10 to 45 degrees. Outside: no value; below 10 degrees the edge zones rule.
 * Source: asce-7-16-27-3
 * Checked by: tests/external/asce-7-16-27-3/check.test.ts
 */
export function enclosedRoofCoefficients({ angle, heightOverLength }: Inputs): RoofCoefficients | null {
  const degrees = Math.round(toPrinted(angle, 'deg') * 1e9) / 1e9
  const least = between(
    windwardRoof.map(({ ratio, least: at }) => ({ ratio, at })),
    degrees,
    heightOverLength,
  )
  const most = between(
    windwardRoof.map(({ ratio, most: at }) => ({ ratio, at })),
    degrees,
    heightOverLength,
  )
  const leeward = between(leewardRoof, Math.min(20, degrees), heightOverLength)
  return least === null || most === null || leeward === null ? null : { windward: [least, most], leeward }
}

type EdgeInputs = Readonly<{ distanceOverHeight: number; heightOverLength: number }>

/**
 * Roof coefficient by distance from the windward edge: roofs below 10 degrees, or any roof with wind along the ridge.
 * @param distanceOverHeight distance from the edge over mean roof height [1], non-negative
 * @param heightOverLength mean roof height over building length along the wind [1], positive
 * @returns least and most Cp [1]
 * Formula: h/L <= 0.5: -0.9 to h, -0.5 to 2h, -0.3 beyond; h/L >= 1: -1.3 to h/2, -0.7 beyond; straight line between; always also -0.18
 * Valid: enclosed and partially enclosed buildings. Outside: none.
 * Source: asce-7-16-27-3
 * Checked by: tests/external/asce-7-16-27-3/check.test.ts
 */
export function edgeZoneCoefficient({ distanceOverHeight: x, heightOverLength }: EdgeInputs): readonly [least: number, most: number] {
  const { low, tall } = edgeZones
  const flatLow = x <= 1 ? low.upToH : x <= 2 ? low.upToTwoH : low.beyond
  const flatTall = x <= 0.5 ? tall.upToHalfH : tall.beyond
  const share = (Math.min(1, Math.max(0.5, heightOverLength)) - 0.5) / 0.5
  return [flatLow + share * (flatTall - flatLow), low.most]
}

/** Most lifting windward Cp, with its work shown. */
export const workedEnclosedWindward = showing({
  id: 'enclosed-windward',
  quantity: 'ratio',
  formula: String.raw`C_p(\theta,\ h/L)`,
  terms: { angle: [String.raw`\theta`, 'angle'], heightOverLength: ['h/L', 'ratio'] },
  sources: ['asce-7-16-27-3'],
  of: (inputs: Inputs): number | null => enclosedRoofCoefficients(inputs)?.windward[0] ?? null,
})

/** Leeward Cp, with its work shown. */
export const workedEnclosedLeeward = showing({
  id: 'enclosed-leeward',
  quantity: 'ratio',
  formula: String.raw`C_p(\theta,\ h/L)`,
  terms: { angle: [String.raw`\theta`, 'angle'], heightOverLength: ['h/L', 'ratio'] },
  sources: ['asce-7-16-27-3'],
  of: (inputs: Inputs): number | null => enclosedRoofCoefficients(inputs)?.leeward ?? null,
})

/** Most lifting Cp of an edge zone, with its work shown. */
export const workedEdgeZone = showing({
  id: 'edge-zone',
  quantity: 'ratio',
  formula: String.raw`C_p(x/h,\ h/L)`,
  terms: { distanceOverHeight: ['x/h', 'ratio'], heightOverLength: ['h/L', 'ratio'] },
  sources: ['asce-7-16-27-3'],
  of: (inputs: EdgeInputs) => edgeZoneCoefficient(inputs)[0],
})
