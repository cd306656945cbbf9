import { barShear, workedBarShear } from '../../engineering/concrete/barSteel.ts'
import { barGrades, bars } from '../../engineering/tables/bars.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { makeCheck } from '../check.ts'
import { countingOf } from '../counting.ts'
import type { PierFrame } from '../pierFrame.ts'
import { type Hold, hold } from './hold.ts'

/** What goes into the formula for one bar, and how many there are; null without bars that a standard lets one count. */
function shearProblem({ spec }: PierFrame) {
  const { connection } = countingOf(spec)
  if (!spec.bars || connection.counted === 'not counted') return null
  const { area } = bars[spec.bars.size]
  const fy = barGrades[spec.bars.grade].yield
  return { each: { area: area.value, yield: fy.value, planes: 2 }, count: spec.bars.count, area, fy }
}

/** Shear of the bars where they leave the post, two planes each; null without bars that a standard lets one count. */
export function barShearCheck(frame: PierFrame): Check | null {
  const problem = shearProblem(frame)
  if (!problem) return null
  const { area, fy, count } = problem
  const each = workedBarShear(problem.each, { standings: [fy.standing, area.standing], sources: [fy.source] })
  const allowable: Worked = {
    ...each,
    id: 'bar-shear-allowable',
    value: each.value * count,
    formula: 'V = m\\,V_a',
    inputs: [
      { symbol: 'm', name: 'count', value: count, quantity: 'count' },
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

/** The same as a bare number. */
export function barShearHolds(frame: PierFrame): Hold[] {
  const problem = shearProblem(frame)
  return problem ? [hold('bar-shear', 'uplift-connection', 'counted', problem.count * barShear(problem.each))] : []
}
