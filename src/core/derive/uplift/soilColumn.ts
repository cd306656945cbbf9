import { waterUnitWeight } from '../../engineering/tables/materials.ts'
import { presumptiveSoils } from '../../engineering/tables/soils.ts'
import type { SoilLayer } from '../../engineering/soil/verticalStress.ts'
import { effectiveStress } from '../../engineering/soil/verticalStress.ts'
import type { Soil } from '../../model/spec.ts'
import type { Standing } from '../../model/worked.ts'
import type { SourceId } from '../../engineering/sources.ts'
import { type Metres, metres, type Pascals, type PressureGradient, pascals, type Radians, type UnitWeight } from '../../units/quantity.ts'
import type { PierFrame } from '../pierFrame.ts'
import { nativeLayers } from '../pierZones.ts'
import { weighing } from '../unitWeights.ts'

/** What a check may ask of one native soil. Null where there is no value to be had. */
export type SoilValues = Readonly<{
  soil: Soil
  frictionAngle: Radians | null
  /** Undrained strength the user gave; null for a presumptive class, which has none. */
  cohesion: Pascals | null
  bearing: Pascals
  lateral: PressureGradient
  userFriction: Pascals | null
  source: SourceId
  strengthStanding: Standing
  tableStanding: Standing
}>

export function soilValues(soil: Soil): SoilValues {
  if (soil.kind === 'user') {
    return {
      soil,
      frictionAngle: soil.frictionAngle,
      cohesion: soil.cohesion,
      bearing: soil.allowableBearing,
      lateral: soil.lateral,
      userFriction: soil.sideFriction > 0 ? soil.sideFriction : null,
      source: 'user',
      strengthStanding: 'assumed here',
      tableStanding: 'assumed here',
    }
  }
  const row = presumptiveSoils[soil.class]
  return {
    soil,
    frictionAngle: row.estimate.frictionAngle?.value ?? null,
    cohesion: null,
    bearing: row.bearing.value,
    lateral: row.lateral.value,
    userFriction: null,
    source: row.bearing.source,
    strengthStanding: row.estimate.frictionAngle?.standing ?? 'assumed here',
    tableStanding: row.bearing.standing,
  }
}

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

export function soilColumn(frame: PierFrame): SoilColumn {
  const { spec, profile } = frame
  const drop = spec.site.slope * profile.shaftRadius
  const layers = nativeLayers(frame).map((layer) => {
    const weight = weighing(layer.role, spec)
    const soil = layer.role === 'soil-lower' ? (spec.site.lower?.soil ?? spec.site.soil) : spec.site.soil
    return {
      thickness: metres(layer.to === null ? Number.POSITIVE_INFINITY : layer.to - layer.from),
      moist: weight.moist as UnitWeight,
      saturated: weight.saturated as UnitWeight,
      values: soilValues(soil),
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
      return soilValues(spec.site.soil)
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
