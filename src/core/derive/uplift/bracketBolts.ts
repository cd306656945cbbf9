import { knifePlateProblem, sidePlateProblem } from '../../engineering/wood/boltedPlates.ts'
import { boltBendingYield } from '../../engineering/tables/bars.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { postDesignValues } from '../../engineering/tables/species.ts'
import { firstBoltAbove, boltSpacing } from '../../kinds/bracket/plateParts.ts'
import { bracketKind } from '../../kinds/index.ts'
import type { Counting } from '../../model/kind.ts'
import { toSI } from '../../units/factors.ts'
import { metres, pascals, squareMetres } from '../../units/quantity.ts'
import { countingOf } from '../counting.ts'
import type { PierFrame } from '../pierFrame.ts'
import { postArea } from '../postArea.ts'
import type { Properties } from '../properties.ts'
import { ratedByUser, ratingOf, workedRating } from './bracketRating.ts'
import { type ChainLink, chainLink } from './chainLink.ts'
import { adjustedRow, type Row, dowelRowOf } from './dowelRow.ts'

const outOfRange: Counting = { counted: 'not counted', why: 'outside-yield-range', sources: ['nds-2018-12-3-1'] }

/** Modulus of steel, 30,000,000 psi, as the group action factor takes it. Source: nds-2018-11-3-6. */
const steelElasticity = pascals(toSI(30e6, 'psi'))

/** Bolts of a bracket as a row of dowels; null outside the range of the yield equations. */
function bracketRow(frame: PierFrame, { gravity }: Properties): Row | null {
  const { spec } = frame
  if (spec.support.kind !== 'bracket') throw new Error('bracketRow: the pier has no bracket')
  const { bracket } = spec.support
  const record = bracketKind(bracket.kind)
  const section = postSections[spec.post.section]
  const inputs = {
    diameter: bracket.boltDiameter,
    postWidth: section.width,
    plate: bracket.plateThickness,
    gravity,
    bendingYield: boltBendingYield.value,
  }
  const problem = record.bolts === 'knife plate' ? knifePlateProblem(inputs) : sidePlateProblem(inputs)
  if (!problem) return null
  const wood = postDesignValues(spec.post.species, section.make)
  const plates = record.bolts === 'knife plate' ? 1 : 2
  const row = { count: bracket.boltCount, spacing: metres(boltSpacing(bracket)), endDistance: metres(firstBoltAbove(bracket)) }
  return dowelRowOf(problem, row, () => ({
    diameter: bracket.boltDiameter,
    spacing: row.spacing,
    count: row.count,
    main: { elasticity: wood.elasticity.value, area: postArea(spec.post.section) },
    side: { elasticity: steelElasticity, area: squareMetres(plates * bracket.plateThickness * 0.72 * section.depth) },
    joint: 'wood-metal',
  }))
}

/** The bolts of a bracket, or what the bracket as a whole is rated for. */
export function bracketBolts(frame: PierFrame, properties: Properties): ChainLink {
  const row = bracketRow(frame, properties)
  const found = row && adjustedRow(row, [boltBendingYield.standing])
  const steps = found?.steps ?? (() => [])
  const adjusted = found?.adjusted ?? null
  const rating = ratingOf(frame.spec)
  return chainLink({
    id: 'bracket-bolts',
    group: 'uplift-connection',
    counting: rating !== null ? ratedByUser : row ? countingOf(frame.spec).connection : outOfRange,
    allowable: rating !== null ? workedRating(rating) : adjusted,
    show: () => ({
      where: ['bolts', 'bracket-plates'],
      worked: rating !== null && adjusted ? [...steps(), adjusted] : steps(),
    }),
  })
}
