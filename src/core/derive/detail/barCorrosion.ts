import type { BarCoating } from '../../model/spec.ts'
import type { Check } from '../../model/worked.ts'
import { makeCheck } from '../check.ts'
import type { PierFrame } from '../pierFrame.ts'

/** Coatings that the rule for fasteners in treated wood names. Source: irc-r317-3. */
const lasting: ReadonlySet<BarCoating> = new Set(['galvanised', 'stainless'])

/** Bars through treated wood: the part inside the post is steel in treated wood. Null without bars, or in wood without treatment. */
export function barCorrosion({ spec }: PierFrame): Check | null {
  const { bars, post } = spec
  if (!bars || post.treatment === 'untreated') return null
  return {
    ...makeCheck({
      id: 'bar-in-treated-wood',
      group: 'detail',
      where: ['bars', 'post'],
      worked: [],
      allowable: null,
      counting: {
        counted: "engineer's judgement",
        why: 'bar-read-as-a-fastener',
        sources: ['irc-r317-3', 'astm-a767', 'zelinka-rammer-2009'],
      },
    }),
    standing: 'from memory',
    choice: { path: 'bars.coating', is: bars.coating, asked: 'galvanised', reached: lasting.has(bars.coating) },
  }
}
