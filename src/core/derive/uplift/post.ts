import { loadDuration } from '../../engineering/wood/connectionFactors.ts'
import { netArea, workedNetTension } from '../../engineering/wood/netTension.ts'
import { workedRowTearOut } from '../../engineering/wood/tearOut.ts'
import { bars } from '../../engineering/tables/bars.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { postDesignValues } from '../../engineering/tables/species.ts'
import { firstBoltAbove, boltSpacing } from '../../kinds/bracket/plateParts.ts'
import type { Counting } from '../../model/kind.ts'
import type { Worked } from '../../model/worked.ts'
import { toSI } from '../../units/factors.ts'
import { metres, pascals } from '../../units/quantity.ts'
import type { PierFrame } from '../pierFrame.ts'
import { postArea } from '../postArea.ts'
import { type ChainLink, chainLink } from './chainLink.ts'

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

/**
 * The post itself: tension on what is left beside a hole, and the row of wood that a dowel could tear out of its end.
 * Empty when no dowel goes through the post.
 */
export function upliftByPost(frame: PierFrame): ChainLink[] {
  const row = dowelRow(frame)
  if (!row) return []
  const { post } = frame.spec
  const section = postSections[post.section]
  const { tension, shear, wet } = postDesignValues(post.species, section.make)
  const duration = loadDuration.wind.value
  const net = workedNetTension(
    {
      tension: tension.value,
      duration,
      wet: wet.tension.value,
      area: netArea({ area: postArea(post.section), hole: metres(row.hole), length: section.width, count: 1 }),
    },
    { standings: [tension.standing, wet.tension.standing], sources: [tension.source] },
  )
  const tearOut = workedRowTearOut(
    {
      shear: pascals(shear.value * duration * wet.shear.value),
      thickness: section.width,
      critical: metres(row.count > 1 ? Math.min(row.spacing, row.end) : row.end),
      count: row.count,
    },
    { standings: [shear.standing, wet.shear.standing], sources: [shear.source, 'nds-2018-2-3-2'] },
  )
  const counting = section.plies > 1 ? inPlies : whole
  const show = () => ({ where: ['post', row.where], worked: [] })
  const link = (id: ChainLink['id'], allowable: Worked) => chainLink({ id, group: 'uplift-post', counting, allowable, show })
  return [link('post-net-tension', net), link('post-tear-out', tearOut)]
}
