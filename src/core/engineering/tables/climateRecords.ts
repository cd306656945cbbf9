import type { Standing } from '../../model/worked.ts'
import { celsius } from '../../units/quantity.ts'
import type { ClimateMonth } from '../life/climateIndex.ts'
import type { SourceId } from '../sources.ts'

/** Monthly means to start from. `years`: how many the record has; under thirty it is no climate normal. */
export type ClimateRecord = Readonly<{ months: readonly ClimateMonth[]; years: number; source: SourceId; standing: Standing }>
const seattleTemperature = [5.5, 7, 8.6, 10.7, 14.5, 17.3, 20.1, 20.4, 17.1, 12.9, 7.9, 5.8]
const seattleWetDays = [16.5, 18.25, 18.25, 14.75, 8.5, 9.25, 2.75, 5.5, 8.75, 15.25, 17.75, 20.25]

/** Seattle, 2012 to 2015: mean temperature in degC to a tenth, days with 0.25 mm and more. A worked example, not Seattle's published index. Source: noaa-seattle-2012. */
export const seattle: ClimateRecord = {
  months: seattleTemperature.map((temperature, i) => ({ temperature: celsius(temperature), wetDays: seattleWetDays[i] ?? 0 })),
  years: 4,
  source: 'noaa-seattle-2012',
  standing: 'computed here',
}

/** Records that come with the page, by id. */
export const climateRecords = { seattle } as const satisfies Readonly<Record<string, ClimateRecord>>
export const climateRecordIds: readonly string[] = Object.keys(climateRecords)

/** Index values that were found printed for a city; none came with its months. Source: fernandez-golfin-2017. */
export const publishedIndices: readonly Readonly<{ id: string; index: number; source: SourceId; standing: Standing }>[] = [
  { id: 'vitoria', index: 76, source: 'fernandez-golfin-2017', standing: 'read' },
  { id: 'palencia', index: 74, source: 'fernandez-golfin-2017', standing: 'read' },
  { id: 'madrid', index: 42, source: 'fernandez-golfin-2017', standing: 'read' },
  { id: 'cordoba', index: 35, source: 'fernandez-golfin-2017', standing: 'read' },
]
