import { materialWeights, type Material, type MaterialId, waterUnitWeight } from '../engineering/tables/materials.ts'
import { looseMix } from '../engineering/tables/hydration.ts'
import { presumptiveSoils } from '../engineering/tables/soils.ts'
import type { Role } from '../model/solid.ts'
import type { PierSpec, Soil } from '../model/spec.ts'
import type { Standing } from '../model/worked.ts'
import type { SourceId } from '../engineering/sources.ts'
import { species } from '../engineering/tables/species.ts'
import { postMoisture, woodUnitWeight } from '../engineering/wood/woodUnitWeight.ts'

/** What a cubic metre of a zone weighs [N/m3], moist and with its voids full of water. */
export type Weighing = Readonly<{ moist: number; saturated: number; source: SourceId; standing: Standing }>

const placedMaterial: Readonly<Partial<Record<Role, MaterialId>>> = {
  topsoil: 'topsoil',
  backfill: 'backfill',
  granular: 'granular',
  gravel: 'gravel',
  mulch: 'mulch',
  'flowable-fill': 'flowable-fill',
  bar: 'steel',
  steel: 'steel',
}

const ofMaterial = (material: Material): Weighing => ({
  moist: material.unitWeight.value,
  saturated: (material.saturated ?? material.unitWeight).value,
  source: material.unitWeight.source,
  standing: material.unitWeight.standing,
})

/** Unit weight of a role in this pier. Wood is taken at 12 % moisture, the light end, since its weight holds the post down. */
export function weighing(role: Role, spec: PierSpec): Weighing {
  if (role === 'concrete') return ofMaterial(materialWeights[`concrete-${spec.concrete.unitWeight}`])
  if (role === 'wood') {
    const wood = woodUnitWeight({ gravity: species[spec.post.species].gravity.value, moisture: postMoisture.light })
    return { moist: wood, saturated: wood, source: 'nds-supplement-3-1-3', standing: 'secondary' }
  }
  if (role === 'soil') return weighingOfSoil(spec.site.soil)
  if (role === 'soil-lower') return weighingOfSoil(spec.site.lower?.soil ?? spec.site.soil)
  if (role === 'dry-mix') return looseDryMix(spec)
  return ofMaterial(materialWeights[placedMaterial[role] ?? 'backfill'])
}

/** Mix as it was poured, at the loose weight of the pier, and with its voids full of water. Nobody has published one. */
function looseDryMix({ placing }: PierSpec): Weighing {
  const bulk = placing.looseWeight
  const solids = bulk / looseMix.solidsGravity.value
  return { moist: bulk, saturated: bulk + waterUnitWeight.value - solids, source: 'assumption', standing: 'assumed here' }
}

/** The user's own soil carries one weight, used above and below the water: below it that is the light side. */
export function weighingOfSoil(soil: Soil): Weighing {
  if (soil.kind === 'user') return { moist: soil.unitWeight, saturated: soil.unitWeight, source: 'user', standing: 'assumed here' }
  const { moist, saturated } = presumptiveSoils[soil.class].estimate
  return { moist: moist.value, saturated: saturated.value, source: moist.source, standing: moist.standing }
}
