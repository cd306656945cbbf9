import { coneRule } from '../engineering/soil/soilCone.ts'
import { bracketKind } from '../kinds/index.ts'
import type { PierResult } from '../model/result.ts'
import { castRoles, nativeRoles, type Role } from '../model/solid.ts'
import type { Check } from '../model/worked.ts'
import { firstBoltAbove, boltSpacing } from '../kinds/bracket/plateParts.ts'
import { type Metres, metres } from '../units/quantity.ts'
import { frameOf, type PierFrame } from './pierFrame.ts'
import { barLevels } from './placedZones.ts'
import { partingLevel, pullLevel } from './uplift/concreteLevel.ts'
import { ledgeOf } from './uplift/ledge.ts'

/** What gives way, and how: keys into the text table ("lettingGo"). */
export type LettingGoHow =
  | 'post-pulls-apart'
  | 'post-end-tears'
  | 'wood-bears'
  | 'concrete-bears'
  | 'plate-bears'
  | 'bar-bends'
  | 'bolts-bend'
  | 'bar-shears'
  | 'bracket-gives'
  | 'legs-pull-out'
  | 'concrete-cone'
  | 'pier-parts'
  | 'pier-slides'
  | 'pier-heaves-soil'
  | 'pier-lifts-cone'
  | 'base-breaks-out'
  | 'piers-lift-block'

/**
 * A zone of which one piece leaves: all above a level; all between the faces of the post; or a round body that starts at a level [m],
 * signed, `radius` wide [m], and widens by `spread` [m/m] up to the top of the zone.
 */
export type Parting =
  | Readonly<{ zone: string; across: 'level'; level: Metres }>
  | Readonly<{ zone: string; across: 'post-faces' }>
  | Readonly<{ zone: string; across: 'cone'; level: Metres; radius: Metres; spread: number }>

/** Every zone of the pier stands in exactly one of the three lists. A picture of the way, not of when: only the numbers are computed. */
export type LettingGo = Readonly<{
  link: string
  how: LettingGoHow
  /** Zones that go up with the post. */
  moves: readonly string[]
  stays: readonly string[]
  parts: readonly Parting[]
}>

/** A cone breaks out of concrete at 1 up in 1.5 across. Source: aci-318-19-17-6-2. */
const concreteSpread = 1.5

type Way = (frame: PierFrame, check: Check, all: Zones) => Omit<LettingGo, 'link' | 'stays'> | null
type Zones = readonly Readonly<{ id: string; role: Role }>[]

/** How one link of the chain would let go; null for an id that is no link of this pier, or a link without a capacity. */
export function lettingGo(result: PierResult, link: string): LettingGo | null {
  const check = result.checks.find((one) => one.id === link)
  const way = ways[link]
  if (!check || check.allowable === null || !way) return null
  const all = result.zones.map(({ id, role }) => ({ id, role }))
  const found = way(frameOf(result.spec), check, all)
  if (!found) return null
  const known = new Set(all.map((zone) => zone.id))
  const parts = found.parts.filter((part) => known.has(part.zone))
  const parted = new Set(parts.map((part) => part.zone))
  const moves = found.moves.filter((id) => known.has(id) && !parted.has(id))
  const stays = [...known].filter((id) => !moves.includes(id) && !parted.has(id))
  return { link, how: found.how, moves, stays, parts }
}

/** The yield mode with the least value among those that a check shows: 'Im', 'Is', 'IIIs' or 'IV'; null without any. */
export function leastYieldMode({ worked }: Pick<Check, 'worked'>): string | null {
  const modes = worked.filter((one) => one.id.startsWith('yield-mode-'))
  const least = modes.reduce<(typeof modes)[number] | null>((best, one) => (best === null || one.value < best.value ? one : best), null)
  return least?.id.slice('yield-mode-'.length) ?? null
}

const bracketIds = ['bracket-legs', 'bracket-seat', 'bracket-base', 'bracket-plates', 'anchors', 'bolts']
const onlyPost = (how: LettingGoHow): ReturnType<Way> => ({ how, moves: ['post'], parts: [] })

/** Height of the highest bar or bolt [m]: the whole pull is in the post above it. */
function highestDowel(frame: PierFrame): number | null {
  const { support } = frame.spec
  if (support.kind === 'embedded') return barLevels(frame).at(-1) ?? null
  const { bracket } = support
  return frame.foot + firstBoltAbove(bracket) + (bracket.boltCount - 1) * boltSpacing(bracket)
}

const postApart: Way = (frame) => {
  const level = highestDowel(frame)
  return level === null ? null : { how: 'post-pulls-apart', moves: [], parts: [{ zone: 'post', across: 'level', level: metres(level) }] }
}

const byMode = (bears: 'concrete-bears' | 'plate-bears', bends: 'bar-bends' | 'bolts-bend'): Way => {
  const hows: Readonly<Record<string, LettingGoHow>> = { Im: 'wood-bears', Is: bears, IIIs: bends, IV: bends }
  return (_, check) => {
    const how = hows[leastYieldMode(check) ?? ''] ?? bends
    // A stiff bar that crushes the concrete goes up with the post that it is in.
    return how === 'concrete-bears' ? { how, moves: ['post', 'bars'], parts: [] } : onlyPost(how)
  }
}

const barShears: Way = () => ({ how: 'bar-shears', moves: ['post'], parts: [{ zone: 'bars', across: 'post-faces' }] })

