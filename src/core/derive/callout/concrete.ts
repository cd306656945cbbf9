import { coreAcceptance } from '../../engineering/concrete/cores.ts'
import { heightAt } from '../../geometry/surface.ts'
import { fillKind } from '../../kinds/index.ts'
import type { CalloutItem } from '../../model/calloutResult.ts'
import type { Lift } from '../../model/kind.ts'
import { type CastRole, isCast } from '../../model/solid.ts'
import type { PierFrame } from '../pierFrame.ts'
import { amount, type CalloutContext, choice, type ItemFinding, item, number, reaches, share, word } from './item.ts'

const mixOf = ({ role }: Lift): CastRole | null => (isCast(role) ? role : null)

/** What is mixed from cement in this pier, the lowest lift of it; null when there is none. */
const firstMix = ({ lifts }: PierFrame): Readonly<{ mix: CastRole; id: string }> | null => {
  for (const lift of lifts) {
    const mix = mixOf(lift)
    if (mix !== null) return { mix, id: lift.id }
  }
  return null
}
const place = ({ frame }: CalloutContext): readonly string[] => frame.lifts.slice(0, 1).map((lift) => firstMix(frame)?.id ?? lift.id)

/** Strength at 28 days. Of a mix whose strength no standard lets one count, only cores say anything. */
export function strengthItem(context: CalloutContext): CalloutItem {
  const { callout, frame } = context
  const { strength, cores } = frame.spec.concrete
  const drawn = callout.strength
  const kind = fillKind(frame.spec.fill.kind)
  const isConcrete = firstMix(frame)?.mix === 'concrete'
  const isUnknown = kind.counting.strength.counted === 'not counted'
  const tested =
    isUnknown && cores !== null ? coreAcceptance({ cores: [cores.first, cores.second, cores.third], specified: drawn ?? strength }) : null
  const parts = { id: 'strength', drawn: drawn === null ? null : number(drawn, 'strength'), where: place(context) } as const
  if (tested)
    return item({
      ...parts,
      set: number(tested.mean, 'strength'),
      verify: ['cores'],
      sources: ['aci-318-19-26-12-6'],
      find: () => ({
        verdict: tested.meets ? 'meets' : 'falls short',
        why: tested.meets ? 'cores-not-below' : 'cores-below',
        difference: tested.mean - (drawn ?? 0),
        consequences: share('strength', tested.mean, drawn ?? 0),
      }),
    })
  if (isUnknown)
    return item({
      ...parts,
      set: null,
      verify: ['cores'],
      sources: kind.counting.strength.sources,
      find: () => ({ verdict: "can't be verified", why: 'strength-of-dry-mix-unknown' }),
    })
  if (!isConcrete)
    return item({
      ...parts,
      set: word(firstMix(frame)?.mix ?? 'no-concrete'),
      verify: ['engineer'],
      sources: kind.counting.strength.sources,
      find: () => ({ verdict: 'falls short', why: 'not-structural-concrete' }),
    })
  return item({
    ...parts,
    set: number(strength, 'strength'),
    verify: ['ticket', 'cylinders'],
    sources: [...kind.counting.strength.sources, 'aci-318-19-17-6-2'],
    find: () => {
      const asked = drawn ?? 0
      return {
        verdict: reaches(strength, asked) ? 'meets' : 'falls short',
        why: reaches(strength, asked) ? 'strength-not-below' : 'strength-below',
        difference: strength - asked,
        // What concrete takes in tension goes with the root of its strength.
        consequences: [...share('strength', strength, asked), ...share('concrete-breakout', Math.sqrt(strength), Math.sqrt(asked))],
      }
    },
  })
}

/** Mixed with water before it is placed, or not. */
export function mixedItem(context: CalloutContext): CalloutItem {
  const { callout, frame, quantities } = context
  const mix = firstMix(frame)?.mix ?? null
  const isDry = frame.lifts.some((lift) => lift.role === 'dry-mix')
  const uncounted = quantities.reduce((sum, line) => sum + (line.role === 'dry-mix' ? line.weight : 0), 0)
  return item({
    id: 'mixed',
    drawn: callout.mixed && choice('callout.mixed', callout.mixed),
    set: word(isDry ? 'placed-dry' : mix === null ? 'no-mix' : 'mixed-before'),
    where: place(context),
    verify: ['ticket', 'photo-of-pour'],
    sources: isDry ? ['aci-318-19-26-5-2', 'bohnhoff-2003'] : [],
    find: () => {
      if (callout.mixed === 'no') return { verdict: 'not needed', why: 'mixing-not-asked' }
      if (isDry)
        return {
          verdict: 'falls short',
          why: 'placed-dry',
          consequences: amount('uncounted-weight', -uncounted, 'weight'),
          verify: ['engineer'],
        }
      return mix === null ? { verdict: 'falls short', why: 'no-mix-placed' } : { verdict: 'meets', why: 'mixed-before-placing' }
    },
  })
}

/** Concrete from the bottom of the fill up to grade all round; the length of what it is, on the axis [m]. */
export function encasementItem(context: CalloutContext): CalloutItem {
  const { callout, frame } = context
  const [lowest] = frame.lifts
  const mix = lowest ? mixOf(lowest) : null
  const whole = -frame.fillBottom
  const encased = mix === null || lowest === undefined ? 0 : Math.max(0, whole - missing(frame, lowest))
  const find = (): ItemFinding => {
    if (callout.encasement === 'no') return { verdict: 'not needed', why: 'encasement-not-asked' }
    const lacking = { difference: encased - whole, consequences: amount('unencased-length', encased - whole, 'length') }
    if (!reaches(encased, whole)) return { verdict: 'falls short', why: 'not-full-height', ...lacking }
    if (mix === 'dry-mix') return { verdict: "can't be verified", why: 'full-height-of-dry-mix', verify: ['cores'] }
    if (mix !== 'concrete') return { verdict: 'falls short', why: 'full-height-of-weak-fill', verify: ['engineer'] }
    return { verdict: 'meets', why: 'full-height' }
  }
  return item({
    id: 'encasement',
    drawn: callout.encasement && choice('callout.encasement', callout.encasement),
    set: number(encased, 'length'),
    where: place(context),
    verify: ['photo-of-pour', 'measure-top'],
    find,
  })
}

/** How much of the way to grade the lowest lift lacks [m]: on the axis for a level one, at its lowest uphill point for a finished top. */
function missing({ spec, innerRadius }: PierFrame, { to }: Lift): number {
  if (to.kind === 'grade') return 0
  if (to.kind === 'level') return Math.max(0, -to.y)
  const atPost = spec.site.slope * innerRadius - heightAt(to.surface, innerRadius, 0)
  return Math.max(0, -spec.top.rim, atPost)
}
