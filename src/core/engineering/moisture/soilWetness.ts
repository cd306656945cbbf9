import type { Metres } from '../../units/quantity.ts'
import type { SourceId } from '../sources.ts'

/** How wet the ground at a place stays, three classes in order, driest first. Reasoned, not measured. */
export const soilWetnesses = ['drains', 'damp', 'wet'] as const
export type SoilWetness = (typeof soilWetnesses)[number]

type Inputs = Readonly<{
  depth: Metres
  /** What the user says of the ground above any ground water. */
  ground: SoilWetness
  waterTable: Metres | null
  rise: Readonly<{ low: Metres | null; high: Metres | null }>
}>
export type SoilWetnessAt = Readonly<{
  wetness: SoilWetness
  /** Water stands here: no air. */
  underWater: boolean
  /** Key into the text table. */
  reason: 'ground-as-entered' | 'in-reach-of-capillary-rise' | 'in-capillary-fringe' | 'below-water-table'
  sources: readonly SourceId[]
}>

/**
 * Wetness class of the ground at a depth.
 * @param depth below grade [m], non-negative
 * @param ground class that the user gave for ground above the water table [1]
 * @param waterTable depth below grade [m]; null for none met
 * @param rise least and greatest published capillary rise [m]; null where none is published
 * @returns class, whether water stands there, and why [1]
 * Formula: below the table, wet; within the least rise above it, wet; within the greatest (or above it where no greatest is known), damp at least; else as entered
 * Valid: still ground water. Outside: a class, never a moisture content.
 * Source: assumption, heath-1983, fetter-1994
 * Checked by: tests/core/engineering/moisture/soilWetness.test.ts
 */
export function soilWetnessAt({ depth, ground, waterTable, rise }: Inputs): SoilWetnessAt {
  const entered: SoilWetnessAt = { wetness: ground, underWater: false, reason: 'ground-as-entered', sources: ['user'] }
  if (waterTable === null) return entered
  if (depth >= waterTable) return { wetness: 'wet', underWater: true, reason: 'below-water-table', sources: ['definition'] }
  const above = waterTable - depth
  if (rise.low !== null && above <= rise.low) {
    return { wetness: 'wet', underWater: false, reason: 'in-capillary-fringe', sources: ['heath-1983', 'fetter-1994'] }
  }
  const reached = rise.high === null ? rise.low !== null : above <= rise.high
  if (!reached || ground !== 'drains') return entered
  return { wetness: 'damp', underWater: false, reason: 'in-reach-of-capillary-rise', sources: ['heath-1983', 'fetter-1994', 'assumption'] }
}
