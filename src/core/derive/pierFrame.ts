import { postSections } from '../engineering/tables/postSections.ts'
import type { LiftEnd, Standing } from '../geometry/fillStack.ts'
import { laidVolume } from '../geometry/laidVolume.ts'
import { type LeaningPost, leaningPost } from '../geometry/leaningPost.ts'
import { type HoleProfile, holeProfile } from '../geometry/holeProfile.ts'
import { circle, type Radial, rectangle } from '../geometry/radial.ts'
import { cone, heightAt, level, plane, type Surface } from '../geometry/surface.ts'
import { bisect } from '../geometry/volumeBelow.ts'
import { bracketKind, fillKind, liftsOf } from '../kinds/index.ts'
import type { BracketSite, FillSite, Lift } from '../model/kind.ts'
import type { PierSpec } from '../model/spec.ts'
import { type Metres, metres } from '../units/quantity.ts'

/** Where everything of one pier stands: the surfaces, outlines and lifts from which zones are built and rules measured. */
export type PierFrame = Readonly<{
  spec: PierSpec
  grade: Surface
  profile: HoleProfile
  postOutline: Radial
  /** Post in the hole; null above a bracket. */
  standing: Standing | null
  /** The same off plumb; null for a post that stands plumb or on a bracket. */
  leaning: LeaningPost | null
  /** What the fill is laid round: the post in the hole. Null where none is, and round a leaning one, which displaces it. */
  round: Standing | null
  /** Signed height of the post's foot [m]. */
  foot: Metres
  /** Radius at which the top's rise is measured: the middle of the post's widest face, or the bracket's landing [m]. */
  innerRadius: number
  end: LiftEnd
  /** Bottom of the fill: hole's bottom or top of its base [m], signed. */
  fillBottom: number
  lifts: readonly Lift[]
  bracketSite: BracketSite | null
}>

/** Grade through the origin, falling at the site's slope toward `downhill`. */
export const gradePlane = ({ slope, downhill }: PierSpec['site']): Surface =>
  plane(0, -slope * Math.cos(downhill) || 0, -slope * Math.sin(downhill) || 0)

export function pierFrame(spec: PierSpec): PierFrame {
  const grade = gradePlane(spec.site)
  const profile = holeProfile(spec.hole, grade)
  const section = postSections[spec.post.section]
  const postOutline = section.shape === 'round' ? circle(section.width / 2) : rectangle(section.width, section.depth)
  const bracket = spec.support.kind === 'bracket' ? spec.support.bracket : null
  const bareSite: BracketSite = {
    landing: metres(0),
    standOff: spec.support.kind === 'bracket' ? spec.support.standOff : metres(0),
    postWidth: section.width,
    postDepth: section.depth,
  }
  const innerRadius = bracket ? bracketKind(bracket.kind).landingRadius(bracket, bareSite) : Math.min(section.width, section.depth) / 2
  const end = finishedEnd(spec, profile, innerRadius, bracket !== null)
  const landing = heightAt(end.kind === 'top' ? end.surface : grade, innerRadius, 0)
  const bracketSite = bracket ? { ...bareSite, landing } : null
  const foot = spec.support.kind === 'embedded' ? metres(-spec.hole.depth + spec.support.foot) : metres(landing + bareSite.standOff)
  const standing = spec.support.kind === 'embedded' ? { outline: postOutline, foot } : null
  const { lean, heightAboveGrade } = spec.post
  const leaning = standing && lean > 0 ? leaningPost(postOutline, foot, heightAboveGrade - foot, lean, spec.site.downhill) : null
  const round = leaning ? null : standing
  const fillBottom = -spec.hole.depth + (spec.hole.base?.thickness ?? 0)
  const site: FillSite = {
    bottom: metres(fillBottom),
    end,
    levelFor: (volume) => levelFor(profile, fillBottom, { round, leaning }, volume),
  }
  const lifts = liftsOf(spec.fill, site)
  return { spec, grade, profile, postOutline, standing, leaning, round, foot, innerRadius, end, fillBottom, lifts, bracketSite }
}

/** Finished top on a rim that stands level, `rim` above grade at the uphill edge; grade where the kind has no top of its own. */
function finishedEnd(spec: PierSpec, profile: HoleProfile, inner: number, hasLanding: boolean): LiftEnd {
  if (!fillKind(spec.fill.kind).hasTop) return { kind: 'grade' }
  const rim = profile.shaftRadius
  const yRim = spec.site.slope * rim + spec.top.rim
  const rise = { flat: 0, crowned: spec.top.rise, dished: -spec.top.rise }[spec.top.shape]
  const surface = rise === 0 || inner >= rim ? level(yRim) : cone(rim, yRim, inner, yRim + rise)
  return { kind: 'top', surface: hasLanding ? { ...surface, flatWithin: Math.min(inner, rim) } : surface }
}

/**
 * Level [m] at which `volume` [m3] placed from `from` round the post ends. Above the downhill edge of grade the hole is
 * taken as going on as a cylinder, so that too large a volume still gives a level to report.
 */
function levelFor(profile: HoleProfile, from: number, post: Pick<PierFrame, 'round' | 'leaning'>, volume: number): Metres {
  const slope = Math.hypot(profile.grade.gx, profile.grade.gz)
  const highest = -profile.shaftRadius * slope
  const placed = (y: number) => laidVolume(profile, from, y, post)
  const most = placed(highest)
  if (volume >= most) return metres(highest + (volume - most) / (Math.PI * profile.shaftRadius ** 2))
  return metres(bisect((y) => placed(y) - volume, from, highest))
}
