import { allowableFromNominal, workedAllowableFromNominal } from '../../engineering/concrete/breakout.ts'
import { barTension, barTensionFactors, workedBarTension } from '../../engineering/concrete/barSteel.ts'
import { developedShare, developmentTable, workedDevelopmentTable } from '../../engineering/concrete/development.ts'
import { plainReduction, plainTension, workedPlainTension } from '../../engineering/concrete/plainTension.ts'
import { weakest } from '../../engineering/showing.ts'
import { barGrades, bars } from '../../engineering/tables/bars.ts'
import { wallRadius } from '../../geometry/holeProfile.ts'
import { level } from '../../geometry/surface.ts'
import { volumeBelow } from '../../geometry/volumeBelow.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check, Worked } from '../../model/worked.ts'
import type { Zone } from '../../model/zone.ts'
import { metres, newtons, squareMetres } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { countingOf } from '../counting.ts'
import { given } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { postArea } from '../postArea.ts'
import { liftAt, mixBetween } from '../placedZones.ts'
import { weighing } from '../unitWeights.ts'
import { allowableShare } from './concreteLevel.ts'
import { type Hold, hold } from './hold.ts'

const id = 'concrete-tension'
const group = 'uplift-concrete'
const plainShare = { reduction: 1, share: allowableShare }

const byBars: Counting = { counted: 'counted', why: 'vertical-bars-carry', sources: ['aci-318-19-25-4-2-3'] }
const byPlainConcrete: Counting = { counted: "engineer's judgement", why: 'plain-concrete-tension', sources: [] }

/**
 * The pull through the mix just below the connection: all that hangs below that plane. Carried by vertical bars developed on both
 * sides; plain concrete has no code value, and its screening value is shown as one.
 */
export function concreteTension(frame: PierFrame, zones: readonly Zone[], plane: number): Check | null {
  const hostId = liftAt(frame, plane - 1e-9)
  const host = zones.find((zone) => zone.id === hostId)
  if (host?.build !== 'swept') return null
  const { strength } = countingOf(frame.spec)
  const plain = workedPlainTension(plainProblem(frame, plane))
  const steel = verticalBarTension(frame, plane)
  const useSteel = steel !== null && steel.allowable.value > 0
  const allowable = useSteel
    ? steel.allowable
    : workedAllowableFromNominal(
        { nominal: newtons(plain.value), ...plainShare },
        { id: 'plain-tension-allowable', sources: plain.sources, standings: [plain.standing] },
      )
  return makeCheck({
    id,
    group,
    where: [host.id, ...(useSteel ? ['vertical-bars'] : [])],
    worked: [
      given('parting-level', -plane, 'length', { formula: 'z_p' }),
      weightBelow(frame, host, plane),
      plain,
      ...(steel?.worked ?? []),
    ],
    allowable,
    counting: strength.counted === 'not counted' ? strength : useSteel ? byBars : byPlainConcrete,
  })
}

/** The same as a bare number. */
export function concreteTensionHold(frame: PierFrame, plane: number): Hold | null {
  if (liftAt(frame, plane - 1e-9) === null) return null
  const { strength } = countingOf(frame.spec)
  const steel = verticalBarProblem(frame, plane)
  const carried = steel
    ? barTension(steel.full) * developedShare({ embedment: steel.embedment, development: developmentTable(steel.bar) })
    : 0
  const plain = () => allowableFromNominal({ nominal: plainTension(plainProblem(frame, plane)), ...plainShare })
  const counted = strength.counted === 'not counted' ? strength.counted : (carried > 0 ? byBars : byPlainConcrete).counted
  return hold(id, group, counted, carried > 0 ? carried : plain())
}

/** Weight of the mix that hangs below the plane, at its full value. */
function weightBelow({ spec }: PierFrame, host: Extract<Zone, { build: 'swept' }>, plane: number): Worked {
  const volume = volumeBelow(host.corners, level(plane), host.breaks)
  const weight = weighing(host.role, spec)
  return {
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
}

/** What goes into the tension of plain concrete through a plane: its area is the hole less the post, where one stands there. */
function plainProblem({ spec, profile, foot }: PierFrame, plane: number) {
  const wood = spec.support.kind === 'bracket' || plane <= foot ? 0 : postArea(spec.post.section)
  const area = squareMetres(Math.PI * wallRadius(profile, plane) ** 2 - wood)
  return { strength: spec.concrete.strength, area, reduction: plainReduction.value }
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
