import { barTension, barTensionFactors, workedBarTension } from '../../engineering/concrete/barSteel.ts'
import {
  developedShare,
  developmentHead,
  developmentHook,
  developmentTable,
  workedDevelopedShare,
  workedDevelopmentHead,
  workedDevelopmentHook,
  workedDevelopmentTable,
} from '../../engineering/concrete/development.ts'
import { weakest } from '../../engineering/showing.ts'
import type { SourceId } from '../../engineering/sources.ts'
import { barGrades, bars } from '../../engineering/tables/bars.ts'
import { bracketKind } from '../../kinds/index.ts'
import type { BracketLegs, Counting } from '../../model/kind.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { metres, pascals } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { countingOf } from '../counting.ts'
import { given } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { ratedByUser, ratingOf, workedRating } from './bracketRating.ts'
import { type Hold, hold } from './hold.ts'

const id = 'bracket-legs-hold'
const group = 'uplift-connection'

type BarLegs = Extract<BracketLegs, { shape: 'bar' }>
const sourceOf: Readonly<Record<BarLegs['end'], SourceId>> = {
  straight: 'aci-318-19-25-4-2-3',
  hook: 'aci-318-19-25-4-3',
  head: 'aci-318-19-25-4-4',
}
const counting = (counted: Counting['counted'], why: string, ...sources: SourceId[]): Counting => ({ counted, why, sources })

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

/** Length [m] that the end asks for, the share of the steel that what is there holds, and how that counts. */
function developed(frame: PierFrame, legs: BarLegs) {
  const problem = barProblem(frame, legs)
  const { embedment, straight, bent } = problem
  const length =
    legs.end === 'straight' ? developmentTable(straight) : (legs.end === 'hook' ? developmentHook(bent) : developmentHead(bent)).length
  const isShort = embedment < length * (1 - 1e-9)
  const source = sourceOf[legs.end]
  const { strength } = countingOf(frame.spec)
  const own =
    strength.counted === 'not counted'
      ? strength
      : !isShort
        ? counting('counted', 'legs-reach-far-enough', source)
        : legs.end === 'straight'
          ? counting("engineer's judgement", 'legs-short-of-straight-length', source)
          : counting('not counted', 'legs-short-of-hook-or-head', source)
  return {
    ...problem,
    length: metres(length),
    share: legs.end === 'straight' ? developedShare({ embedment, development: metres(length) }) : 1,
    own,
  }
}

const flat = counting('not counted', 'flat-legs-outside-code', 'aci-318-19-25-4-2-3')

/**
 * How the cast-in legs of a bracket are held in the concrete. Bars by the development length of their end, against the embedment; flat
 * legs by nothing that a code gives, unless the bracket is rated. Null where no legs are cast in.
 */
export function bracketLegs(frame: PierFrame): Check | null {
  const legs = legsOf(frame)
  if (!legs || frame.spec.support.kind !== 'bracket') return null
  const base = { id, group, where: ['bracket-legs'] } as const
  const rating = ratingOf(frame.spec)
  const there = given('legs-embedment', frame.spec.support.bracket.embedment, 'length', { formula: 'l' })
  if (legs.shape === 'flat') {
    if (rating !== null) return makeCheck({ ...base, worked: [there], allowable: workedRating(rating), counting: ratedByUser })
    return makeCheck({ ...base, worked: [there], allowable: null, counting: flat })
  }
  const found = developed(frame, legs)
  const standings = [bars[legs.size].diameter.standing, barGrades[legs.grade].yield.standing]
  const ends = {
    straight: workedDevelopmentTable(found.straight, { standings }),
    hook: workedDevelopmentHook(found.bent, { standings: ['from memory', ...standings] }),
    head: workedDevelopmentHead(found.bent, { standings }),
  } as const satisfies Readonly<Record<BarLegs['end'], Worked>>
  const asked = ends[legs.end]
  const full = workedBarTension(found.full, { id: 'legs-steel', standings: [barTensionFactors.workingStress.standing, ...standings] })
  const share = workedDevelopedShare(
    { embedment: found.embedment, development: found.length },
    { id: 'legs-share', standings: [asked.standing] },
  )
  const isPart = found.share < 1
  const allowable: Worked = {
    ...full,
    id: 'legs-allowable',
    value: full.value * found.share,
    formula: isPart ? 'T = s\\,T_s' : String.raw`T = T_s,\quad l \ge l_{d}`,
    inputs: [
      { symbol: 'T_s', name: 'steel', value: full.value, quantity: 'force' },
      ...(isPart
        ? [{ symbol: 's', name: 'developed', value: found.share, quantity: 'ratio' as const }]
        : [
            { symbol: 'l', name: 'embedment', value: found.embedment, quantity: 'length' as const },
            { symbol: 'l_d', name: 'development', value: found.length, quantity: 'length' as const },
          ]),
    ],
    sources: [...new Set([...full.sources, ...asked.sources])],
    standing: weakest(full.standing, asked.standing, ...(isPart ? [share.standing] : [])),
  }
  const worked = [there, ends.straight, ends.hook, ends.head, full, ...(isPart ? [share] : [])]
  if (rating !== null) return makeCheck({ ...base, worked: [...worked, allowable], allowable: workedRating(rating), counting: ratedByUser })
  return makeCheck({ ...base, worked, allowable, counting: found.own })
}

/** The same as a bare number. */
export function bracketLegsHold(frame: PierFrame): Hold | null {
  const legs = legsOf(frame)
  if (!legs) return null
  const rating = ratingOf(frame.spec)
  if (rating !== null) return hold(id, group, ratedByUser.counted, rating)
  if (legs.shape === 'flat') return hold(id, group, flat.counted, null)
  const found = developed(frame, legs)
  return hold(id, group, found.own.counted, barTension(found.full) * found.share)
}
