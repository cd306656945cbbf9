import {
  allowableFromNominal,
  roundPierBreakout,
  workedAllowableFromNominal,
  workedRoundPierBreakout,
} from '../../engineering/concrete/breakout.ts'
import { barTension, barTensionFactors, workedBarTension } from '../../engineering/concrete/barSteel.ts'
import { developedShare, developmentTable, workedDevelopmentTable } from '../../engineering/concrete/development.ts'
import { plainReduction, plainTension, workedPlainTension } from '../../engineering/concrete/plainTension.ts'
import { weakest } from '../../engineering/showing.ts'
import { barGrades, bars } from '../../engineering/tables/bars.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { wallRadius } from '../../geometry/holeProfile.ts'
import { volumeBelow } from '../../geometry/volumeBelow.ts'
import { level } from '../../geometry/surface.ts'
import { bracketKind, fillKind } from '../../kinds/index.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check, Worked } from '../../model/worked.ts'
import type { Zone } from '../../model/zone.ts'
import { metres, newtons, squareMetres } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import type { PierFrame } from '../pierFrame.ts'
import { barLevels, liftAt, mixBetween } from '../placedZones.ts'
import { weighing } from '../unitWeights.ts'
import { type Hold, hold } from './hold.ts'

/** Strength level to the level of 0.6 W, once. */
const allowableShare = 0.6

/** Lowest level at which the connection pulls on the mix [m], signed; null without a connection in it. */
export function pullLevel(frame: PierFrame): number | null {
  if (frame.spec.support.kind === 'bracket') return (frame.bracketSite?.landing ?? 0) - frame.spec.support.bracket.embedment
  const lowest = barLevels(frame)[0]
  const host = lowest === undefined ? undefined : frame.lifts.find((lift) => lift.id === liftAt(frame, lowest))
  return host && (host.role === 'concrete' || host.role === 'dry-mix') ? (lowest ?? null) : null
}

/** What the mix has to carry: a cone out of its top, and the pull through the plane under the connection. Empty without a connection in it. */
export function upliftByConcrete(frame: PierFrame, zones: readonly Zone[]): Check[] {
  const plane = pullLevel(frame)
  if (plane === null) return []
  const { counting } = fillKind(frame.spec.fill.kind)
  const isMixed = counting.strength.counted !== 'not counted'
  return [
    breakout(frame, plane, isMixed ? screening('breakout-screening') : counting.strength),
    tension(frame, zones, plane, counting.strength),
  ].filter((check) => check !== null)
}

/** The same as bare numbers. */
export function concreteHolds(frame: PierFrame): Hold[] {
  const plane = pullLevel(frame)
  if (plane === null) return []
  const { strength } = fillKind(frame.spec.fill.kind).counting
  const isMixed = strength.counted !== 'not counted'
  const group = 'uplift-concrete'
  const holds: Hold[] = []
  const cone = breakoutProblem(frame, plane)
  if (cone) {
    const { nominal } = roundPierBreakout(cone.inputs)
    const counted = cone.isAnchored ? 'not counted' : isMixed ? "engineer's judgement" : strength.counted
    holds.push(hold('concrete-breakout', group, counted, allowableFromNominal({ nominal, ...breakoutShare })))
  }
  if (liftAt(frame, plane - 1e-9) !== null) {
    const steel = verticalBarProblem(frame, plane)
    const carried = steel
      ? barTension(steel.full) * developedShare({ embedment: steel.embedment, development: developmentTable(steel.bar) })
      : 0
    const plain = () => allowableFromNominal({ nominal: plainTension(plainProblem(frame, plane)), ...plainShare })
    const counted = isMixed ? (carried > 0 ? 'counted' : "engineer's judgement") : strength.counted
    holds.push(hold('concrete-tension', group, counted, carried > 0 ? carried : plain()))
  }
  return holds
}

const screening = (why: string): Counting => ({ counted: "engineer's judgement", why, sources: [] })

const breakoutShare = { reduction: 0.7, share: allowableShare }
const plainShare = { reduction: 1, share: allowableShare }

/** What goes into breakout from the top of the mix; null where no mix stands over the plane. */
function breakoutProblem(frame: PierFrame, plane: number) {
  const { spec, end, profile, innerRadius } = frame
  const host = frame.lifts.find((lift) => lift.id === liftAt(frame, plane - 1e-9))
  const top = host ? (mixBetween(frame, innerRadius)?.top ?? 0) : 0
  if (end.kind === 'top' && top <= plane) return null
  return {
    host,
    isAnchored: spec.support.kind === 'bracket' && bracketKind(spec.support.bracket.kind).anchorage === 'anchored after curing',
    inputs: { diameter: metres(2 * wallRadius(profile, plane)), strength: spec.concrete.strength, embedment: metres(top - plane) },
  }
}

function breakout(frame: PierFrame, plane: number, counting: Counting): Check | null {
  const problem = breakoutProblem(frame, plane)
  if (!problem) return null
  const nominal = workedRoundPierBreakout(problem.inputs)
  const allowable = workedAllowableFromNominal(
    { nominal: newtons(nominal.value), ...breakoutShare },
    { id: 'breakout-allowable', sources: nominal.sources },
  )
  return makeCheck({
    id: 'concrete-breakout',
    group: 'uplift-concrete',
    where: problem.host ? [problem.host.id] : [],
    worked: [nominal],
    allowable,
    counting: problem.isAnchored ? { counted: 'not counted', why: 'anchors-need-evaluation', sources: ['aci-318-19-17-6-2'] } : counting,
  })
}

