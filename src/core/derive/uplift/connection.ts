import { workedGroupAction } from '../../engineering/wood/groupAction.ts'
import { barDowelProblem, workedBarBearingLength } from '../../engineering/wood/barDowel.ts'
import { knifePlateProblem, sidePlateProblem } from '../../engineering/wood/boltedPlates.ts'
import { loadDuration, temperature, wetService, workedAdjustedDowelValue } from '../../engineering/wood/connectionFactors.ts'
import { dowelDistances, workedGeometryFactor } from '../../engineering/wood/dowelSpacing.ts'
import { workedYieldMode, workedYieldValue, type YieldInputs, type YieldMode, yieldValue } from '../../engineering/wood/yieldEquations.ts'
import { barGrades, bars, boltBendingYield } from '../../engineering/tables/bars.ts'
import { cover } from '../../engineering/tables/concrete.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { postDesignValues, species } from '../../engineering/tables/species.ts'
import { wallRadius } from '../../geometry/holeProfile.ts'
import { firstBoltAbove, boltSpacing } from '../../kinds/bracket/boltPattern.ts'
import { bracketKind, fillKind } from '../../kinds/index.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check, Standing, Worked } from '../../model/worked.ts'
import { type Metres, metres, newtons, pascals, type SquareMetres, squareMetres } from '../../units/quantity.ts'
import { fromSI, toSI } from '../../units/factors.ts'
import { makeCheck } from '../check.ts'
import type { PierFrame } from '../pierFrame.ts'
import { barLevels, liftAt } from '../placedZones.ts'

/** The link between post and concrete: bars through the post, or the bolts of a bracket. */
export function upliftByConnection(frame: PierFrame): Check {
  return frame.spec.support.kind === 'bracket' ? bracketBolts(frame) : throughBars(frame)
}

const notCounted = (why: string, sources: Counting['sources'] = []): Counting => ({ counted: 'not counted', why, sources })

type Row = Readonly<{
  problem: YieldInputs
  count: number
  spacing: Metres
  endDistance: Metres
  group: Worked | null
  standings: readonly Standing[]
}>

const modes: readonly YieldMode[] = ['Im', 'Is', 'IIIs', 'IV']

/** All yield modes, the governing one, and the adjusted value of a row of like dowels; null where a distance is under its floor. */
function adjustedRow({
  problem,
  count,
  spacing,
  endDistance,
  group,
  standings,
}: Row): Readonly<{ worked: Worked[]; adjusted: Worked | null }> {
  const use = { standings }
  const each = modes.map((mode) => workedYieldMode(mode)(problem, use)).filter((one) => one !== null)
  const value = workedYieldValue(problem, use)
  const end = workedGeometryFactor(
    {
      actual: endDistance,
      diameter: problem.diameter,
      full: dowelDistances.endInTension.full.value,
      floor: dowelDistances.endInTension.floor.value,
    },
    { id: 'end-distance-factor' },
  )
  const between =
    count > 1
      ? workedGeometryFactor(
          {
            actual: spacing,
            diameter: problem.diameter,
            full: dowelDistances.spacingInRow.full.value,
            floor: dowelDistances.spacingInRow.floor.value,
          },
          { id: 'spacing-factor' },
        )
      : null
  const factors = [end, ...(count > 1 ? [between] : [])]
  const worked = [...each, ...[value, end, between, group].filter((one) => one !== null)]
  if (!value || factors.some((one) => one === null)) return { worked, adjusted: null }
  const geometry = Math.min(...factors.map((one) => one?.value ?? 1))
  const adjusted = workedAdjustedDowelValue(
    {
      reference: newtons(value.value),
      count,
      duration: loadDuration.wind.value,
      wet: wetService.wet.value,
      temperature: temperature.wet['100F'].value,
      group: group?.value ?? 1,
      geometry,
      endGrain: 1,
    },
    {
      id: 'connection-allowable',
      standings: [...standings, ...(group ? [group.standing] : [])],
      sources: worked.flatMap((one) => one.sources),
    },
  )
  return { worked, adjusted }
}

