import { leastBarOutside, workedLongestBar } from '../../engineering/detail/barFit.ts'
import { cover } from '../../engineering/tables/concrete.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { wallRadius } from '../../geometry/holeProfile.ts'
import { shiftAt } from '../../geometry/leaningPost.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { metres } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { given, limitOf } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { barLevels, liftAt } from '../placedZones.ts'

const mixes: ReadonlySet<string> = new Set(['concrete', 'dry-mix'])
const asked = limitOf('cover-to-earth', cover.castAgainstEarth, 'length')

/** Cover at the ends of bars through the post with the longest bar that keeps it, and how much of the bar comes out of the post. */
export function barFit(frame: PierFrame): Check[] {
  const { bars, post } = frame.spec
  if (!bars) return []
  const levels = barLevels(frame)
  const hosts = new Set(levels.map((y) => frame.lifts.find((lift) => lift.id === liftAt(frame, y))?.role ?? ''))
  const { leaning } = frame
  const least = (over: (y: number) => number) => metres(2 * Math.min(...levels.map((y) => wallRadius(frame.profile, y) - over(y))))
  const diameter = least((y) => (leaning ? shiftAt(leaning, y) : 0))
  const base = { group: 'detail', where: ['bars'] } as const
  const ends: Worked = {
    id: 'bar-end-cover-there',
    value: (diameter - bars.length) / 2,
    quantity: 'length',
    formula: 'c = (D - L)/2',
    inputs: [
      { symbol: 'D', name: 'pierDiameter', value: diameter, quantity: 'length' },
      { symbol: 'L', name: 'barLength', value: bars.length, quantity: 'length' },
    ],
    sources: ['definition'],
    standing: 'definition',
  }
  const { width } = postSections[post.section]
  const outside: Worked = {
    id: 'bar-outside-there',
    value: (bars.length - width) / 2,
    quantity: 'length',
    formula: 'l = (L - w)/2',
    inputs: [
      { symbol: 'L', name: 'barLength', value: bars.length, quantity: 'length' },
      { symbol: 'w', name: 'postWidth', value: width, quantity: 'length' },
    ],
    sources: ['definition'],
    standing: 'definition',
  }
  const longest = workedLongestBar({ diameter, cover: cover.castAgainstEarth.value })
  const inMix = [...hosts].some((role) => mixes.has(role))
  return [
    ...(inMix
      ? [
          makeCheck({
            ...base,
            id: 'bar-end-cover',
            worked: longest ? [longest] : [],
            allowable: ends,
            demand: asked,
            counting: { counted: 'counted', why: 'cover-keeps-steel', sources: [cover.castAgainstEarth.source] },
          }),
        ]
      : []),
    makeCheck({
      ...base,
      id: 'bar-outside-post',
      worked: [],
      allowable: outside,
      demand: limitOf('least-bar-outside', leastBarOutside, 'length'),
      counting: { counted: "engineer's judgement", why: 'bar-outside-is-a-project-limit', sources: [leastBarOutside.source] },
    }),
  ]
}

/** Cover of upright bars to the soil; null without them. */
export function verticalBarCover({ spec }: PierFrame): Check | null {
  if (!spec.verticalBars) return null
  return makeCheck({
    id: 'vertical-bar-cover',
    group: 'detail',
    where: ['vertical-bars'],
    worked: [],
    allowable: given('vertical-bar-cover-there', spec.verticalBars.cover, 'length'),
    demand: asked,
    counting: { counted: 'counted', why: 'cover-keeps-steel', sources: [cover.castAgainstEarth.source] },
  })
}
