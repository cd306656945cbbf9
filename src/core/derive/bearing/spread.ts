import { footingRules, workedReachByBending, workedReachByPunching } from '../../engineering/concrete/plainFooting.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import type { Role } from '../../model/solid.ts'
import type { Worked } from '../../model/worked.ts'
import { type Metres, metres, type Pascals, pascals } from '../../units/quantity.ts'
import { bearingRadius, radiusAt } from '../depths.ts'
import { given, lengthTerm, limitOf } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { postArea } from '../postArea.ts'

const rounding = 1e-9

/** What lies right under the post: the ground or gravel, or a body of a role, from its bottom up to the post [m]. */
export type Under = Readonly<{ on: 'ground' } | { on: 'body'; role: Role; thickness: Metres }>

/** What the post stands on; under a bracket, the concrete below it. */
export function underPost(frame: PierFrame): Under {
  const { spec, standing, foot, fillBottom, lifts, bracketSite } = frame
  const level = standing === null ? (bracketSite?.landing ?? 0) : foot
  if (level <= fillBottom + rounding) {
    const { base } = spec.hole
    return base?.material === 'concrete' ? { on: 'body', role: 'concrete', thickness: base.thickness } : { on: 'ground' }
  }
  let bottom = fillBottom
  for (const lift of lifts) {
    if (lift.to.kind !== 'level' || level <= lift.to.y + rounding) return { on: 'body', role: lift.role, thickness: metres(level - bottom) }
    bottom = lift.to.y
  }
  throw new Error('underPost: no lift reaches the post')
}

/** Area that a load is spread over at the bottom of the pier, the steps to it, and how far it got. */
export type SpreadArea = Readonly<{ area: Worked; steps: readonly Worked[]; as: 'whole' | 'part' | 'too thin' }>

/** Side of the square with the area of a circle [m]: a round footing is looked at as that. Source: aci-318-19-14. */
const sideOf = (radius: number): number => radius * Math.sqrt(Math.PI)

/** Sides of the post's end [m], a round one as the square of its area. */
function endOf({ spec }: PierFrame): Readonly<{ w: Metres; d: Metres }> {
  const { shape, width, depth } = postSections[spec.post.section]
  const side = metres(sideOf(width / 2))
  return shape === 'round' ? { w: side, d: side } : { w: width, d: depth }
}

/** How far a block reaches beyond the faces of what stands on it, with the steps; null where it is too thin for a footing. */
function reachOf(
  block: Readonly<{ thickness: Metres; isOnGround: boolean; w: Metres; d: Metres }>,
  { strength, pressure }: Readonly<{ strength: Pascals; pressure: Pascals }>,
  id: (step: string) => string,
): Readonly<{ reach: number; steps: readonly Worked[] }> | null {
  const { thickness, isOnGround, w, d } = block
  if (thickness < footingRules.least.value * (1 - rounding)) return null
  const thick = metres(thickness - (isOnGround ? footingRules.lostOnGround.value : 0))
  const bending = workedReachByBending({ thick, strength, pressure }, { id: id('reach-by-bending') })
  const punching = workedReachByPunching({ thick, strength, pressure, loadedWidth: w, loadedDepth: d }, { id: id('reach-by-punching') })
  return { reach: Math.min(thickness, bending.value, punching.value), steps: [bending, punching] }
}

/** The whole bottom of the pier. */
export function wholeBottom(frame: PierFrame): Worked {
  const radius = bearingRadius(frame)
  return given('bearing-area', Math.PI * radius ** 2, 'area', {
    formula: String.raw`A = \pi D^2/4`,
    inputs: [lengthTerm('D', 'diameter', 2 * radius)],
  })
}

