import type { StepId } from '../../model/saidIds.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import type { MistakeId } from '../../model/buildStep.ts'
import type { PierSpec } from '../../model/spec.ts'
import { deepFreeze } from '../../spec/path.ts'
import { hasTop } from '../../spec/placement.ts'
import { validateSpec } from '../../spec/validate.ts'
import { toSI } from '../../units/factors.ts'
import { metres, radians } from '../../units/quantity.ts'

const inch = (value: number) => metres(toSI(value, 'in'))

/** How far each goes wrong: sizes of our own to look at, assumed here; no survey of built piers gives them. */
export const amiss = {
  narrower: inch(2),
  loose: inch(3),
  lean: radians(toSI(2, 'deg')),
  /** Bar beyond each face of the post. */
  stub: inch(0.5),
  higher: inch(8),
  dish: inch(1),
  rimBelow: inch(-2),
  collarLower: inch(6),
} as const

export type Mistake = Readonly<{
  id: MistakeId
  /** Steps at which it is made: the first of them that a pier has. */
  at: readonly StepId[]
  /** Can it be made on this pier, and could what comes of it be drawn? */
  applies(spec: PierSpec): boolean
  /** The pier with it; the same object where it changes nothing. */
  make(spec: PierSpec): PierSpec
}>

const canStand = (spec: PierSpec): boolean => validateSpec(spec).every(({ severity }) => severity !== 'error')

const mistake = (id: MistakeId, at: readonly StepId[], make: Mistake['make']): Mistake => ({
  id,
  at,
  make,
  applies: (spec) => {
    const wrong = make(spec)
    return wrong !== spec && canStand(wrong)
  },
})

const barSteps: readonly StepId[] = ['place-bar', 'empty-bags', 'granular-in-lifts', 'pour-flowable', 'place-mixed', 'pour-dry']

/** Every mistake, in the order in which a pier is built. */
export const mistakes: readonly Mistake[] = [
  mistake('undersized-hole', ['drill'], (spec) => {
    const diameter = metres(spec.hole.diameter - amiss.narrower)
    const bars = spec.bars && spec.bars.length > diameter ? { ...spec.bars, length: diameter } : spec.bars
    return { ...spec, bars, hole: { ...spec.hole, diameter } }
  }),
  mistake('loose-bottom', ['clean-out'], (spec) => {
    const { hole, support, fill } = spec
    if (hole.base) return spec
    const onIt = metres(amiss.loose + ('pad' in fill ? fill.pad : 0))
    const raised = support.kind === 'embedded' && support.foot < onIt ? { ...support, foot: onIt } : support
    return { ...spec, support: raised, hole: { ...hole, base: { material: 'loose-soil', thickness: amiss.loose } } }
  }),
  mistake('off-plumb', ['set-and-brace'], (spec) =>
    spec.support.kind === 'embedded' && spec.post.lean < amiss.lean ? { ...spec, post: { ...spec.post, lean: amiss.lean } } : spec,
  ),
  mistake('bar-missed', barSteps, (spec) => (spec.bars ? { ...spec, bars: null } : spec)),
  mistake('bar-too-short', barSteps, (spec) => {
    const short = metres(postSections[spec.post.section].width + 2 * amiss.stub)
    return spec.bars && spec.bars.length > short ? { ...spec, bars: { ...spec.bars, length: short } } : spec
  }),
  mistake('bar-too-high', barSteps, (spec) =>
    spec.bars ? { ...spec, bars: { ...spec.bars, aboveFoot: metres(spec.bars.aboveFoot + amiss.higher) } } : spec,
  ),
  mistake('flat-top', ['finish-top'], (spec) =>
    hasTop(spec) && spec.top.shape === 'crowned' ? { ...spec, top: { ...spec.top, shape: 'flat' } } : spec,
  ),
  mistake('dished-top', ['finish-top'], (spec) =>
    hasTop(spec) && spec.top.shape !== 'dished' ? { ...spec, top: { ...spec.top, shape: 'dished', rise: amiss.dish } } : spec,
  ),
  mistake('low-fill', ['finish-top', 'place-mixed'], (spec) => {
    if ('height' in spec.fill) return { ...spec, fill: { ...spec.fill, height: metres(spec.fill.height - amiss.collarLower) } }
    return hasTop(spec) && spec.top.rim > amiss.rimBelow ? { ...spec, top: { ...spec.top, rim: amiss.rimBelow } } : spec
  }),
]

/**
 * The pier as it comes out when these go wrong, in the order in which it is built. What does not apply to it, or could not be drawn together
 * with what went wrong before, is left out.
 * @param spec a pier that can be built
 * @returns a pier that can be built; the same object when nothing goes wrong
 */
export function withMistakes(spec: PierSpec, ids: readonly MistakeId[]): PierSpec {
  const wrong = mistakes.reduce((pier, one) => (ids.includes(one.id) && one.applies(pier) ? one.make(pier) : pier), spec)
  return wrong === spec ? spec : deepFreeze(wrong)
}
