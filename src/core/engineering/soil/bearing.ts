import { type CubicMetres, type Newtons, type Pascals, type SquareMetres, type UnitWeight, pascals } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type GrossInputs = Readonly<{ load: Newtons; weight: Newtons; area: SquareMetres }>

/**
 * Gross bearing pressure under a pier: the pier's own weight counts as load.
 * @param load from above [N], non-negative
 * @param weight of the pier [N], non-negative
 * @param area of concrete or pad on undisturbed soil [m2], positive
 * @returns bearing pressure [Pa]
 * Formula: q = (N + W)/A
 * Valid: load on the axis. Outside: with a moment the edge carries more.
 * Source: ibc-1807-3-2-3
 * Checked by: tests/external/ibc-1807-3-2-3/check.test.ts
 */
export function bearingGross({ load, weight, area }: GrossInputs): Pascals {
  return pascals((load + weight) / area)
}

type NetInputs = Readonly<{ load: Newtons; weight: Newtons; area: SquareMetres; volume: CubicMetres; soil: UnitWeight }>

/**
 * Net bearing pressure under a pier: only what the pier weighs more than the soil it replaced.
 * @param load from above [N], non-negative
 * @param weight of the pier, above grade and below [N], non-negative
 * @param area of concrete or pad on undisturbed soil [m2], positive
 * @param volume of the pier below grade [m3]
 * @param soil unit weight of the soil replaced [N/m3]
 * @returns bearing pressure [Pa]
 * Formula: q = (N + W - gs V)/A
 * Valid: the code does not say which of the two is meant. Outside: gross is the careful reading and the default.
 * Source: ibc-1807-3-2-3
 * Checked by: tests/external/ibc-1807-3-2-3/check.test.ts
 */
export function bearingNet({ load, weight, area, volume, soil }: NetInputs): Pascals {
  return pascals((load + weight - soil * volume) / area)
}

/** Gross bearing, with its work shown. */
export const workedBearingGross = showing({
  id: 'bearing-gross',
  quantity: 'pressure',
  formula: 'q = (N + W)/A',
  terms: { load: ['N', 'force'], weight: ['W', 'weight'], area: ['A', 'area'] },
  sources: ['ibc-1807-3-2-3'],
  of: bearingGross,
})

/** Net bearing, with its work shown. */
export const workedBearingNet = showing({
  id: 'bearing-net',
  quantity: 'pressure',
  formula: String.raw`q = \frac{N + W - \gamma_s V}{A}`,
  terms: {
    load: ['N', 'force'],
    weight: ['W', 'weight'],
    soil: [String.raw`\gamma_s`, 'unitWeight'],
    volume: ['V', 'volume'],
    area: ['A', 'area'],
  },
  sources: ['ibc-1807-3-2-3'],
  of: bearingNet,
})