function throughBars(frame: PierFrame): Check {
  const { spec, profile } = frame
  const kind = fillKind(spec.fill.kind)
  const where = ['bars']
  const refuse = (counting: Counting, worked: readonly Worked[] = []) =>
    makeCheck({
      id: 'bar-through-post',
      group: 'uplift-connection',
      where: spec.bars ? where : ['post'],
      worked,
      allowable: null,
      counting,
    })
  if (kind.counting.connection.counted === 'not counted') return refuse(kind.counting.connection)
  if (!spec.bars) return refuse(notCounted('no-bar'))
  const hosts = barLevels(frame).map((y) => liftAt(frame, y))
  const roles = hosts.map((id) => frame.lifts.find((lift) => lift.id === id)?.role)
  if (roles.some((role) => role !== 'concrete')) return refuse(notCounted('bar-outside-concrete'))

  const section = postSections[spec.post.section]
  const bar = bars[spec.bars.size]
  const narrowest = Math.min(...barLevels(frame).map((y) => wallRadius(profile, y)))
  const length = workedBarBearingLength({
    pierDiameter: metres(2 * narrowest),
    postWidth: section.width,
    cover: metres(cover.castAgainstEarth.value),
    barLength: spec.bars.length,
  })
  if (!length) return refuse(notCounted('bar-without-cover', ['aci-318-19-20-5-1-3']))
  const steel = barGrades[spec.bars.grade].dowelYield
  const problem = barDowelProblem({
    diameter: bar.diameter.value,
    postWidth: section.width,
    bearingLength: metres(length.value),
    gravity: species[spec.post.species].gravity.value,
    bendingYield: steel.value,
  })
  if (!problem || !yieldValue(problem)) return refuse(notCounted('outside-yield-range', ['nds-2018-12-3-1']), [length])
  const { worked, adjusted } = adjustedRow({
    problem,
    count: spec.bars.count,
    spacing: spec.bars.spacing,
    endDistance: spec.bars.aboveFoot,
    group: spec.bars.count > 1 ? groupInConcrete(frame, 2 * narrowest) : null,
    standings: [steel.standing, bar.diameter.standing],
  })
  const all = [length, ...worked]
  if (!adjusted) return refuse(notCounted('dowel-too-near-end', ['nds-2018-12-5']), all)
  return makeCheck({
    id: 'bar-through-post',
    group: 'uplift-connection',
    where,
    worked: all,
    allowable: adjusted,
    counting: kind.counting.connection,
  })
}

const sectionArea = (frame: PierFrame): SquareMetres => {
  const { shape, width, depth } = postSections[frame.spec.post.section]
  return squareMetres(shape === 'round' ? (Math.PI * width * width) / 4 : width * depth)
}

/** Group factor of bars in a row in concrete: the wood-to-metal load/slip figure, the lower one, with concrete as the side member. */
function groupInConcrete(frame: PierFrame, pierDiameter: number): Worked | null {
  const { spec } = frame
  if (!spec.bars) return null
  const wood = postDesignValues(spec.post.species, postSections[spec.post.section].make)
  const area = sectionArea(frame)
  // Modulus of concrete 57,000 sqrt(f'c), psi: from memory.
  const concrete = pascals(toSI(57_000 * Math.sqrt(fromSI(spec.concrete.strength, 'psi')), 'psi'))
  return workedGroupAction(
    {
      diameter: bars[spec.bars.size].diameter.value,
      spacing: spec.bars.spacing,
      count: spec.bars.count,
      main: { elasticity: wood.elasticity.value, area },
      side: { elasticity: concrete, area: squareMetres((Math.PI * pierDiameter ** 2) / 4 - area) },
      joint: 'wood-metal',
    },
    { standings: ['from memory'], sources: ['memory'] },
  )
}

function bracketBolts(frame: PierFrame): Check {
  const { spec } = frame
  if (spec.support.kind !== 'bracket') throw new Error('bracketBolts: the pier has no bracket')
  const { bracket } = spec.support
  const record = bracketKind(bracket.kind)
  const section = postSections[spec.post.section]
  const inputs = {
    diameter: bracket.boltDiameter,
    postWidth: section.width,
    plate: bracket.plateThickness,
    gravity: species[spec.post.species].gravity.value,
    bendingYield: boltBendingYield.value,
  }
  const problem = record.bolts === 'knife plate' ? knifePlateProblem(inputs) : sidePlateProblem(inputs)
  const { counting } = fillKind(spec.fill.kind)
  const base = { id: 'bracket-bolts', group: 'uplift-connection', where: ['bolts', 'bracket-plates'] } as const
  if (!problem) return makeCheck({ ...base, worked: [], allowable: null, counting: notCounted('outside-yield-range', ['nds-2018-12-3-1']) })
  const wood = postDesignValues(spec.post.species, section.make)
  const plates = record.bolts === 'knife plate' ? 1 : 2
  const group =
    bracket.boltCount > 1
      ? workedGroupAction({
          diameter: bracket.boltDiameter,
          spacing: metres(boltSpacing(bracket)),
          count: bracket.boltCount,
          main: { elasticity: wood.elasticity.value, area: sectionArea(frame) },
          side: { elasticity: steelElasticity, area: squareMetres(plates * bracket.plateThickness * 0.72 * section.depth) },
          joint: 'wood-metal',
        })
      : null
  const { worked, adjusted } = adjustedRow({
    problem,
    count: bracket.boltCount,
    spacing: metres(boltSpacing(bracket)),
    endDistance: metres(firstBoltAbove(bracket)),
    group,
    standings: [boltBendingYield.standing],
  })
  return makeCheck({ ...base, worked, allowable: adjusted, counting: counting.connection })
}

/** Modulus of steel, 30,000,000 psi, as the group action factor takes it. Source: nds-2018-11-3-6. */
const steelElasticity = pascals(toSI(30e6, 'psi'))
