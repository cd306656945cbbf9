import { workedBarShear } from '../../engineering/concrete/barSteel.ts'
import { barGrades, bars } from '../../engineering/tables/bars.ts'
import { fillKind } from '../../kinds/index.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { makeCheck } from '../check.ts'
import type { PierFrame } from '../pierFrame.ts'

/** Shear of the bars where they leave the post, two planes each; null without bars that a standard lets one count. */
export function barShearCheck({ spec }: PierFrame): Check | null {
  const { connection } = fillKind(spec.fill.kind).counting
  if (!spec.bars || connection.counted === 'not counted') return null
  const bar = bars[spec.bars.size]
  const { yield: fy } = barGrades[spec.bars.grade]
  const each = workedBarShear(
    { area: bar.area.value, yield: fy.value, planes: 2 },
    { standings: [fy.standing, bar.area.standing], sources: [fy.source] },
  )
  const allowable: Worked = {
    ...each,
    id: 'bar-shear-allowable',
    value: each.value * spec.bars.count,
    formula: 'V = m\\,V_a',
    inputs: [
      { symbol: 'm', name: 'count', value: spec.bars.count, quantity: 'count' },
      { symbol: 'V_a', name: 'each', value: each.value, quantity: 'force' },
    ],
  }
  return makeCheck({
    id: 'bar-shear',
    group: 'uplift-connection',
    where: ['bars'],
    worked: [each],
    allowable,
    counting: { counted: 'counted', why: 'bar-shear-of-steel', sources: ['aisc-360'] },
  })
}
