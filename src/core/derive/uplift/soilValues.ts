import { presumptiveSoils } from '../../engineering/tables/soils.ts'
import type { SourceId } from '../../engineering/sources.ts'
import type { Soil } from '../../model/spec.ts'
import type { Standing } from '../../model/worked.ts'
import type { Pascals, PressureGradient, Radians } from '../../units/quantity.ts'

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
