import { type SoilWetnessAt, soilWetnessAt } from '../../engineering/moisture/soilWetness.ts'
import { type WoodWetnessVerdict, wetter, woodWetness } from '../../engineering/moisture/woodWetness.ts'
import type { WoodTouch } from '../../engineering/tables/contactWetness.ts'
import { surfaceOf } from '../../geometry/fillStack.ts'
import { heapSlope } from '../../geometry/heap.ts'
import type { Contact } from '../../model/kind.ts'
import { metres } from '../../units/quantity.ts'
import { type ContactBand, bandsAt } from '../exposure.ts'
import { footOnWood, heightOnWood } from '../onWood.ts'
import type { PierFrame } from '../pierFrame.ts'
import { type FaceSite, isHard } from './faceSite.ts'
import { riseAtDepth } from './soilRise.ts'

/** A stretch of wood on one upright line, of one class. Elevations signed [m]. `contact` is what is there, `touch` the rule that holds. */
export type FacePiece = Readonly<{
  from: number
  to: number
  contact: Contact
  touch: WoodTouch
  ground: SoilWetnessAt
  verdict: WoodWetnessVerdict
}>

/** One upright line down the wood: its pieces from the foot up, and the levels that matter on it [m]. */
export type WoodFace = Readonly<{
  pieces: readonly FacePiece[]
  grade: number
  /** Top of what fills the hole, and of a heap on it. */
  top: number
  crest: number
  /** What the wood touches at that top; null where no wood is down there. */
  topContact: Contact | null
  /** Depth of the joint there, no deeper than what has set [m]. */
  jointReach: number
}>

/** Top of the fill at radius r in a direction, with the level landing under a bracket [m]. */
function fillTop(frame: PierFrame, r: number, cos: number, sin: number): number {
  const last = frame.lifts.at(-1)
  if (!last) return heightOnWood(frame, frame.grade, r, cos, sin)
  const surface = surfaceOf(frame.profile, last.to)
  return heightOnWood(frame, surface, r, cos, sin) + surface.m * (Math.max(r, surface.flatWithin ?? 0) - r)
}

/** Top of soil or mulch heaped on a finished top at radius r [m]. */
function heapCrest(frame: PierFrame, r: number, top: number): number {
  const { heaped } = frame.spec.top
  if (!(heaped > 0) || frame.end.kind !== 'top') return top
  const { a, m } = frame.end.surface
  const inner = frame.innerRadius
  return Math.max(top, a + m * inner + heaped - heapSlope * Math.max(0, r - inner))
}

/** What touches the wood, without what a landing takes off the cone. */
const solidsOf = (bands: readonly ContactBand[], end: number): ContactBand[] =>
  bands.flatMap((band) => (band.contact === 'air' || band.from >= end ? [] : [{ ...band, to: Math.min(band.to, end) }]))

/**
 * Everything along one upright line at radius r in the direction (cos, sin), r [m].
 * @param site what the classes depend on
 */
export function woodFace(site: FaceSite, r: number, cos: number, sin: number): WoodFace {
  const { frame } = site
  const { spec } = frame
  const foot = footOnWood(frame, r, cos, sin)
  const grade = heightOnWood(frame, frame.grade, r, cos, sin)
  const filled = fillTop(frame, r, cos, sin)
  const solids = solidsOf(bandsAt(frame, r, cos, sin), filled)
  const last = solids.at(-1)
  const top = last?.to ?? filled
  const crest = heapCrest(frame, r, top)
  const topContact = last?.contact ?? null
  const hardFrom = topContact !== null && isHard(topContact) ? lowestHard(solids) : top
  const jointReach = Math.min(site.jointReach, top - hardFrom)
  const splashTop = Math.min(Math.max(crest, grade) + site.splash, Math.max(spec.post.heightAboveGrade, crest, grade))
  const end = splashTop > foot ? splashTop : Math.max(spec.post.heightAboveGrade, foot)

  const { waterTable } = spec.site
  const water = waterTable === null ? null : 0 - waterTable
  const { rises } = site
  const rise = [rises.upper.low, rises.upper.high, rises.lower?.low, rises.lower?.high]
  const levels = [
    ...solids.flatMap((band) => [band.from, band.to]),
    grade,
    crest,
    splashTop,
    top - jointReach,
    top - site.groundlineReach,
    ...(site.pondLevel === null ? [] : [site.pondLevel]),
    ...(rises.from === null ? [] : [grade - rises.from]),
    ...(water === null ? [] : [water, ...rise.flatMap((one) => (one ? [one.value + water] : []))]),
  ]
  const cuts = [foot, ...levels.filter((y) => y > foot && y < end).sort((p, q) => p - q), end]
  const contactAt = (y: number): Contact => solids.find((band) => y > band.from && y < band.to)?.contact ?? (y < crest ? 'backfill' : 'air')

  const touchAt = (y: number, contact: Contact): WoodTouch => {
    if (water !== null && y < water) return 'below-water'
    if (y > top && y < crest) return 'groundline'
    if (contact === 'air' && site.pondLevel !== null && y < site.pondLevel) return 'dish'
    if (contact === 'air') return y < splashTop ? 'splash-band' : 'air'
    if (isHard(contact) && y > top - jointReach) return 'joint'
    const nearTop = y > top - site.groundlineReach
    const isSoil = contact === 'backfill' || contact === 'native-soil'
    return nearTop && (isSoil || site.fed) ? 'groundline' : contact
  }

  const pieces: FacePiece[] = []
  for (let i = 1; i < cuts.length; i++) {
    const from = cuts[i - 1] ?? foot
    const to = cuts[i] ?? end
    if (!(to > from)) continue
    const y = (from + to) / 2
    const { low, high } = riseAtDepth(rises, grade - y)
    const ground = soilWetnessAt({
      depth: metres(-y),
      ground: spec.water.ground,
      waterTable,
      rise: { low: low && metres(low.value), high: high && metres(high.value) },
    })
    const contact = contactAt(y)
    const touch = touchAt(y, contact)
    pieces.push({ from, to, contact, touch, ground, verdict: wetnessVerdict(touch, contact, ground, site.fed) })
  }
  return { pieces, grade, top, crest, topContact, jointReach }
}

/** Lowest level of the hard stack that ends the fill. */
function lowestHard(solids: readonly ContactBand[]): number {
  let from = solids.at(-1)?.to ?? 0
  for (let i = solids.length - 1; i >= 0; i--) {
    const band = solids[i]
    if (!band || !isHard(band.contact)) break
    from = band.from
  }
  return from
}

/** A place never dries what it is in: the wetter of the rule of the place and of the filling there. */
export function wetnessVerdict(touch: WoodTouch, contact: Contact, ground: SoilWetnessAt, fed: boolean): WoodWetnessVerdict {
  const place = woodWetness({ touch, ground: ground.wetness, fed })
  if (touch === contact) return place
  const filling = woodWetness({ touch: contact, ground: ground.wetness, fed: false })
  const wetness = wetter(place.wetness, filling.wetness)
  if (wetness === place.wetness) return place
  return { ...filling, wetness, oxygen: place.oxygen, waterAndAir: place.oxygen !== 'little' }
}
