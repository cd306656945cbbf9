import type { ReasonId } from '../../model/saidIds.ts'
import { barTensionFactors, workedBarTension } from '../../engineering/concrete/barSteel.ts'
import { workedDevelopmentHead, workedDevelopmentHook, workedDevelopmentTable } from '../../engineering/concrete/development.ts'
import { weakest, worked } from '../../engineering/showing.ts'
import type { SourceId } from '../../engineering/sources.ts'
import { barGrades, bars } from '../../engineering/tables/bars.ts'
import { bracketKind } from '../../kinds/index.ts'
import type { BracketLegs, Counting } from '../../model/kind.ts'
import type { Worked } from '../../model/worked.ts'
import { pascals } from '../../units/quantity.ts'
import { countingOf, inRangeOfCode } from '../counting.ts'
import { given } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { ratedByUser, ratingOf, workedRating } from './bracketRating.ts'
import { type ChainLink, chainLink } from './chainLink.ts'

type BarLegs = Extract<BracketLegs, { shape: 'bar' }>
const sourceOf: Readonly<Record<BarLegs['end'], SourceId>> = {
  straight: 'aci-318-19-25-4-2-3',
  hook: 'aci-318-19-25-4-3',
  head: 'aci-318-19-25-4-4',
}
const counting = (counted: Counting['counted'], why: ReasonId, ...sources: SourceId[]): Counting => ({ counted, why, sources })

/** What the cast-in legs of a bracket are; null without a bracket, and for one that is anchored once the concrete is hard. */
function legsOf({ spec, bracketSite }: PierFrame): BracketLegs | null {
  return spec.support.kind === 'bracket' && bracketSite ? bracketKind(spec.support.bracket.kind).legs : null
}

/** What goes into the development of bars that are legs, by every end that they could have. */
function barProblem(frame: PierFrame, legs: BarLegs) {
  const { spec, profile, bracketSite } = frame
  if (spec.support.kind !== 'bracket' || !bracketSite) throw new Error('barProblem: the pier has no bracket')
  const bar = bars[legs.size]
  const diameter = bar.diameter.value
  const grade = barGrades[legs.grade]
  const apart = legs.apart(bracketSite)
  const beside = profile.shaftRadius - apart / 2 - diameter / 2
  const steel = { diameter, yield: grade.yield.value, strength: spec.concrete.strength, epoxy: 1 }
  // Six diameters: from memory, as the figures of these factors are in the code's table.
  const bent = { ...steel, confining: apart >= 6 * diameter ? 1 : 1.6, location: beside >= 6 * diameter ? 1 : 1.25 }
  const stress = pascals(Math.min(barTensionFactors.workingStress.value, 0.6 * grade.yield.value))
  return {
    embedment: spec.support.bracket.embedment,
    straight: { ...steel, top: false, clear: apart - diameter >= 2 * diameter && beside >= diameter },
    bent,
    full: { area: bar.area.value, stress, count: legs.count },
  }
}

/** Whether bars reach as far as their end asks, and how that counts. */
function reachCounting({ spec }: PierFrame, end: BarLegs['end'], isShort: boolean): Counting {
  const { strength } = countingOf(spec)
  if (strength.counted === 'not counted') return strength
  const source = sourceOf[end]
  return inRangeOfCode(
    spec,
    isShort ? counting('not counted', 'legs-too-short', source) : counting('counted', 'legs-reach-far-enough', source),
  )
}

const flat = counting('not counted', 'flat-legs-outside-code', 'aci-318-19-25-4-2-3')

/**
 * How the cast-in legs of a bracket are held in the concrete. Bars by the development length of their end, against the embedment; flat
 * legs by nothing that a code gives, unless the bracket is rated. Null where no legs are cast in.
 */
export function bracketLegs(frame: PierFrame): ChainLink | null {
  const legs = legsOf(frame)
  if (!legs || frame.spec.support.kind !== 'bracket') return null
  const rating = ratingOf(frame.spec)
  const there = given('legs-embedment', frame.spec.support.bracket.embedment, 'length', { formula: 'l' })
  const own = legs.shape === 'flat' ? { counting: flat, allowable: null, steps: () => [] } : barLegs(frame, legs)
  return chainLink({
    id: 'bracket-legs-hold',
    group: 'uplift-connection',
    counting: rating !== null ? ratedByUser : own.counting,
    allowable: rating !== null ? workedRating(rating) : own.allowable,
    show: () => ({
      where: ['bracket-legs'],
      worked: [there, ...own.steps(), ...(rating !== null && own.allowable ? [own.allowable] : [])],
    }),
  })
}

/** Bars as legs: what their steel holds, where they reach as far as their end asks. */
function barLegs(frame: PierFrame, legs: BarLegs) {
  const { embedment, straight, bent, full: steel } = barProblem(frame, legs)
  const standings = [bars[legs.size].diameter.standing, barGrades[legs.grade].yield.standing]
  const ends = {
    straight: () => workedDevelopmentTable(straight, { standings }),
    hook: () => workedDevelopmentHook(bent, { standings: ['from memory', ...standings] }),
    head: () => workedDevelopmentHead(bent, { standings }),
  } as const satisfies Readonly<Record<BarLegs['end'], () => Worked>>
  const asked = ends[legs.end]()
  const full = workedBarTension(steel, { id: 'legs-steel', standings: [barTensionFactors.workingStress.standing, ...standings] })
  const allowable = worked('legs-allowable', full.value, 'force', () => ({
    formula: String.raw`T = T_s,\quad l \ge l_{d}`,
    inputs: [
      { symbol: 'T_s', name: 'steel', value: full.value, quantity: 'force' },
      { symbol: 'l', name: 'embedment', value: embedment, quantity: 'length' },
      { symbol: 'l_d', name: 'development', value: asked.value, quantity: 'length' },
    ],
    sources: [...new Set([...full.sources, ...asked.sources])],
    standing: weakest(full.standing, asked.standing),
  }))
  return {
    counting: reachCounting(frame, legs.end, embedment < asked.value * (1 - 1e-9)),
    allowable,
    steps: (): Worked[] => [ends.straight(), ends.hook(), ends.head(), full],
  }
}
