import { workedBarShear } from '../../engineering/concrete/barSteel.ts'
import { worked } from '../../engineering/showing.ts'
import { barGrades, bars } from '../../engineering/tables/bars.ts'
import { countingOf } from '../counting.ts'
import type { PierFrame } from '../pierFrame.ts'
import { type ChainLink, chainLink } from './chainLink.ts'

/** Shear of the bars where they leave the post, two planes each; null without bars that a standard lets one count. */
export function barShearLink({ spec }: PierFrame): ChainLink | null {
  const { connection } = countingOf(spec)
  if (!spec.bars || connection.counted === 'not counted') return null
  const { count, size, grade } = spec.bars
  const { area } = bars[size]
  const fy = barGrades[grade].yield
  const each = workedBarShear(
    { area: area.value, yield: fy.value, planes: 2 },
    { standings: [fy.standing, area.standing], sources: [fy.source] },
  )
  return chainLink({
    id: 'bar-shear',
    group: 'uplift-connection',
    counting: { counted: 'counted', why: 'bar-shear-of-steel', sources: ['aisc-360'] },
    allowable: worked('bar-shear-allowable', each.value * count, 'force', () => ({
      formula: 'V = m\\,V_a',
      inputs: [
        { symbol: 'm', name: 'count', value: count, quantity: 'count' },
        { symbol: 'V_a', name: 'each', value: each.value, quantity: 'force' },
      ],
      sources: each.sources,
      standing: each.standing,
    })),
    show: () => ({ where: ['bars'], worked: [each] }),
  })
}
