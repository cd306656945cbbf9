import { presumptiveSoils } from '../../engineering/tables/soils.ts'
import type { CalloutItem } from '../../model/calloutResult.ts'
import type { PresumptiveClass, Soil } from '../../model/spec.ts'
import { pullPasses } from '../uplift/governing.ts'
import { amount, type CalloutContext, choice, type ItemFinding, item, number, reaches, share } from './item.ts'

/** The design uplift against what the weakest link that may be counted holds. */
export function upliftItem({ callout, uplift, checks, frame }: CalloutContext): CalloutItem {
  const governing = checks.find((check) => check.id === uplift.governing)
  const uncounted = checks.filter((check) => uplift.uncounted.includes(check.id))
  const isJudged = checks.some(
    (check) =>
      check.counted === "engineer's judgement" &&
      check.allowable !== null &&
      ((chain.has(check.group) && pullPasses(check.id, uplift.soil)) || check.id === uplift.soil),
  )
  const find = (): ItemFinding => {
    const asked = callout.uplift ?? 0
    if (uplift.allowable === null)
      return { verdict: "can't be verified", why: 'uplift-not-counted', verify: isDry(frame.lifts) ? ['cores', 'engineer'] : ['engineer'] }
    const isEnough = reaches(uplift.allowable, asked)
    return {
      verdict: isEnough ? 'meets' : 'falls short',
      why: isEnough ? (isJudged ? 'uplift-not-below-judged' : 'uplift-not-below') : 'uplift-below',
      difference: uplift.allowable - asked,
      consequences: isEnough
        ? []
        : [...share('uplift', uplift.allowable, asked), ...amount('uplift-lacking', uplift.allowable - asked, 'force')],
    }
  }
  return item({
    id: 'uplift',
    drawn: callout.uplift === null ? null : number(callout.uplift, 'force'),
    set: uplift.allowable === null ? null : number(uplift.allowable, 'force'),
    where: [...new Set([...(governing?.where ?? []), ...uncounted.flatMap((check) => check.where)])],
    verify: ['engineer'],
    sources: governing?.sources ?? uncounted[0]?.sources ?? [],
    find,
  })
}

/** Links that are in every chain; the way in which the ground holds is chosen. */
const chain = new Set(['uplift-post', 'uplift-connection', 'uplift-concrete'])
const isDry = (lifts: CalloutContext['frame']['lifts']): boolean => lifts.some((lift) => lift.role === 'dry-mix')

/** Native soils that the hole meets, from the top. */
const metBy = ({ frame }: CalloutContext): readonly Soil[] => {
  const { site, hole } = frame.spec
  return site.lower && site.lower.from < hole.depth ? [site.soil, site.lower.soil] : [site.soil]
}

const bearing = (soil: PresumptiveClass): number => presumptiveSoils[soil].bearing.value

/** The weakest class that the hole meets against the class that the drawing takes. Values of one's own are somebody's to answer for. */
export function soilItem(context: CalloutContext): CalloutItem {
  const { callout } = context
  const met = metBy(context)
  const classes = met.flatMap((soil) => (soil.kind === 'presumptive' ? [soil.class] : []))
  const weakest = classes.length === met.length ? classes.reduce((least, one) => (bearing(one) < bearing(least) ? one : least)) : null
  const find = (): ItemFinding => {
    if (weakest === null || callout.soil === null)
      return { verdict: "can't be verified", why: 'soil-of-ones-own', verify: ['soil-report', 'engineer'] }
    const asked = presumptiveSoils[callout.soil]
    const isFirm = reaches(bearing(weakest), asked.bearing.value)
    return {
      verdict: isFirm ? 'meets' : 'falls short',
      why: isFirm ? 'soil-not-weaker' : 'soil-weaker',
      consequences: [
        ...share('soil-bearing', bearing(weakest), asked.bearing.value),
        ...share('soil-lateral', presumptiveSoils[weakest].lateral.value, asked.lateral.value),
      ],
    }
  }
  return item({
    id: 'soil',
    drawn: callout.soil && choice('site.soil.class', callout.soil),
    set: weakest === null ? choice('site.soil.kind', 'user') : choice('site.soil.class', weakest),
    where: met.length > 1 && weakest !== classes[0] ? ['soil-lower'] : ['soil'],
    verify: ['soil-report', 'building-office'],
    sources: ['ibc-1806-2'],
    find,
  })
}
