import { workedAllowableFromNominal } from '../../engineering/concrete/breakout.ts'
import { barTensionFactors, workedBarTension } from '../../engineering/concrete/barSteel.ts'
import { developedShare, workedDevelopmentTable } from '../../engineering/concrete/development.ts'
import { plainReduction, workedPlainTension } from '../../engineering/concrete/plainTension.ts'
import { weakest, worked } from '../../engineering/showing.ts'
import { barGrades, bars } from '../../engineering/tables/bars.ts'
import { wallRadius } from '../../geometry/holeProfile.ts'
import { level } from '../../geometry/surface.ts'
import { volumeBelow } from '../../geometry/volumeBelow.ts'
import type { Counting } from '../../model/kind.ts'
import type { Worked } from '../../model/worked.ts'
import type { Zone } from '../../model/zone.ts'
import { metres, newtons, pascals, squareMetres } from '../../units/quantity.ts'
import { countingOf } from '../counting.ts'
import { given } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { postArea } from '../postArea.ts'
import { liftAt, mixBetween } from '../placedZones.ts'
import { weighing } from '../unitWeights.ts'
import { allowableShare } from './concreteLevel.ts'
import { type ChainLink, chainLink } from './chainLink.ts'

const byBars: Counting = { counted: 'counted', why: 'vertical-bars-carry', sources: ['aci-318-19-25-4-2-3'] }
const byPlainConcrete: Counting = { counted: "engineer's judgement", why: 'plain-concrete-tension', sources: [] }

/**
 * The pull through the mix just below the connection: all that hangs below that plane. Carried by vertical bars developed on both
 * sides; plain concrete has no code value, and its screening value is shown as one. Null where nothing is there to part.
 * @param zones of the pier, asked for only when the work is shown
 */
export function concreteTension(frame: PierFrame, plane: number, zones: () => readonly Zone[]): ChainLink | null {
  const host = liftAt(frame, plane - 1e-9)
  if (host === null) return null
  const { strength } = countingOf(frame.spec)
  const steel = verticalBarTension(frame, plane)
  const useSteel = steel !== null && steel.allowable.value > 0
  const plain = () => workedPlainTension(plainProblem(frame, plane))
  return chainLink({
    id: 'concrete-tension',
    group: 'uplift-concrete',
    counting: strength.counted === 'not counted' ? strength : useSteel ? byBars : byPlainConcrete,
    allowable: useSteel ? steel.allowable : plainAllowable(plain()),
    show: () => ({
      where: [host, ...(useSteel ? ['vertical-bars'] : [])],
      worked: [
        given('parting-level', -plane, 'length', { formula: 'z_p' }),
        weightBelow(frame, zones(), host, plane),
        plain(),
        ...(steel?.worked ?? []),
      ],
    }),
  })
}

const plainAllowable = (plain: Worked): Worked =>
  workedAllowableFromNominal(
    { nominal: newtons(plain.value), reduction: 1, share: allowableShare },
    { id: 'plain-tension-allowable', sources: [plain], standings: [plain] },
  )

/** Weight of the mix that hangs below the plane, at its full value. */
function weightBelow({ spec }: PierFrame, zones: readonly Zone[], id: string, plane: number): Worked {
  const host = zones.find((zone) => zone.id === id)
  if (host?.build !== 'swept') throw new Error(`weightBelow: no body "${id}"`)
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

/** Vertical bars across the plane: working stress, by the share of their development length on the shorter side; null without bars in the mix. */
function verticalBarTension(frame: PierFrame, plane: number): Readonly<{ worked: Worked[]; allowable: Worked }> | null {
  const { spec } = frame
  const upright = spec.verticalBars
  if (!upright) return null
  const bar = bars[upright.size]
  const mix = mixBetween(frame, frame.profile.shaftRadius - upright.cover - bar.diameter.value / 2)
  if (!mix) return null
  const reach = Math.min(mix.top - upright.cover - plane, plane - mix.bottom - upright.cover)
  const fy = barGrades[upright.grade].yield.value
  const length = workedDevelopmentTable({
    diameter: bar.diameter.value,
    yield: fy,
    strength: spec.concrete.strength,
    top: false,
    epoxy: upright.coating === 'epoxy' ? 1.5 : 1,
    clear: true,
  })
  const full = workedBarTension(
    { area: bar.area.value, stress: pascals(Math.min(barTensionFactors.workingStress.value, 0.6 * fy)), count: upright.count },
    { standings: [barTensionFactors.workingStress.standing] },
  )
  const share = developedShare({ embedment: metres(Math.max(0, reach)), development: metres(length.value) })
  const allowable = worked('vertical-bar-tension', full.value * share, 'force', () => ({
    formula: String.raw`T = n\,A_s f\,\min(1, l/l_d)`,
    inputs: [...full.inputs, { symbol: 'l/l_d', name: 'share', value: share, quantity: 'ratio' }],
    sources: [...new Set([...full.sources, ...length.sources])],
    standing: weakest(full.standing, length.standing),
  }))
  return { worked: [length, full], allowable }
}
