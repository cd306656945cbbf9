import type { Counting } from '../../model/kind.ts'
import type { QuantityLine } from '../../model/result.ts'
import type { Worked } from '../../model/worked.ts'
import { countingOf } from '../counting.ts'
import type { PierFrame } from '../pierFrame.ts'
import { type Properties, tableProperties } from '../properties.ts'
import { type CountedLength, countedLength } from './countedLength.ts'
import { workedPierWeight } from './pierWeight.ts'
import { type SoilColumn, soilColumn, soilsBetween } from './soilColumn.ts'
import type { SoilValues } from './soilValues.ts'

/** What every soil mechanism of one pier starts from. */
export type SoilSite = Readonly<{
  frame: PierFrame
  column: SoilColumn
  length: CountedLength | null
  /** The different soils along that length, from the top down; empty without one. */
  passed: readonly SoilValues[]
  /** Of weight and side friction, the one that is less well counted. */
  counting: Counting
}>

/** The same with the weight of the pier and 0.6 of it, their work shown. */
export type SoilContext = SoilSite & Readonly<{ weight: Worked; factored: Worked }>

/** The same with the weight as a bare number [N]. */
export type SoilFigures = SoilSite & Readonly<{ weight: number }>

export function soilSite(frame: PierFrame, properties: Properties): SoilSite {
  const counting = countingOf(frame.spec)
  const column = soilColumn(frame, properties)
  const length = countedLength(frame)
  return {
    frame,
    column,
    length,
    passed: length ? soilsBetween(column, length) : [],
    counting: counting.weight.counted === 'not counted' ? counting.weight : counting.sideFriction,
  }
}

export const soilContext = (frame: PierFrame, lines: readonly QuantityLine[]): SoilContext => ({
  ...soilSite(frame, tableProperties(frame.spec)),
  ...workedPierWeight(frame, lines),
})