/** The end of the post. */
export function endOfPost({ spec }: PierFrame): Worked {
  const { shape, width, depth } = postSections[spec.post.section]
  const isRound = shape === 'round'
  return given('bearing-area', postArea(spec.post.section), 'area', {
    formula: isRound ? String.raw`A = \pi D^2/4` : 'A = w\\,d',
    inputs: isRound ? [lengthTerm('D', 'diameter', width)] : [lengthTerm('w', 'postWidth', width), lengthTerm('d', 'postDepth', depth)],
  })
}

/** Side of the square that a bell makes of its shaft [m]: no wider than its own concrete reaches beyond the shaft. */
function bellSide(frame: PierFrame, asked: Readonly<{ strength: Pascals; pressure: Pascals }>) {
  const { spec, profile, fillBottom } = frame
  const whole = sideOf(radiusAt(profile, fillBottom))
  const { bell, base } = spec.hole
  if (!bell || base?.material === 'concrete') return { side: whole, steps: [] }
  const shaft = metres(sideOf(profile.shaftRadius))
  const thickness = metres(profile.bottom + bell.height - fillBottom)
  if (!(thickness > rounding)) return { side: whole, steps: [] }
  const found = reachOf({ thickness, isOnGround: true, w: shaft, d: shaft }, asked, (step) => `bell-${step}`)
  return {
    side: Math.min(whole, shaft + 2 * (found?.reach ?? 0)),
    steps: [given('bell-thickness', thickness, 'length', { formula: 't' }), ...(found?.steps ?? [])],
  }
}

/**
 * Area at the bottom of the pier over which plain concrete under the post spreads its load: no farther beyond the post than the concrete is
 * thick, and as far as that carries the ground's allowable pressure in bending and in punching. Two pours are not one block: of the mix under
 * the post and a base of concrete below, the one that spreads more is taken alone.
 * @param mix thickness of the mix under the post [m], 0 for none that counts
 * @param bearing allowable pressure of the ground [Pa]
 */
export function spreadByConcrete(frame: PierFrame, mix: Metres, bearing: Pascals): SpreadArea {
  const { base } = frame.spec.hole
  const slab = base?.material === 'concrete' ? base.thickness : metres(0)
  const asked = { strength: frame.spec.concrete.strength, pressure: pascals(footingRules.loadFactor.value * bearing) }
  const end = endOf(frame)
  const blocks = [
    { thickness: mix, isOnGround: slab === 0 },
    { thickness: slab, isOnGround: true },
  ]
  const bell = bellSide(frame, asked)
  const limits = [
    limitOf('least-footing', footingRules.least, 'length'),
    limitOf('least-footing-residential', footingRules.leastResidential, 'length'),
  ]
  let best: Readonly<{ thickness: Metres; reach: number; steps: readonly Worked[] }> | null = null
  for (const block of blocks) {
    const found = reachOf({ ...block, ...end }, asked, (step) => step)
    if (found && (best === null || found.reach > best.reach)) best = { thickness: block.thickness, ...found }
  }
  const thickness = given('concrete-under-post', best?.thickness ?? Math.max(mix, slab), 'length', { formula: 't' })
  if (!best) return { area: endOfPost(frame), steps: [thickness, ...limits], as: 'too thin' }
  const { reach, steps } = best
  const all = [thickness, ...limits, ...steps, ...bell.steps]
  const whole = wholeBottom(frame)
  const [across, along] = [end.w, end.d].map((side) => Math.min(bell.side, side + 2 * reach)) as [number, number]
  if (across * along >= whole.value * (1 - rounding)) return { area: whole, steps: all, as: 'whole' }
  const area = given('bearing-area', across * along, 'area', {
    formula: String.raw`A = \min(B, w+2p)\,\min(B, d+2p)`,
    inputs: [
      lengthTerm('B', 'bottomSide', bell.side),
      lengthTerm('w', 'postWidth', end.w),
      lengthTerm('d', 'postDepth', end.d),
      lengthTerm('p', 'spread', reach),
    ],
    sources: ['aci-318-19-14', 'irc-r403-1-1'],
    standing: 'secondary',
  })
  return { area, steps: all, as: 'part' }
}
