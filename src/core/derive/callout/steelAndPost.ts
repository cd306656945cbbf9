import { bars as barTable } from '../../engineering/tables/bars.ts'
import { type PostSection, postSections } from '../../engineering/tables/postSections.ts'
import { useClassIds } from '../../spec/pier/post.ts'
import type { CalloutItem } from '../../model/calloutResult.ts'
import { barLevels, liftAt } from '../placedZones.ts'
import type { PierFrame } from '../pierFrame.ts'
import { type CalloutContext, choice, type ItemFinding, item, reaches, share, word } from './item.ts'

/** On a bracket that the drawing lets stand there is no post in the concrete to put a bar through. */
const isBracketAllowed = ({ callout, frame }: CalloutContext): boolean => frame.spec.support.kind === 'bracket' && callout.bracket === 'yes'
const withBracket: ItemFinding = { verdict: 'not needed', why: 'bar-not-with-bracket' }

/** Role of what the lowest bar lies in; null without a bar. */
const hostOfBar = (frame: PierFrame): string | null => {
  const [level] = barLevels(frame)
  if (level === undefined) return null
  const id = liftAt(frame, level)
  return frame.lifts.find((lift) => lift.id === id)?.role ?? 'none'
}

export function barThroughItem(context: CalloutContext): CalloutItem {
  const { callout, frame } = context
  const host = hostOfBar(frame)
  const find = (): ItemFinding => {
    if (callout.barThrough === 'no') return { verdict: 'not needed', why: 'bar-not-asked' }
    if (isBracketAllowed(context)) return withBracket
    if (host === null) return { verdict: 'falls short', why: 'no-bar-through' }
    if (host === 'dry-mix') return { verdict: "can't be verified", why: 'bar-in-unknown-mix', verify: ['cores', 'photo-of-bar'] }
    return host === 'concrete' ? { verdict: 'meets', why: 'bar-through' } : { verdict: 'falls short', why: 'bar-not-in-concrete' }
  }
  return item({
    id: 'bar-through',
    drawn: callout.barThrough && choice('callout.barThrough', callout.barThrough),
    set: word(host === null ? 'no-bar' : 'bar-there'),
    where: host === null ? ['post'] : ['bars'],
    verify: ['photo-of-bar'],
    find,
  })
}

export function barSizeItem(context: CalloutContext): CalloutItem {
  const { callout, frame } = context
  const { bars } = frame.spec
  const area = bars ? barTable[bars.size].area.value : 0
  const asked = callout.barSize ? barTable[callout.barSize].area.value : 0
  const find = (): ItemFinding => {
    if (isBracketAllowed(context)) return withBracket
    if (bars === null) return { verdict: 'falls short', why: 'no-bar-through' }
    const isThick = reaches(area, asked)
    return {
      verdict: isThick ? 'meets' : 'falls short',
      why: isThick ? 'bar-not-thinner' : 'bar-thinner',
      consequences: share('bar-area', area, asked),
    }
  }
  return item({
    id: 'bar-size',
    drawn: callout.barSize && choice('callout.barSize', callout.barSize),
    set: bars ? choice('bars.size', bars.size) : word('no-bar'),
    where: bars ? ['bars'] : ['post'],
    verify: ['photo-of-bar', 'bar-mark'],
    sources: ['astm-a615'],
    find,
  })
}

const areaOf = ({ shape, width, depth }: PostSection): number => (shape === 'round' ? (Math.PI * width ** 2) / 4 : width * depth)
const isSameMake = (a: PostSection, b: PostSection): boolean => a.shape === b.shape && a.plies === b.plies
/** Not smaller either way, whichever way it is turned. */
const isNotSmaller = (a: PostSection, b: PostSection): boolean =>
  reaches(Math.min(a.width, a.depth), Math.min(b.width, b.depth)) && reaches(Math.max(a.width, a.depth), Math.max(b.width, b.depth))

/** A post of another make with as much wood is not a bigger one of the same: somebody has to say that it will do. */
export function sectionItem({ callout, frame }: CalloutContext): CalloutItem {
  const set = postSections[frame.spec.post.section]
  const find = (): ItemFinding => {
    const drawn = postSections[callout.section ?? frame.spec.post.section]
    const consequences = share('post-area', areaOf(set), areaOf(drawn))
    if (isSameMake(set, drawn) && isNotSmaller(set, drawn)) return { verdict: 'meets', why: 'post-not-smaller', consequences }
    if (isSameMake(set, drawn) || !reaches(areaOf(set), areaOf(drawn))) return { verdict: 'falls short', why: 'post-smaller', consequences }
    return { verdict: "can't be verified", why: 'post-of-another-make', consequences, verify: ['engineer'] }
  }
  return item({
    id: 'section',
    drawn: callout.section && choice('callout.section', callout.section),
    set: choice('post.section', frame.spec.post.section),
    where: ['post'],
    verify: ['end-tag', 'measure-post'],
    find,
  })
}

export function treatmentItem({ callout, frame }: CalloutContext): CalloutItem {
  const { treatment } = frame.spec.post
  const isStrong = callout.treatment === null || useClassIds.indexOf(treatment) >= useClassIds.indexOf(callout.treatment)
  return item({
    id: 'treatment',
    drawn: callout.treatment && choice('callout.treatment', callout.treatment),
    set: choice('post.treatment', treatment),
    where: ['post'],
    verify: ['end-tag'],
    find: () => ({ verdict: isStrong ? 'meets' : 'falls short', why: isStrong ? 'treatment-not-weaker' : 'treatment-weaker' }),
  })
}

export function bracketItem({ callout, frame, zones }: CalloutContext): CalloutItem {
  const isBracket = frame.spec.support.kind === 'bracket'
  const steel = zones.filter((zone) => zone.role === 'steel').map((zone) => zone.id)
  const find = (): ItemFinding => {
    if (callout.bracket === 'yes')
      return isBracket ? { verdict: 'meets', why: 'bracket-is-drawn' } : { verdict: 'not needed', why: 'post-in-the-hole' }
    return isBracket
      ? { verdict: 'falls short', why: 'bracket-not-allowed', verify: ['engineer'] }
      : { verdict: 'meets', why: 'no-bracket-used' }
  }
  return item({
    id: 'bracket',
    drawn: callout.bracket && choice('callout.bracket', callout.bracket),
    set: choice('support.kind', frame.spec.support.kind),
    where: steel.length > 0 ? steel : ['post'],
    verify: isBracket ? ['bracket-report', 'photo-of-pour'] : ['photo-before-filling'],
    find,
  })
}
