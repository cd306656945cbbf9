import { bars as barTable } from '../../engineering/tables/bars.ts'
import { cover } from '../../engineering/tables/concrete.ts'
import { reachAt, shiftAt } from '../../geometry/leaningPost.ts'
import type { Issue } from '../../model/issue.ts'
import type { PierSpec, ThroughBars } from '../../model/spec.ts'
import { toSI } from '../../units/factors.ts'
import type { Dimensions } from '../dimensions.ts'
import { mixTop } from './fillRules.ts'
import { error, exceeds, fallsShort, lengths, type Rule, warning, when } from './rule.ts'
import { placesMix } from '../placement.ts'

/** Bar that shows beyond each face of the post, below which it holds little. Set here, no source. */
const leastStub = toSI(2, 'in')

const heights = (bars: ThroughBars) => Array.from({ length: bars.count }, (_, i) => bars.aboveFoot + i * bars.spacing)

/** Bars lie level through the post's middle, across its width. Heights in the issues are above the post's foot, as typed. */
export const barRules: Rule = (spec, d) => {
  const { bars } = spec
  if (bars === null) return []
  if (spec.support.kind !== 'embedded') return [error('bars-with-bracket', 'bars')]
  return [...length(bars, d), ...height(spec, bars, d)]
}

/** How far a leaning post carries the middle of a bar toward the wall [m], for a bar `up` its foot. */
const overAt = ({ leaning, foot }: Dimensions, up: number): number => (leaning === null ? 0 : shiftAt(leaning, foot + up))

const length = (bars: ThroughBars, d: Dimensions): readonly Issue[] => {
  const hole = 2 * Math.min(...heights(bars).map((up) => d.wallAt(d.foot + up) - overAt(d, up)))
  const covered = hole - 2 * cover.castAgainstEarth.value
  const stub = d.post.width + 2 * leastStub
  return [
    ...when(exceeds(bars.length, hole), () => error('bar-longer-than-hole', 'bars.length', lengths(bars.length, hole))),
    ...when(!exceeds(bars.length, hole) && exceeds(bars.length, covered), () =>
      warning('bar-cover', 'bars.length', lengths(bars.length, covered, ['aci-318-19-20-5-1-3'])),
    ),
    ...when(!exceeds(bars.length, d.post.width), () => error('bar-inside-post', 'bars.length', lengths(bars.length, d.post.width))),
    ...when(exceeds(bars.length, d.post.width) && fallsShort(bars.length, stub), () =>
      warning('bar-stub-short', 'bars.length', lengths(bars.length, stub, ['assumption'])),
    ),
  ]
}

const height = (spec: PierSpec, bars: ThroughBars, d: Dimensions): readonly Issue[] => {
  const diameter = barTable[bars.size].diameter.value
  const all = heights(bars)
  /** Through a leaning post a bar lies askew: one end up, the other down [m]. */
  const askew = (bars.length / 2) * Math.sin(d.leaning?.lean ?? 0)
  const lowest = Math.min(...all)
  const highest = Math.max(...all)
  const below = d.lowestTop(Math.min(bars.length / 2, d.radius)) - d.foot - diameter / 2 - askew
  const top = mixTop(spec, d)
  const inMix = top === null ? Number.POSITIVE_INFINITY : top - d.foot - diameter / 2 - askew
  const leastUp = Math.max(diameter / 2, diameter / 2 + askew - (d.foot - d.seat))
  const highestPath = bars.count > 1 ? 'bars.count' : 'bars.aboveFoot'
  return [
    ...when(fallsShort(lowest, leastUp), () => error('bar-below-foot', 'bars.aboveFoot', lengths(lowest, leastUp))),
    ...when(exceeds(highest, below), () => error('bar-above-top', highestPath, lengths(highest, below))),
    ...when(!exceeds(highest, below) && exceeds(highest, inMix), () =>
      warning('bar-outside-mix', highestPath, lengths(highest, inMix, ['nds-2018-12-3-1'])),
    ),
    ...when(bars.count > 1 && fallsShort(bars.spacing, diameter), () =>
      error('bars-overlap', 'bars.spacing', lengths(bars.spacing, diameter)),
    ),
  ]
}

/** Clear space that concrete needs between bars, and the shortest bar worth placing. Set here, no source. */
const leastSpace = toSI(1, 'in')
const leastLength = toSI(12, 'in')

/** Vertical bars stand on a ring `cover` inside the shaft, and keep `cover` at both ends. */
export const verticalBarRules: Rule = (spec, d) => {
  const { verticalBars } = spec
  if (verticalBars === null) return []
  if (!placesMix(spec)) return [error('vertical-bars-without-concrete', 'verticalBars', { got: spec.fill.kind })]
  const { count, cover } = verticalBars
  const diameter = barTable[verticalBars.size].diameter.value
  const ring = d.radius - cover - diameter / 2
  const space = 2 * ring * Math.sin(Math.PI / count) - diameter
  const top = mixTop(spec, d) ?? d.lowestTop(Math.max(ring, 0))
  const post = d.leaning === null ? d.post.radius : reachAt(d.leaning, top)
  const inside = spec.support.kind === 'embedded' ? post + diameter / 2 : diameter
  const length = top - d.baseTop - 2 * cover
  return [
    ...when(!exceeds(ring, inside), () => error('vertical-bars-meet-post', 'verticalBars.cover', lengths(ring, inside))),
    ...when(exceeds(ring, inside) && fallsShort(space, leastSpace), () =>
      error('vertical-bars-crowded', 'verticalBars.count', lengths(space, leastSpace)),
    ),
    ...when(fallsShort(length, leastLength), () => error('vertical-bars-too-short', 'verticalBars', lengths(length, leastLength))),
  ]
}
