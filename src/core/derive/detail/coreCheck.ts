import { coreLimits } from '../../engineering/concrete/cores.ts'
import type { Check } from '../../model/worked.ts'
import { makeCheck } from '../check.ts'
import { coresOf } from '../counting.ts'
import { given, limitOf } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'

/** Cores of the mix as placed, as whole percents of the strength asked for: their mean, and the least. Empty when none were taken, or no mix is there. */
export function coreChecks({ spec, lifts }: PierFrame): Check[] {
  const verdict = coresOf(spec.concrete)
  const where = lifts.filter((lift) => lift.role === 'concrete' || lift.role === 'dry-mix').map((lift) => lift.id)
  if (!verdict || where.length === 0) return []
  const asked = spec.concrete.strength
  const share = (id: 'cores-mean' | 'cores-each', percent: number, symbol: string, limit: keyof typeof coreLimits) => {
    const inputs = [
      { symbol, name: 'core', value: (percent / 100) * asked, quantity: 'strength' },
      { symbol: "f'_c", name: 'specified', value: asked, quantity: 'strength' },
    ] as const
    const shown = { formula: `r = ${symbol} / f'_c`, inputs, sources: ['user'], standing: 'assumed here' } as const
    return makeCheck({
      id,
      group: 'detail',
      where,
      worked: [given(`${id}-exact`, percent / 100, 'ratio', shown)],
      allowable: given(`${id}-share`, Math.round(percent) / 100, 'ratio', shown),
      demand: limitOf(`${id}-least`, coreLimits[limit], 'ratio'),
      counting: { counted: 'counted', why: 'cores-tell-of-their-place', sources: ['aci-318-19-26-12-6'] },
    })
  }
  return [
    share('cores-mean', verdict.meanPercent, String.raw`\bar f`, 'mean'),
    share('cores-each', verdict.leastPercent, 'f_{min}', 'each'),
  ]
}
