import { loadDuration } from '../../engineering/wood/connectionFactors.ts'
import { netArea, netTension, workedNetTension } from '../../engineering/wood/netTension.ts'
import { rowTearOut, workedRowTearOut } from '../../engineering/wood/tearOut.ts'
import { bars } from '../../engineering/tables/bars.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { postDesignValues } from '../../engineering/tables/species.ts'
import { firstBoltAbove, boltSpacing } from '../../kinds/bracket/plateParts.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check } from '../../model/worked.ts'
import { toSI } from '../../units/factors.ts'
import { metres, pascals } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import type { PierFrame } from '../pierFrame.ts'
import { postArea } from '../postArea.ts'
import { type Hold, hold } from './hold.ts'

/** Holes that a row of dowels makes in the post: one hole in any plane across it. */
type Row = Readonly<{ hole: number; count: number; spacing: number; end: number; where: string }>

/** Bolt holes are drilled 1/16 in over the bolt; a bar's hole is taken at its nominal diameter. Source: nds-2018-12-5. */
const boltOversize = toSI(1 / 16, 'in')

function dowelRow({ spec }: PierFrame): Row | null {
  if (spec.support.kind === 'bracket') {
    const { bracket } = spec.support
    return {
      hole: bracket.boltDiameter + boltOversize,
      count: bracket.boltCount,
      spacing: boltSpacing(bracket),
      end: firstBoltAbove(bracket),
      where: 'bolts',
    }
  }
  if (!spec.bars) return null
  const { size, count, spacing, aboveFoot } = spec.bars
  return { hole: bars[size].diameter.value, count, spacing, end: aboveFoot, where: 'bars' }
}

const whole: Counting = { counted: 'counted', why: 'post-in-tension', sources: ['nds-2018-3-1-2'] }
/** Plies share a pull only through their nails, which nobody has counted here. */
const inPlies: Counting = { counted: "engineer's judgement", why: 'plies-share-by-nails', sources: ['nds-2018-3-1-2'] }

/** What goes into the two formulas; null when no dowel goes through the post. */
function postProblem(frame: PierFrame) {
  const row = dowelRow(frame)
  if (!row) return null
  const section = postSections[frame.spec.post.section]
  const design = postDesignValues(frame.spec.post.species, section.make)
  const net = netArea({ area: postArea(frame.spec.post.section), hole: metres(row.hole), length: section.width, count: 1 })
  return {
    row,
    design,
    counting: section.plies > 1 ? inPlies : whole,
    tension: { tension: design.tension.value, duration: loadDuration.wind.value, wet: design.wet.tension.value, area: net },
    tearOut: {
      shear: pascals(design.shear.value * loadDuration.wind.value * design.wet.shear.value),
      thickness: section.width,
      critical: metres(row.count > 1 ? Math.min(row.spacing, row.end) : row.end),
      count: row.count,
    },
  }
}

/**
 * The post itself: tension on what is left beside a hole, and the row of wood that a dowel could tear out of its end.
 * Empty when no dowel goes through the post.
 */
export function upliftByPost(frame: PierFrame): Check[] {
  const problem = postProblem(frame)
  if (!problem) return []
  const { row, design, counting } = problem
  const tension = workedNetTension(problem.tension, {
    standings: [design.tension.standing, design.wet.tension.standing],
    sources: [design.tension.source],
  })
  const tearOut = workedRowTearOut(problem.tearOut, {
    standings: [design.shear.standing, design.wet.shear.standing],
    sources: [design.shear.source, 'nds-2018-2-3-2'],
  })
  const base = { group: 'uplift-post', where: ['post', row.where], worked: [], counting } as const
  return [
    makeCheck({ ...base, id: 'post-net-tension', allowable: tension }),
    makeCheck({ ...base, id: 'post-tear-out', allowable: tearOut }),
  ]
}

/** The same as bare numbers. */
export function postHolds(frame: PierFrame): Hold[] {
  const problem = postProblem(frame)
  if (!problem) return []
  const { counted } = problem.counting
  return [
    hold('post-net-tension', 'uplift-post', counted, netTension(problem.tension)),
    hold('post-tear-out', 'uplift-post', counted, rowTearOut(problem.tearOut)),
  ]
}
