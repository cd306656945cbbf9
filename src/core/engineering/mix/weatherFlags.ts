import type { Celsius, Metres } from '../../units/quantity.ts'
import type { SourceId } from '../sources.ts'
import { concreteWeather, placingTemperature } from '../tables/concreteWeather.ts'

type Inputs = Readonly<{
  /** Coldest air expected while the concrete must be kept from freezing. */
  coldestAir: Celsius
  /** Temperature of the concrete as placed; null where it is not known, and for mix placed dry. */
  concrete: Celsius | null
  groundFrozen: boolean
  /** Least dimension of the section. */
  thickness: Metres
}>
export type WeatherFlag = Readonly<{
  /** Key into the text table. */
  id: 'cold-weather' | 'freeze-before-strength' | 'hot-concrete' | 'concrete-too-cool' | 'ground-frozen'
  got: Celsius | null
  limit: Celsius | null
  source: SourceId
}>

/**
 * What the weather asks attention for when concrete is placed.
 * @param coldestAir expected in the days of protection [degC]
 * @param concrete temperature as placed [degC]; null where not known
 * @param groundFrozen true where the ground in the hole is frozen [1]
 * @param thickness least dimension of the section [m]
 * @returns flags, each with the limit it passed [degC]; empty where there is none
 * Formula: cold below 40 degF air; freezing at 32 degF; hot above 95 degF concrete; placed cooler than 55 degF under 12 in, 50 degF under 36 in, in cold weather
 * Valid: mixed concrete; frozen ground and freezing matter to dry mix as well. Outside: larger sections.
 * Source: aci-306, aci-306-tables, aci-305-1
 * Checked by: tests/external/aci-306/check.test.ts
 */
export function weatherFlags({ coldestAir, concrete, groundFrozen, thickness }: Inputs): readonly WeatherFlag[] {
  const { coldAir, hotConcrete, freezing } = concreteWeather
  const flags: WeatherFlag[] = []
  const isCold = coldestAir < coldAir.value
  if (isCold) flags.push({ id: 'cold-weather', got: coldestAir, limit: coldAir.value, source: coldAir.source })
  if (coldestAir <= freezing.value) {
    flags.push({ id: 'freeze-before-strength', got: coldestAir, limit: freezing.value, source: concreteWeather.firstFreeze.source })
  }
  if (concrete !== null && concrete > hotConcrete.value) {
    flags.push({ id: 'hot-concrete', got: concrete, limit: hotConcrete.value, source: hotConcrete.source })
  }
  const row = placingTemperature.find(({ upTo }) => thickness < upTo.value)
  if (isCold && concrete !== null && row && concrete < row.least.value) {
    flags.push({ id: 'concrete-too-cool', got: concrete, limit: row.least.value, source: row.least.source })
  }
  if (groundFrozen) flags.push({ id: 'ground-frozen', got: null, limit: null, source: 'aci-306-tables' })
  return flags
}
