import type { Standing } from '../../model/worked.ts'
import type { UnitWeight } from '../../units/quantity.ts'
import { type Cited, cited } from '../cited.ts'
import type { SourceId } from '../sources.ts'

export type MaterialId =
  | 'concrete-plain'
  | 'concrete-reinforced'
  | 'backfill'
  | 'granular'
  | 'gravel'
  | 'flowable-fill'
  | 'mulch'
  | 'topsoil'
  | 'steel'
  | 'water'

/**
 * What a placed material weighs. `saturated`: with its voids full of water; null where water does not enter it, so that
 * its weight under water is `unitWeight` less that of water.
 */
export type Material = Readonly<{ unitWeight: Cited<UnitWeight>; saturated: Cited<UnitWeight> | null }>
const solid = (pcf: number, source: SourceId, standing: Standing): Material => ({
  unitWeight: cited<UnitWeight>(pcf, 'pcf', source, standing),
  saturated: null,
})
const porous = (pcf: number, source: SourceId, standing: Standing, saturated: number): Material => ({
  unitWeight: cited<UnitWeight>(pcf, 'pcf', source, standing),
  saturated: cited<UnitWeight>(saturated, 'pcf', 'computed-here', 'assumed here'),
})

/**
 * Unit weights, pcf, at the light end where a range is published (light is the careful side for uplift). Saturated
 * weights follow from the unit weight with 10 % water (gravel 2 %) and solids of 2.65.
 * Source: go-95 (plain concrete, backfill), em-1110-2-2504 (granular), tm-9-2320-366-10-1 (gravel), astm-a615 (steel, from bar weight and diameter), assumption, memory.
 */
export const materialWeights: Readonly<Record<MaterialId, Material>> = {
  'concrete-plain': solid(145, 'go-95', 'read'),
  'concrete-reinforced': solid(150, 'common-practice', 'common practice'),
  backfill: porous(90, 'go-95', 'read', 113.3),
  granular: porous(110, 'em-1110-2-2504', 'read', 124.7),
  gravel: porous(110, 'tm-9-2320-366-10-1', 'read', 129.5),
  'flowable-fill': solid(115, 'memory', 'from memory'),
  mulch: porous(20, 'assumption', 'assumed here', 62.4),
  topsoil: porous(75, 'tm-9-2320-366-10-1', 'read', 104.8),
  steel: solid(490, 'astm-a615', 'computed here'),
  water: solid(62.4, 'definition', 'definition'),
}

/** Unit weight of water, 62.4 pcf. Source: definition. */
export const waterUnitWeight = materialWeights.water.unitWeight
