import { bars as barTable } from '../../engineering/tables/bars.ts'
import { reachAt } from '../../geometry/leaningPost.ts'
import { toSI } from '../../units/factors.ts'
import { placesMix } from '../placement.ts'
import { mixTop } from './fillRules.ts'
import { exceeds, error, fallsShort, lengths, type Rule, when } from './rule.ts'

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
