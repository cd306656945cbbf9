import { radiusAlong } from '../../geometry/radial.ts'
import type { GroundlineZone, JointResult, MoistureResult, PostSide, TopResult } from '../../model/moistureResult.ts'
import type { PierSpec } from '../../model/spec.ts'
import type { Worked } from '../../model/worked.ts'
import type { SourceId } from '../../engineering/sources.ts'
import { metres, squareMetres } from '../../units/quantity.ts'
import { exposureArea } from '../exposure.ts'
import { frameOf } from '../pierFrame.ts'
import { type FaceSite, faceSite, isHard } from './faceSite.ts'
import { fringeOf } from './fringe.ts'
import { jointGaps, jointResult, widestOf } from './joint.ts'
import { longestWetAndAiry, postSides, sideProfile } from './profile.ts'
import { wetShares } from './shares.ts'
import { isFed, pierWaterPath, pondOf, topResult } from './top.ts'
import { type WoodFace, woodFace } from './woodFace.ts'

type Faces = Readonly<Record<PostSide, WoodFace>>

/**
 * Water against the wood of one pier, in classes; no moisture content is claimed. Pure, and apart from `derivePier`: it is worked
 * out when it is asked for.
 * @param spec a valid spec
 */
export function deriveMoisture(spec: PierSpec): MoistureResult {
  const frame = frameOf(spec)
  const path = pierWaterPath(frame)
  const pond = pondOf(frame, path)
  const site = faceSite(frame, isFed(frame, path), widestOf(jointGaps(spec)) > 0, pond?.level ?? null)
  const faces = facesOf(site)
  const profile = postSides.flatMap((side) => sideProfile(side, faces[side]))
  const joint = jointOf(spec, faces)
  const top = topResult(frame, path, pond, Math.max(faces.uphill.crest, faces.uphill.grade))
  const groundline = groundlineOf(site, faces)
  const fringe = fringeOf(spec)
  const worked = allWorked(joint, top, fringe)
  const shares = wetShares(site, faces)
  const below = exposureArea(frame).total
  return {
    profile,
    shares,
    wood: { below, above: squareMetres(Math.max(0, shares.reduce((sum, { area }) => sum + area, 0) - below)) },
    wetAndAiry: longestWetAndAiry(profile),
    joint,
    top,
    groundline,
    fringe,
    worked,
    sources: sourcesOf([...profile, ...worked, groundline]),
  }
}

/** The three lines of the profile, where the answers measure wood below grade too. */
function facesOf(site: FaceSite): Faces {
  const at = (turn: number | null): WoodFace => {
    const angle = site.frame.spec.site.downhill + (turn ?? 0)
    const cos = Math.cos(angle)
    const sin = Math.sin(angle)
    return woodFace(site, turn === null ? 0 : radiusAlong(site.frame.postOutline, cos, sin), cos, sin)
  }
  return { uphill: at(Math.PI), axis: at(null), downhill: at(0) }
}

/** Null where nothing that sets reaches the top along the wood. */
function jointOf(spec: PierSpec, faces: Faces): JointResult | null {
  const { topContact, top, jointReach } = faces.axis
  if (topContact === null || !isHard(topContact)) return null
  return jointResult(spec, {
    top: { uphill: metres(faces.uphill.top), axis: metres(top), downhill: metres(faces.downhill.top) },
    reach: metres(jointReach),
  })
}

/** From the top of a heap, or of what touches the wood, down as far as most decay was found. */
function groundlineOf({ frame, groundlineReach }: FaceSite, faces: Faces): GroundlineZone {
  const touched = postSides.some((side) => faces[side].topContact !== null || faces[side].crest > frame.foot)
  const { topContact } = faces.axis
  const inHard = topContact !== null && isHard(topContact)
  const band = ({ top, crest }: WoodFace) =>
    touched && crest > frame.foot
      ? { from: metres(Math.max(frame.foot, top - groundlineReach)), to: metres(crest) }
      : { from: frame.foot, to: frame.foot }
  return {
    at: !touched ? 'none' : inHard ? 'top-of-concrete' : 'grade',
    bands: { uphill: band(faces.uphill), axis: band(faces.axis), downhill: band(faces.downhill) },
    sources: inHard ? ['osu-release-1997', 'assumption'] : ['osu-release-1997'],
    standing: inHard ? 'assumed here' : 'read',
  }
}

const kept = (list: readonly (Worked | null | undefined)[]): Worked[] =>
  list.filter((one): one is Worked => one !== null && one !== undefined)

const allWorked = (joint: JointResult | null, top: TopResult, fringe: MoistureResult['fringe']): Worked[] =>
  kept([
    top.slope,
    top.rimAboveUphill,
    top.rimAboveDownhill,
    top.ponded,
    top.fall.worked,
    top.fall.asked,
    top.runoff,
    top.ponding,
    ...(joint ? [...joint.gaps, joint.volume, joint.conductivity, ...joint.against, joint.capillaryHold] : []),
    fringe?.low,
    fringe?.high,
  ])

const sourcesOf = (list: readonly Readonly<{ sources: readonly SourceId[] }>[]): SourceId[] =>
  [...new Set(list.flatMap((one) => one.sources))].sort()
