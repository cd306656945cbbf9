import { waterUnitWeight } from '../../engineering/tables/materials.ts'
import type { SoilLayer } from '../../engineering/soil/verticalStress.ts'
import { effectiveStress } from '../../engineering/soil/verticalStress.ts'
import { type Metres, metres, type Pascals, pascals, type UnitWeight } from '../../units/quantity.ts'
import type { PierFrame } from '../pierFrame.ts'
import { nativeLayers } from '../pierZones.ts'
import { type Properties, tableProperties } from '../properties.ts'
import type { SoilValues } from './soilValues.ts'

/**
 * The ground as a column below the downhill edge of the pier, the careful side on a slope: layers measured down from grade
 * there, and the level water table that much nearer.
 */
export type SoilColumn = Readonly<{
  layers: readonly (SoilLayer & Readonly<{ values: SoilValues }>)[]
  waterTable: Metres | null
  at(depth: number): SoilValues
  stress(depth: number): Pascals
}>

export function soilColumn(frame: PierFrame, properties: Properties = tableProperties(frame.spec)): SoilColumn {
  const { spec, profile } = frame
  const drop = spec.site.slope * profile.shaftRadius
  const first = properties.soil(spec.site.soil)
  const second = spec.site.lower ? properties.soil(spec.site.lower.soil) : first
  const layers = nativeLayers(frame).map((layer) => {
    const weight = properties.weighing(layer.role)
    return {
      thickness: metres(layer.to === null ? Number.POSITIVE_INFINITY : layer.to - layer.from),
      moist: weight.moist as UnitWeight,
      saturated: weight.saturated as UnitWeight,
      values: layer.role === 'soil-lower' ? second : first,
    }
  })
  const waterTable = spec.site.waterTable === null ? null : metres(Math.max(0, spec.site.waterTable - drop))
  return {
    layers,
    waterTable,
    at: (depth) => {
      let bottom = 0
      for (const layer of layers) {
        bottom += layer.thickness
        if (depth < bottom) return layer.values
      }
      return first
    },
    stress: (depth) => pascals(effectiveStress(layers, waterTable, waterUnitWeight.value, metres(depth))),
  }
}

/** Depths at which one soil gives way to the next [m]. */
export function layerDepths(column: SoilColumn): Metres[] {
  let bottom = 0
  return column.layers.slice(0, -1).map((layer) => {
    bottom += layer.thickness
    return metres(bottom)
  })
}

/** The different soils between two depths [m], from the top down. */
export const soilsBetween = (column: SoilColumn, { from, to }: Readonly<{ from: number; to: number }>): readonly SoilValues[] => [
  ...new Set([from, ...layerDepths(column).filter((depth) => depth > from && depth < to)].map((depth) => column.at(depth))),
]
