import { deadLoadShare, workedFactoredDeadLoad } from '../../engineering/soil/factoredDeadLoad.ts'
import type { Counting } from '../../model/kind.ts'
import type { Worked } from '../../model/worked.ts'
import { newtons } from '../../units/quantity.ts'
import { countingOf } from '../counting.ts'
import type { PierFrame } from '../pierFrame.ts'
import { type Properties, tableProperties } from '../properties.ts'
import { type CountedLength, countedLength } from './countedLength.ts'
import { type Ledge, ledgeOf } from './ledge.ts'
import { type SoilColumn, soilColumn, soilsBetween } from './soilColumn.ts'
import type { SoilValues } from './soilValues.ts'

/** What every soil mechanism of one pier starts from. */
export type SoilContext = Readonly<{
  frame: PierFrame
  column: SoilColumn
  length: CountedLength | null
  /** The different soils along that length, from the top down; empty without one. */
  passed: readonly SoilValues[]
  /** What it could lift soil with. */
  ledge: Ledge | null
  /** Of weight and side friction, the one that is less well counted. */
  counting: Counting
  /** Weight of the pier, and 0.6 of it. */
  weight: Worked
  factored: Worked
}>

export function soilContext(frame: PierFrame, weight: Worked, properties: Properties = tableProperties(frame.spec)): SoilContext {
  const counting = countingOf(frame.spec)
  const column = soilColumn(frame, properties)
  const length = countedLength(frame)
  return {
    frame,
    column,
    length,
    ledge: ledgeOf(frame),
    passed: length ? soilsBetween(column, length) : [],
    counting: counting.weight.counted === 'not counted' ? counting.weight : counting.sideFriction,
    weight,
    factored: workedFactoredDeadLoad({ weight: newtons(weight.value), share: deadLoadShare.value }, { standings: [weight] }),
  }
}
