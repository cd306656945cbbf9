import type { Standing } from '../../model/worked.ts'
import type { Celsius, Metres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import type { SourceId } from '../sources.ts'

const degF = (printed: number) => cited<Celsius>(printed, 'degF', 'wood-handbook-14', 'read')
/** Temperatures outside which decay is slight, and outside which it all but stops. Source: wood-handbook-14. */
export const decayTemperatures = { slightBelow: degF(50), slightAbove: degF(95), stopsBelow: degF(35), stopsAbove: degF(100) } as const

const moisture = (printed: number, source: SourceId, standing: Standing) => cited(printed, '%', source, standing)
/**
 * Moisture contents that published work names for decay, water by mass of dry wood. They are about wood in general: no
 * moisture of a building post in concrete was found measured, so none is claimed along one.
 * Source: rowell-ibach-2000, decay-thresholds.
 */
export const decayMoisture = {
  seriousAbove: moisture(30, 'rowell-ibach-2000', 'abstract only'),
  activeInModels: moisture(25, 'decay-thresholds', 'secondary'),
  designLine: moisture(20, 'decay-thresholds', 'secondary'),
  lowestReported: moisture(16.3, 'decay-thresholds', 'secondary'),
} as const

/** Soil below grade in which most decay of posts was found in western Oregon. Source: osu-release-1997. */
export const groundlineBand = {
  low: cited<Metres>(6, 'in', 'osu-release-1997', 'read'),
  high: cited<Metres>(12, 'in', 'osu-release-1997', 'read'),
} as const
