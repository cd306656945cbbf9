/** Net pressure coefficients on the windward and the leeward half; positive pushes on the top surface, negative lifts. */
export type Halves = readonly [windward: number, leeward: number]
export type FreeRoofRow = Readonly<{ degrees: number; cells: Readonly<Record<string, Halves>> }>
export type FreeRoofShape = 'monoslope' | 'pitched' | 'troughed'
export type Flow = 'clear' | 'obstructed'
export type FreeRoofCase = 'A' | 'B'
/**
 * Wind on the high eave (gamma 0) or the low eave (gamma 180) of a monoslope roof. Which eave gamma 0 means was taken from
 * the signs (gamma 0 lifts, so wind meets the open high side); the printed sketch was not seen.
 */
export type WindOn = 'high-eave' | 'low-eave'

const mono = (
  degrees: number,
  high: readonly [Halves, Halves, Halves, Halves],
  low: readonly [Halves, Halves, Halves, Halves],
): FreeRoofRow => ({
  degrees,
  cells: {
    'high-eave A clear': high[0],
    'high-eave A obstructed': high[1],
    'high-eave B clear': high[2],
    'high-eave B obstructed': high[3],
    'low-eave A clear': low[0],
    'low-eave A obstructed': low[1],
    'low-eave B clear': low[2],
    'low-eave B obstructed': low[3],
  },
})
const flat: readonly [Halves, Halves, Halves, Halves] = [
  [1.2, 0.3],
  [-0.5, -1.2],
  [-1.1, -0.1],
  [-1.1, -0.6],
]
/** Monoslope free roof; the first row is for every shape below 7.5 degrees. Source: asce-7-16-27-3 Figure 27.3-4. */
export const monoslopeRoof: readonly FreeRoofRow[] = [
  mono(0, flat, flat),
  mono(
    7.5,
    [
      [-0.6, -1],
      [-1, -1.5],
      [-1.4, 0],
      [-1.7, -0.8],
    ],
    [
      [0.9, 1.5],
      [-0.2, -1.2],
      [1.6, 0.3],
      [0.8, -0.3],
    ],
  ),
  mono(
    15,
    [
      [-0.9, -1.3],
      [-1.1, -1.5],
      [-1.9, 0],
      [-2.1, -0.6],
    ],
    [
      [1.3, 1.6],
      [0.4, -1.1],
      [1.8, 0.6],
      [1.2, -0.3],
    ],
  ),
  mono(
    22.5,
    [
      [-1.5, -1.6],
      [-1.5, -1.7],
      [-2.4, -0.3],
      [-2.3, -0.9],
    ],
    [
      [1.7, 1.8],
      [0.5, -1],
      [2.2, 0.7],
      [1.3, 0],
    ],
  ),
  mono(
    30,
    [
      [-1.8, -1.8],
      [-1.5, -1.8],
      [-2.5, -0.5],
      [-2.3, -1.1],
    ],
    [
      [2.1, 2.1],
      [0.6, -1],
      [2.6, 1],
      [1.6, 0.1],
    ],
  ),
]

const ridge = (degrees: number, aClear: Halves, aObstructed: Halves, bClear: Halves, bObstructed: Halves): FreeRoofRow => ({
  degrees,
  cells: { 'A clear': aClear, 'A obstructed': aObstructed, 'B clear': bClear, 'B obstructed': bObstructed },
})
/** Pitched free roof. Source: asce-7-16-27-3 Figure 27.3-5. */
export const pitchedRoof: readonly FreeRoofRow[] = [
  ridge(7.5, [1.1, -0.3], [-1.6, -1], [0.2, -1.2], [-0.9, -1.7]),
  ridge(15, [1.1, -0.4], [-1.2, -1], [0.1, -1.1], [-0.6, -1.6]),
  ridge(22.5, [1.1, 0.1], [-1.2, -1.2], [-0.1, -0.8], [-0.8, -1.7]),
  ridge(30, [1.3, 0.3], [-0.7, -0.7], [-0.1, -0.9], [-0.2, -1.1]),
  ridge(37.5, [1.3, 0.6], [-0.6, -0.6], [-0.2, -0.6], [-0.3, -0.9]),
  ridge(45, [1.1, 0.9], [-0.5, -0.5], [-0.3, -0.5], [-0.3, -0.7]),
]
const trough = (degrees: number, a: Halves, b: Halves): FreeRoofRow => ({ degrees, cells: { 'A clear': a, 'B clear': b } })
/** Troughed free roof, clear flow; no obstructed cells were seen. Source: asce-7-16-27-3 Figure 27.3-6. */
export const troughedRoof: readonly FreeRoofRow[] = [
  trough(7.5, [-1.1, 0.3], [-0.2, 1.2]),
  trough(15, [-1.1, 0.4], [0.1, 1.1]),
  trough(22.5, [-1.1, -0.1], [-0.1, 0.8]),
  trough(30, [-1.3, -0.3], [0.1, 0.9]),
  trough(37.5, [-1.3, -0.6], [0.2, 0.6]),
  trough(45, [-1.1, -0.9], [0.3, 0.5]),
]
/** Wind along the ridge, all shapes, by distance from the windward edge: up to h, h to 2h, beyond. Source: asce-7-16-27-3 Figure 27.3-7. */
export const alongRidge: Readonly<Record<`${FreeRoofCase} ${Flow}`, readonly [number, number, number]>> = {
  'A clear': [-0.8, -0.6, -0.3],
  'A obstructed': [-1.2, -0.9, -0.6],
  'B clear': [0.8, 0.5, 0.3],
  'B obstructed': [0.5, 0.5, 0.3],
}