/** What goes into the tension of plain concrete through a plane: its area is the hole less the post, where one stands there. */
function plainProblem({ spec, profile, foot }: PierFrame, plane: number) {
  const section = postSections[spec.post.section]
  const wood =
    spec.support.kind === 'bracket' || plane <= foot
      ? 0
      : section.shape === 'round'
        ? (Math.PI * section.width ** 2) / 4
        : section.width * section.depth
  const area = squareMetres(Math.PI * wallRadius(profile, plane) ** 2 - wood)
  return { strength: spec.concrete.strength, area, reduction: plainReduction.value }
}

/**
 * The pull through the mix just below the connection: all that hangs below that plane. Carried by vertical bars developed on both
 * sides; plain concrete has no code value, and its screening value is shown as one.
 */
function tension(frame: PierFrame, zones: readonly Zone[], plane: number, strength: Counting): Check | null {
  const { spec } = frame
  const hostId = liftAt(frame, plane - 1e-9)
  const host = zones.find((zone) => zone.id === hostId)
  if (host?.build !== 'swept') return null
  const volume = volumeBelow(host.corners, level(plane), host.breaks)
  const weight = weighing(host.role, spec)
  const hanging: Worked = {
    id: 'weight-below-plane',
    value: weight.moist * volume,
    quantity: 'weight',
    formula: String.raw`W_{below} = \gamma\,V_{below}`,
    inputs: [
      { symbol: String.raw`\gamma`, name: 'unitWeight', value: weight.moist, quantity: 'unitWeight' },
      { symbol: 'V_{below}', name: 'volume', value: volume, quantity: 'volume' },
    ],
    sources: [weight.source],
    standing: weight.standing,
  }
  const at: Worked = {
    id: 'parting-level',
    value: -plane,
    quantity: 'length',
    formula: 'z_p',
    inputs: [],
    sources: ['definition'],
    standing: 'definition',
  }
  const plain = workedPlainTension(plainProblem(frame, plane))
  const steel = verticalBarTension(frame, plane)
  const useSteel = steel !== null && steel.allowable.value > 0
  const allowable = useSteel
    ? steel.allowable
    : workedAllowableFromNominal(
        { nominal: newtons(plain.value), ...plainShare },
        { id: 'plain-tension-allowable', sources: plain.sources, standings: [plain.standing] },
      )
  const counting: Counting =
    strength.counted === 'not counted'
      ? strength
      : useSteel
        ? { counted: 'counted', why: 'vertical-bars-carry', sources: ['aci-318-19-25-4-2-3'] }
        : screening('plain-concrete-tension')
  return makeCheck({
    id: 'concrete-tension',
    group: 'uplift-concrete',
    where: [hostId ?? '', ...(useSteel ? ['vertical-bars'] : [])],
    worked: [at, hanging, plain, ...(steel?.worked ?? [])],
    allowable,
    counting,
  })
}

/** What goes into the tension of vertical bars across the plane; null without bars in the mix. */
function verticalBarProblem(frame: PierFrame, plane: number) {
  const { spec, profile } = frame
  const upright = spec.verticalBars
  if (!upright) return null
  const bar = bars[upright.size]
  const mix = mixBetween(frame, profile.shaftRadius - upright.cover - bar.diameter.value / 2)
  if (!mix) return null
  const above = mix.top - upright.cover - plane
  const below = plane - mix.bottom - upright.cover
  const grade = barGrades[upright.grade]
  const stress = Math.min(barTensionFactors.workingStress.value, 0.6 * grade.yield.value)
  return {
    bar: {
      diameter: bar.diameter.value,
      yield: grade.yield.value,
      strength: spec.concrete.strength,
      top: false,
      epoxy: upright.coating === 'epoxy' ? 1.5 : 1,
      clear: true,
    },
    embedment: metres(Math.max(0, Math.min(above, below))),
    full: { area: bar.area.value, stress: stress as typeof grade.yield.value, count: upright.count },
  }
}

/** Vertical bars across the plane: working stress, by the share of their development length on the shorter side. */
function verticalBarTension(frame: PierFrame, plane: number): Readonly<{ worked: Worked[]; allowable: Worked }> | null {
  const problem = verticalBarProblem(frame, plane)
  if (!problem) return null
  const length = workedDevelopmentTable(problem.bar)
  const share = developedShare({ embedment: problem.embedment, development: metres(length.value) })
  const full = workedBarTension(problem.full, { standings: [barTensionFactors.workingStress.standing] })
  const allowable: Worked = {
    ...full,
    id: 'vertical-bar-tension',
    value: full.value * share,
    formula: String.raw`T = n\,A_s f\,\min(1, l/l_d)`,
    inputs: [...full.inputs, { symbol: 'l/l_d', name: 'share', value: share, quantity: 'ratio' }],
    sources: [...new Set([...full.sources, ...length.sources])],
    standing: weakest(full.standing, length.standing),
  }
  return { worked: [length, full], allowable }
}
