import { type WoodWetness, woodWetnesses } from '../../engineering/tables/contactWetness.ts'
import { corner } from '../../geometry/corner.ts'
import { surfaceOf } from '../../geometry/fillStack.ts'
import { turnPoints } from '../../geometry/quadrature.ts'
import { cornerAngles, radiusAlong } from '../../geometry/radial.ts'
import { level, raised, type Surface } from '../../geometry/surface.ts'
import { crossings } from '../../geometry/volumeBelow.ts'
import type { PostSide, WetShare } from '../../model/moistureResult.ts'
import { metres, squareMetres } from '../../units/quantity.ts'
import { footContact, perimeterRate } from '../exposure.ts'
import { woodPerHeight } from '../onWood.ts'
import type { FaceSite } from './faceSite.ts'
import { type FacePiece, wetnessVerdict, type WoodFace, woodFace } from './woodFace.ts'
import { soilWetnessAt } from '../../engineering/moisture/soilWetness.ts'

/** Length of a piece that counts as buried [m]: below grade, or inside concrete or dry mix above it. */
export const buriedLength = ({ from, to, contact }: FacePiece, grade: number): number =>
  contact === 'concrete' || contact === 'dry-mix' ? to - from : Math.max(0, Math.min(to, grade) - from)

type Sums = Record<WoodWetness, number>
const none = (): Sums => ({ 'dries-out': 0, 'wet-at-times': 0, 'stays-wet': 0 })

/** Buried length of each class on one line along the wood [m]. */
function lengths({ frame }: FaceSite, face: WoodFace): Sums {
  const sums = none()
  for (const piece of face.pieces) sums[piece.verdict.wetness] += buriedLength(piece, face.grade) * woodPerHeight(frame)
  return sums
}

/** Surfaces at which the class or what is counted may change along the wood. */
function levels({ frame, rises, jointReach, groundlineReach, pondLevel }: FaceSite): Surface[] {
  const ends = frame.lifts.map((lift) => bare(surfaceOf(frame.profile, lift.to)))
  const top = ends.at(-1) ?? frame.grade
  const table = frame.spec.site.waterTable
  const rise = [rises.upper.low, rises.upper.high, rises.lower?.low, rises.lower?.high]
  return [
    frame.grade,
    ...ends,
    raised(top, -jointReach),
    raised(top, -groundlineReach),
    ...(pondLevel === null ? [] : [level(pondLevel)]),
    ...(rises.from === null ? [] : [raised(frame.grade, -rises.from)]),
    ...(table === null ? [] : [level(-table), ...rise.flatMap((one) => (one ? [level(one.value - table)] : []))]),
    level(frame.foot),
  ]
}
const bare = ({ a, m, gx, gz }: Surface): Surface => ({ a, m, gx, gz })

/** Area of each class over the sides of the post and its foot [m2]. */
function areas(site: FaceSite): Sums {
  const { frame } = site
  const { postOutline: outline } = frame
  const all = levels(site)
  const breaks = [...cornerAngles(outline)]
  all.forEach((one, i) => {
    const edge = corner(outline, one, 'upright')
    for (const other of all.slice(i + 1)) breaks.push(...crossings([edge], other))
  })
  const sums = none()
  for (const { cos, sin, weight } of turnPoints(breaks)) {
    const r = radiusAlong(outline, cos, sin)
    const strip = weight * perimeterRate(outline, r, cos, sin)
    const line = lengths(site, woodFace(site, r, cos, sin))
    for (const wetness of woodWetnesses) sums[wetness] += strip * line[wetness]
  }
  const foot = footContact(frame)
  if (foot) sums[footWetness(site, foot.contact)] += foot.area
  return sums
}

/** Class of the end grain, by what it stands on and the ground at that level. */
function footWetness({ frame, rises }: FaceSite, contact: FacePiece['contact']): WoodWetness {
  const { waterTable } = frame.spec.site
  const { low, high } = rises.lower !== null && rises.from !== null && -frame.foot > rises.from ? rises.lower : rises.upper
  const ground = soilWetnessAt({
    depth: metres(-frame.foot),
    ground: frame.spec.water.ground,
    waterTable,
    rise: { low: low && metres(low.value), high: high && metres(high.value) },
  })
  return wetnessVerdict(ground.underWater ? 'below-water' : contact, contact, ground, false).wetness
}

/** Buried wood by class, driest first: length on each side, area and share of it. Empty where no wood is buried. */
export function wetShares(site: FaceSite, faces: Readonly<Record<PostSide, WoodFace>>): WetShare[] {
  const area = areas(site)
  const whole = woodWetnesses.reduce((sum, wetness) => sum + area[wetness], 0)
  if (!(whole > 1e-9)) return []
  const bySide = { uphill: lengths(site, faces.uphill), axis: lengths(site, faces.axis), downhill: lengths(site, faces.downhill) }
  return woodWetnesses.map((wetness) => ({
    wetness,
    length: {
      uphill: metres(bySide.uphill[wetness]),
      axis: metres(bySide.axis[wetness]),
      downhill: metres(bySide.downhill[wetness]),
    },
    area: squareMetres(area[wetness]),
    share: area[wetness] / whole,
  }))
}
