import type { ReasonId } from '../../model/saidIds.ts'
import { barBearingLength, barDowelProblem, workedBarBearingLength } from '../../engineering/wood/barDowel.ts'
import { barGrades, bars } from '../../engineering/tables/bars.ts'
import { cover } from '../../engineering/tables/concrete.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { postDesignValues } from '../../engineering/tables/species.ts'
import { wallRadius } from '../../geometry/holeProfile.ts'
import type { Use } from '../../engineering/showing.ts'
import type { Counting } from '../../model/kind.ts'
import type { PierSpec } from '../../model/spec.ts'
import { fromSI, toSI } from '../../units/factors.ts'
import { metres, pascals, squareMetres } from '../../units/quantity.ts'
import { carriesAsConcrete, countingOf, inRangeOfCode } from '../counting.ts'
import type { PierFrame } from '../pierFrame.ts'
import { postArea } from '../postArea.ts'
import { barLevels, liftAt } from '../placedZones.ts'
import type { Properties } from '../properties.ts'
import { type ChainLink, chainLink } from './chainLink.ts'
import { adjustedRow, type Row, dowelRowOf } from './dowelRow.ts'

const notCounted = (why: ReasonId, sources: Counting['sources'] = []): Counting => ({ counted: 'not counted', why, sources })

const outOfRange = notCounted('outside-yield-range', ['nds-2018-12-3-1'])
const fromMemory: Use = { standings: ['from memory'], sources: ['memory'] }
const tooNear = notCounted('dowel-too-near-end', ['nds-2018-12-5'])

type BarRow = Readonly<{ refused: Counting | null; length: Parameters<typeof barBearingLength>[0] | null; row: Row | null }>

/** Bars as a row of dowels, or why they may not be counted as one. `length` goes with a refusal that comes after it. */
function barRow(frame: PierFrame, { gravity }: Properties): BarRow {
  const { spec, profile } = frame
  const { connection } = countingOf(spec)
  const refuse = (refused: Counting, length: BarRow['length'] = null): BarRow => ({ refused, length, row: null })
  if (connection.counted === 'not counted') return refuse(connection)
  if (!spec.bars) return refuse(notCounted('no-bar'))
  const levels = barLevels(frame)
  const hosts = levels.map((y) => liftAt(frame, y))
  const roles = hosts.map((id) => frame.lifts.find((lift) => lift.id === id)?.role)
  if (roles.some((role) => role === undefined || !carriesAsConcrete(role, spec))) return refuse(notCounted('bar-outside-concrete'))

  const section = postSections[spec.post.section]
  const narrowest = Math.min(...levels.map((y) => wallRadius(profile, y)))
  const length = {
    pierDiameter: metres(2 * narrowest),
    postWidth: section.width,
    cover: metres(cover.castAgainstEarth.value),
    barLength: spec.bars.length,
  }
  const bearingLength = barBearingLength(length)
  if (bearingLength === null) return refuse(notCounted('bar-without-cover', ['aci-318-19-20-5-1-3']))
  const problem = barDowelProblem({
    diameter: bars[spec.bars.size].diameter.value,
    postWidth: section.width,
    bearingLength,
    gravity,
    bendingYield: barGrades[spec.bars.grade].dowelYield.value,
  })
  if (!problem) return refuse(outOfRange, length)
  const { count, spacing, aboveFoot: endDistance } = spec.bars
  return { refused: null, length, row: dowelRowOf(problem, { count, spacing, endDistance }, () => groupInConcrete(frame, 2 * narrowest)) }
}

/** Bars through the post as dowels in double shear: every way in which they could give, and the least. */
export function barThroughPost(frame: PierFrame, properties: Properties): ChainLink {
  const { spec } = frame
  const { refused, length, row } = barRow(frame, properties)
  const shown = row && spec.bars && adjustedRow(row, standingsOf(spec.bars), fromMemory)
  return chainLink({
    id: 'bar-through-post',
    group: 'uplift-connection',
    counting: refused ?? (shown?.adjusted ? inRangeOfCode(spec, countingOf(spec).connection) : shown?.isInRange ? tooNear : outOfRange),
    allowable: shown?.adjusted ?? null,
    show: () => ({
      where: spec.bars ? ['bars'] : ['post'],
      worked: [...[length && workedBarBearingLength(length)].filter((one) => one !== null), ...(shown?.steps() ?? [])],
    }),
  })
}

const standingsOf = ({ grade, size }: NonNullable<PierSpec['bars']>) => [barGrades[grade].dowelYield.standing, bars[size].diameter.standing]

/** Group action of bars in a row in concrete: the wood-to-metal load/slip figure, the lower one, with concrete as the side member. */
function groupInConcrete(frame: PierFrame, pierDiameter: number): Row['group'] {
  const { spec } = frame
  if (!spec.bars) return null
  const wood = postDesignValues(spec.post.species, postSections[spec.post.section].make)
  const area = postArea(spec.post.section)
  // Modulus of concrete 57,000 sqrt(f'c), psi: from memory.
  const concrete = pascals(toSI(57_000 * Math.sqrt(fromSI(spec.concrete.strength, 'psi')), 'psi'))
  return {
    diameter: bars[spec.bars.size].diameter.value,
    spacing: spec.bars.spacing,
    count: spec.bars.count,
    main: { elasticity: wood.elasticity.value, area },
    side: { elasticity: concrete, area: squareMetres((Math.PI * pierDiameter ** 2) / 4 - area) },
    joint: 'wood-metal',
  }
}