export type Enclosure = 'enclosed' | 'partially-enclosed' | 'partially-open' | 'open'
/** Internal pressure coefficient, either sign. Editions disagree on partially open (0.18 or 0). Source: asce-7-16-26-13. */
export const internalPressure: Readonly<Record<Enclosure, number>> = {
  enclosed: 0.18,
  'partially-enclosed': 0.55,
  'partially-open': 0.18,
  open: 0,
}

/** Windward roof coefficients, wind square to the ridge: two values at each angle, for each h/L. Source: asce-7-16-27-3 Figure 27.3-1. */
export const windwardRoof: readonly Readonly<{
  ratio: number
  least: readonly (readonly [number, number])[]
  most: readonly (readonly [number, number])[]
}>[] = [
  {
    ratio: 0.25,
    least: [
      [10, -0.7],
      [15, -0.5],
      [20, -0.3],
      [25, -0.2],
      [30, -0.2],
      [35, 0],
      [45, 0.4],
    ],
    most: [
      [10, -0.18],
      [15, 0],
      [20, 0.2],
      [25, 0.3],
      [30, 0.3],
      [35, 0.4],
      [45, 0.4],
    ],
  },
  {
    ratio: 0.5,
    least: [
      [10, -0.9],
      [15, -0.7],
      [20, -0.4],
      [25, -0.3],
      [30, -0.2],
      [35, -0.2],
      [45, 0],
    ],
    most: [
      [10, -0.18],
      [15, -0.18],
      [20, 0],
      [25, 0.2],
      [30, 0.2],
      [35, 0.3],
      [45, 0.4],
    ],
  },
  {
    ratio: 1,
    least: [
      [10, -1.3],
      [15, -1],
      [20, -0.7],
      [25, -0.5],
      [30, -0.3],
      [35, -0.2],
      [45, 0],
    ],
    most: [
      [10, -0.18],
      [15, -0.18],
      [20, -0.18],
      [25, 0],
      [30, 0.2],
      [35, 0.2],
      [45, 0.3],
    ],
  },
]
/** Leeward roof coefficients, wind square to the ridge, for each h/L; past 20 degrees the last holds. Source: asce-7-16-27-3 Figure 27.3-1. */
export const leewardRoof: readonly Readonly<{ ratio: number; at: readonly (readonly [number, number])[] }>[] = [
  {
    ratio: 0.25,
    at: [
      [10, -0.3],
      [15, -0.5],
      [20, -0.6],
    ],
  },
  {
    ratio: 0.5,
    at: [
      [10, -0.5],
      [15, -0.5],
      [20, -0.6],
    ],
  },
  {
    ratio: 1,
    at: [
      [10, -0.7],
      [15, -0.6],
      [20, -0.6],
    ],
  },
]
/** Roof below 10 degrees, or any roof with wind along the ridge: coefficient by distance from the edge over h. Source: asce-7-16-27-3 Figure 27.3-1. */
export const edgeZones = {
  low: { upToH: -0.9, upToTwoH: -0.5, beyond: -0.3, most: -0.18 },
  tall: { upToHalfH: -1.3, beyond: -0.7, most: -0.18 },
} as const

export type WindExposure = 'B' | 'C' | 'D'
export type WindEdition = '7-16' | '7-22'
/** Terrain constants: exponent and gradient height, ft. Source: asce-7-16-26, asce-7-22-26. */
export const terrain: Readonly<
  Record<WindEdition, Readonly<{ factor: number } & Record<WindExposure, readonly [alpha: number, gradientHeight: number]>>>
> = {
  '7-16': { factor: 2.01, B: [7, 1200], C: [9.5, 900], D: [11.5, 700] },
  '7-22': { factor: 2.41, B: [7.5, 3280], C: [9.8, 2460], D: [11.5, 1935] },
}
/** Printed velocity pressure coefficients by height, ft. The row at 30 ft is from memory. Source: asce-7-16-26-10. */
export const velocityCoefficients: Readonly<Record<WindExposure, readonly (readonly [number, number])[]>> = {
  B: [
    [15, 0.57],
    [20, 0.62],
    [25, 0.66],
    [30, 0.7],
  ],
  C: [
    [15, 0.85],
    [20, 0.9],
    [25, 0.94],
    [30, 0.98],
  ],
  D: [
    [15, 1.03],
    [20, 1.08],
    [25, 1.12],
    [30, 1.16],
  ],
}
