import type { Celsius, Metres, Pascals, Seconds } from '../../units/quantity.ts'
import { cited } from '../cited.ts'

/** Air temperature below which weather counts as cold, concrete temperature above which it counts as hot, and strength before the first freeze. Source: aci-306, aci-305-1, aci-306-first-freeze. */
export const concreteWeather = {
  coldAir: cited<Celsius>(40, 'degF', 'aci-306', 'read'),
  hotConcrete: cited<Celsius>(95, 'degF', 'aci-305-1', 'secondary'),
  firstFreeze: cited<Pascals>(500, 'psi', 'aci-306-first-freeze', 'secondary'),
  freezing: cited<Celsius>(32, 'degF', 'definition', 'definition'),
} as const

/** Least temperature of concrete as placed in cold weather, by least dimension of the section. Source: aci-306-tables. */
export const placingTemperature = [
  { upTo: cited<Metres>(12, 'in', 'aci-306-tables', 'from memory'), least: cited<Celsius>(55, 'degF', 'aci-306-tables', 'from memory') },
  { upTo: cited<Metres>(36, 'in', 'aci-306-tables', 'from memory'), least: cited<Celsius>(50, 'degF', 'aci-306-tables', 'from memory') },
] as const

/** Time to keep concrete from freezing where no early strength is asked: not exposed, exposed. Source: aci-306-tables. */
export const protection = {
  notExposed: cited<Seconds>(2, 'd', 'aci-306-tables', 'from memory'),
  exposed: cited<Seconds>(3, 'd', 'aci-306-tables', 'from memory'),
} as const

/** Time from water meeting cement to the end of discharge; older editions only: turns of the drum. Source: astm-c94. */
export const discharge = {
  time: cited<Seconds>(90, 'min', 'astm-c94', 'secondary'),
  olderEditionsDrumTurns: cited(300, '1', 'astm-c94', 'secondary'),
} as const
