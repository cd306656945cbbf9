import type { Weathering } from '../../model/spec.ts'
import type { Standing } from '../../model/worked.ts'
import type { Metres, Pascals } from '../../units/quantity.ts'
import { type Cited, cited } from '../cited.ts'
import type { SourceId } from '../sources.ts'

const psi = (printed: number, source: SourceId, standing: Standing) => cited<Pascals>(printed, 'psi', source, standing)

/** Least specified strength of structural concrete. Source: aci-318-19-19-2. */
export const structuralMinimum = psi(2500, 'aci-318-19-19-2', 'from memory')
/** Least strength of concrete that backfills a post hole. Source: ibc-1807-3-3. */
export const backfillMinimum = psi(2000, 'ibc-1807-3-3', 'secondary')

export type ResidentialElement = 'not-exposed' | 'interior-slab' | 'exposed-vertical' | 'exposed-flatwork'
type WeatheringRow = Readonly<Record<Weathering, Readonly<{ strength: Cited<Pascals>; airEntrained: boolean }>>>
const weathering = (cells: readonly [number, number, number], air: readonly [boolean, boolean, boolean]): WeatheringRow => {
  const cell = (i: 0 | 1 | 2) => ({ strength: psi(cells[i], 'irc-r402-2', 'secondary'), airEntrained: air[i] })
  return { negligible: cell(0), moderate: cell(1), severe: cell(2) }
}
/** Least strength by weathering, psi. A pier that stands above grade is 'exposed-vertical'; buried, 'not-exposed'. Source: irc-r402-2. */
export const residentialStrength: Readonly<Record<ResidentialElement, WeatheringRow>> = {
  'not-exposed': weathering([2500, 2500, 2500], [false, false, false]),
  'interior-slab': weathering([2500, 2500, 2500], [false, false, false]),
  'exposed-vertical': weathering([2500, 3000, 3000], [false, true, true]),
  'exposed-flatwork': weathering([2500, 3000, 3500], [false, true, true]),
}

export type FreezeThaw = 'F0' | 'F1' | 'F2' | 'F3'
const exposure = (strength: number, ratio: number | null, plain: Readonly<{ strength: number; ratio: number }> | null = null) => ({
  strength: psi(strength, 'aci-318-19-19-3', 'from memory'),
  maxWaterCement: ratio,
  plain: plain && { strength: psi(plain.strength, 'aci-318-19-19-3', 'from memory'), maxWaterCement: plain.ratio },
})
/** Strength and water-cement ratio by freeze-thaw class. Source: aci-318-19-19-3. */
export const freezeThawStrength = {
  F0: exposure(2500, null),
  F1: exposure(3500, 0.55),
  F2: exposure(4500, 0.45),
  F3: exposure(5000, 0.4, { strength: 4500, ratio: 0.45 }),
} as const satisfies Readonly<Record<FreezeThaw, unknown>>

/** Least strength of concrete that is not structural, by freeze-thaw class, psi, with air in it but for F0. Source: ibc-1904-2. */
export const nonStructuralFreezeThaw: Readonly<Record<FreezeThaw, Cited<Pascals>>> = {
  F0: psi(2500, 'ibc-1904-2', 'secondary'),
  F1: psi(3000, 'ibc-1904-2', 'secondary'),
  F2: psi(3500, 'ibc-1904-2', 'secondary'),
  F3: psi(3500, 'ibc-1904-2', 'secondary'),
}

/** Average 28-day strength, psi, against water-cement ratio by mass. Inner rows are from memory. Source: aci-211-1. */
export const strengthByWaterCement: readonly Readonly<{ psi: number; plain: number; airEntrained: number | null; standing: Standing }>[] = [
  { psi: 6000, plain: 0.41, airEntrained: null, standing: 'secondary' },
  { psi: 5000, plain: 0.48, airEntrained: 0.4, standing: 'from memory' },
  { psi: 4000, plain: 0.57, airEntrained: 0.48, standing: 'from memory' },
  { psi: 3000, plain: 0.68, airEntrained: 0.59, standing: 'from memory' },
  { psi: 2000, plain: 0.82, airEntrained: 0.74, standing: 'secondary' },
]

/** Clear cover, inches: cast against ground; formed, by bar size. Source: aci-318-19-20-5-1-3. */
export const cover = {
  castAgainstEarth: cited<Metres>(3, 'in', 'aci-318-19-20-5-1-3', 'secondary'),
  formedSmall: cited<Metres>(1.5, 'in', 'aci-318-19-20-5-1-3', 'from memory'),
  formedLarge: cited<Metres>(2, 'in', 'aci-318-19-20-5-1-3', 'from memory'),
} as const
