import { species } from '../engineering/tables/species.ts'
import type { Role } from '../model/solid.ts'
import type { PierSpec, Soil } from '../model/spec.ts'
import { type SoilValues, soilValues } from './uplift/soilValues.ts'
import { type Weighing, weighing } from './unitWeights.ts'

/** What the materials of one pier are taken to be: by the tables and by the user, unless somebody tries other figures. */
export type Properties = Readonly<{
  weighing: (role: Role) => Weighing
  soil: (soil: Soil) => SoilValues
  /** Specific gravity of the post's wood [1]. */
  gravity: number
}>

export const tableProperties = (spec: PierSpec): Properties => ({
  weighing: (role) => weighing(role, spec),
  soil: soilValues,
  gravity: species[spec.post.species].gravity.value,
})
