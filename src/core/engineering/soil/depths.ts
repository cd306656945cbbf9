import { type Metres, type Slope, metres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Least depth of a footing's underside below undisturbed ground. Source: ibc-1809-4. */
export const leastFootingDepth = cited<Metres>(12, 'in', 'ibc-1809-4', 'secondary')

type EdgeInputs = Readonly<{ depthAtAxis: Metres; radius: Metres; slope: Slope }>

/**
 * Depth of a level underside below a sloping grade at the downhill edge.
 * @param depthAtAxis below grade on the axis [m]
 * @param radius of the body at that level [m]
 * @param slope of grade, rise over run [1], non-negative
 * @returns depth below grade at the downhill edge [m]
 * Formula: d_dn = d_c - r s
 * Valid: planar grade. Outside: negative when grade dips under the base there.
 * Source: definition
 * Checked by: tests/external/ibc-1809-5/check.test.ts
 */
export function depthAtDownhillEdge({ depthAtAxis, radius, slope }: EdgeInputs): Metres {
  return metres(depthAtAxis - radius * slope)
}

/**
 * Depth of a level underside below a sloping grade at the uphill edge.
 * @param depthAtAxis below grade on the axis [m]
 * @param radius of the body at that level [m]
 * @param slope of grade, rise over run [1], non-negative
 * @returns depth below grade at the uphill edge [m]
 * Formula: d_up = d_c + r s
 * Valid: planar grade. Outside: none.
 * Source: definition
 * Checked by: tests/external/ibc-1809-5/check.test.ts
 */
export function depthAtUphillEdge({ depthAtAxis, radius, slope }: EdgeInputs): Metres {
  return metres(depthAtAxis + radius * slope)
}

/** Depth at the downhill edge, with its work shown. */
export const workedDepthAtDownhillEdge = showing({
  id: 'depth-at-downhill-edge',
  quantity: 'length',
  formula: 'd_{dn} = d_c - r\\,s',
  terms: { depthAtAxis: ['d_c', 'length'], radius: ['r', 'length'], slope: ['s', 'slope'] },
  sources: ['definition'],
  of: depthAtDownhillEdge,
})

type DaylightInputs = Readonly<{ depth: Metres; slope: Slope }>

/**
 * Level distance from a buried point to the face of a descending slope.
 * @param depth of the point below grade at the downhill edge [m], non-negative
 * @param slope of grade, rise over run [1]
 * @returns distance to daylight [m]; null on level ground
 * Formula: L = y/s
 * Valid: planar slope. Outside: level ground never daylights; no value.
 * Source: definition
 * Checked by: tests/external/ibc-1808-7/check.test.ts
 */
export function distanceToDaylight({ depth, slope }: DaylightInputs): Metres | null {
  return slope === 0 ? null : metres(depth / slope)
}

/** Depth at the uphill edge, with its work shown. */
export const workedDepthAtUphillEdge = showing({
  id: 'depth-at-uphill-edge',
  quantity: 'length',
  formula: String.raw`d_{up} = d_c + r\,s`,
  terms: { depthAtAxis: ['d_c', 'length'], radius: ['r', 'length'], slope: ['s', 'slope'] },
  sources: ['definition'],
  of: depthAtUphillEdge,
})

/** Distance to daylight, with its work shown. */
export const workedDistanceToDaylight = showing({
  id: 'distance-to-daylight',
  quantity: 'length',
  formula: 'L = y/s',
  terms: { depth: ['y', 'length'], slope: ['s', 'slope'] },
  sources: ['definition'],
  of: distanceToDaylight,
})
