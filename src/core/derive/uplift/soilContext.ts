import type { Counting } from '../../model/kind.ts'
import type { QuantityLine } from '../../model/result.ts'
import type { Worked } from '../../model/worked.ts'
import { fillKind } from '../../kinds/index.ts'
import type { PierFrame } from '../pierFrame.ts'
import { type CountedLength, countedLength } from './countedLength.ts'
import { workedPierWeight } from './pierWeight.ts'
import { type SoilColumn, soilColumn } from './soilColumn.ts'

/** What every soil mechanism of one pier starts from. */
export type SoilContext = Readonly<{
  frame: PierFrame
  column: SoilColumn
  length: CountedLength | null
  weight: Worked
  factored: Worked
  /** Of weight and side friction, the one that is less well counted. */
  counting: Counting
}>

export function soilContext(frame: PierFrame, lines: readonly QuantityLine[]): SoilContext {
  const { counting } = fillKind(frame.spec.fill.kind)
  return {
    frame,
    column: soilColumn(frame),
    length: countedLength(frame),
    ...workedPierWeight(frame, lines),
    counting: counting.weight.counted === 'not counted' ? counting.weight : counting.sideFriction,
  }
}
