import { type Metres, type Pascals, type UnitWeight, pascals } from '../../units/quantity.ts'

/** One soil layer, top down. The last one may be as thick as Infinity. */
export type SoilLayer = Readonly<{ thickness: Metres; moist: UnitWeight; saturated: UnitWeight }>

/**
 * Effective vertical stress in layered ground with a level water table.
 * @param layers soil layers from grade down; shape [n], thickness [m], weights [N/m3]
 * @param waterTable depth of still water below grade [m], null for none
 * @param water unit weight of water [N/m3]
 * @param depth depth below grade [m], non-negative
 * @returns effective vertical stress [Pa]
 * Formula: s'v = sum of g dz above the water + sum of (gsat - gw) dz below it, where gsat is more than gw
 * Valid: level ground, hydrostatic water. Outside: below the last layer its weight goes on; a layer no heavier than water presses on nothing under it.
 * Source: definition
 * Checked by: tests/external/statics/check.test.ts
 */
export function effectiveStress(layers: readonly SoilLayer[], waterTable: Metres | null, water: UnitWeight, depth: Metres): Pascals {
  const wet = waterTable ?? Number.POSITIVE_INFINITY
  let top = 0
  let stress = 0
  layers.forEach((layer, i) => {
    const bottom = i === layers.length - 1 ? depth : Math.min(depth, top + layer.thickness)
    if (bottom > top) {
      const dry = Math.min(bottom, Math.max(top, wet)) - top
      stress += layer.moist * dry + Math.max(0, layer.saturated - water) * (bottom - top - dry)
      top = bottom
    }
  })
  return pascals(stress)
}

/**
 * Depths at which effective stress changes slope between two depths.
 * @param layers soil layers from grade down; shape [n], thickness [m]
 * @param waterTable depth of still water below grade [m], null for none
 * @param from upper depth [m]
 * @param to lower depth [m]
 * @returns ascending depths [m], `from` and `to` included
 * Formula: layer boundaries and the water table that lie between
 * Valid: from <= to. Outside: both ends come back as they are.
 * Source: definition
 * Checked by: tests/external/statics/check.test.ts
 */
export function stressBreaks(layers: readonly SoilLayer[], waterTable: Metres | null, from: Metres, to: Metres): readonly Metres[] {
  const cuts: number[] = [from, to]
  let bottom = 0
  for (const layer of layers) {
    bottom += layer.thickness
    if (bottom > from && bottom < to) cuts.push(bottom)
  }
  if (waterTable !== null && waterTable > from && waterTable < to) cuts.push(waterTable)
  return [...new Set(cuts)].sort((a, b) => a - b) as Metres[]
}
