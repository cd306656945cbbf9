import type { LoadCase } from '../../model/result.ts'
import type { Worked } from '../../model/worked.ts'

/** Wind on the two halves of a roof in one case [Pa], square to it, down positive; one pressure all over where `leeward` is the same. */
export type RoofWind = Readonly<{
  wind: LoadCase['wind']
  figure: LoadCase['figure']
  inside: LoadCase['inside']
  windward: Worked
  leeward: Worked
  /** Coefficients that the pressures come from. */
  worked: readonly Worked[]
}>