/** The cone that the pull lifts out of the concrete, with what pulls on it. */
const concreteCone: Way = (frame, { where }) => {
  const level = pullLevel(frame)
  const host = where[0]
  if (level === null || host === undefined) return null
  const above = liftsAbove(frame, host)
  return {
    how: 'concrete-cone',
    moves: ['post', 'bars', 'heap', ...bracketIds, ...above],
    parts: [{ zone: host, across: 'cone', level: metres(level), radius: metres(0), spread: concreteSpread }],
  }
}

const pierParts: Way = (frame, { where }) => {
  const level = partingLevel(frame)
  const host = where[0]
  if (level === null || host === undefined) return null
  const parts = [host, 'vertical-bars'].map((zone): Parting => ({ zone, across: 'level', level: metres(level) }))
  return { how: 'pier-parts', moves: ['post', 'bars', 'heap', ...bracketIds, ...liftsAbove(frame, host)], parts }
}

/** The shaft comes up, and the bell stays. */
const bellTears: Way = (frame, { where, worked }) => {
  const level = worked.find((one) => one.id === 'parting-level')
  const host = where[0]
  if (!level || host === undefined) return null
  const parts = [host, 'vertical-bars'].map((zone): Parting => ({ zone, across: 'level', level: metres(-level.value) }))
  return { how: 'pier-parts', moves: ['post', 'bars', 'heap', ...bracketIds, ...liftsAbove(frame, host)], parts }
}

const liftsAbove = ({ lifts }: PierFrame, id: string): string[] =>
  lifts.slice(lifts.findIndex((lift) => lift.id === id) + 1).map((lift) => lift.id)

/** All that hangs on the post, and what lies on it in the hole. What lies under the lowest cast lift stays. */
function wholePier({ lifts }: PierFrame): string[] {
  const first = lifts.findIndex((lift) => castRoles.has(lift.role))
  return ['post', 'bars', 'vertical-bars', 'heap', ...bracketIds, ...(first < 0 ? [] : lifts.slice(first).map((lift) => lift.id))]
}

/** The pier with the ground over its ledge, straight up or on the slope of its rule. Soil that lies wholly below the ledge stays. */
const withSoil =
  (how: 'pier-lifts-cone' | 'base-breaks-out' | 'pier-heaves-soil', spread = Math.tan(coneRule.angle.value)): Way =>
  (frame, _, all) => {
    const ledge = ledgeOf(frame)
    if (!ledge) return null
    const { lower } = frame.spec.site
    const isOver = ({ id, role }: Zones[number]) =>
      nativeRoles.has(role) && !id.endsWith('-under') && (role !== 'soil-lower' || (lower !== null && lower.from < ledge.depth))
    const parts = all.filter(isOver).map(
      ({ id }): Parting => ({
        zone: id,
        across: 'cone',
        level: metres(-ledge.depth - frame.spec.site.slope * ledge.radius),
        radius: ledge.radius,
        spread,
      }),
    )
    return { how, moves: wholePier(frame), parts }
  }

const heavesSoil = withSoil('pier-heaves-soil', 0)

/** A straight shaft slides out. A foot wider than the shaft can't pass the soil beside it, so the soil right over the foot has to come up too. */
const pierSlides: Way = (frame, check, all) =>
  (ledgeOf(frame)?.kind === 'bell' ? heavesSoil(frame, check, all) : null) ?? { how: 'pier-slides', moves: wholePier(frame), parts: [] }

/** The pier with its share of the ground between it and its neighbours, drawn round. */
const blockLifts: Way = (frame, _, all) => {
  const { spacing, hole } = frame.spec
  const radius = metres(Math.max((spacing ?? hole.diameter) / 2, frame.profile.shaftRadius))
  const parts = all
    .filter(({ id, role }) => nativeRoles.has(role) && !id.endsWith('-under'))
    .map(({ id }): Parting => ({ zone: id, across: 'cone', level: metres(frame.fillBottom), radius, spread: 0 }))
  return { how: 'piers-lift-block', moves: wholePier(frame), parts }
}

/** A bracket that is rated as a whole: its steel or its bolts. Nobody knows which, so the post goes and the bracket's foot stays. */
const bracketGives: Way = (frame) => {
  const { support } = frame.spec
  if (support.kind !== 'bracket') return null
  const record = bracketKind(support.bracket.kind)
  return { how: 'bracket-gives', moves: record.anchorage === 'legs cast in' ? ['post', 'bolts', 'bracket-plates'] : ['post'], parts: [] }
}

/** Post and bracket rise; the concrete stays. A rated bracket may give anywhere in its steel. */
const legsPullOut: Way = (frame, check, all) =>
  check.allowable?.id === 'bracket-rating'
    ? bracketGives(frame, check, all)
    : { how: 'legs-pull-out', moves: ['post', ...bracketIds], parts: [] }

/** One way for each link that a chain may have. */
const ways: Readonly<Record<string, Way>> = {
  'post-net-tension': postApart,
  'post-tear-out': () => onlyPost('post-end-tears'),
  'bar-through-post': byMode('concrete-bears', 'bar-bends'),
  'bar-shear': barShears,
  'bracket-bolts': byMode('plate-bears', 'bolts-bend'),
  'bracket-legs-hold': legsPullOut,
  'bracket-rating': bracketGives,
  'concrete-breakout': concreteCone,
  'concrete-tension': pierParts,
  'bell-neck': bellTears,
  'friction-and-weight': pierSlides,
  'rational-friction-and-weight': pierSlides,
  'depth-friction-and-weight': pierSlides,
  'clay-adhesion-and-weight': pierSlides,
  'user-friction-and-weight': pierSlides,
  'cone-over-ledge': withSoil('pier-lifts-cone'),
  'breakout-of-ledge': withSoil('base-breaks-out'),
  'block-of-piers': blockLifts,
}
