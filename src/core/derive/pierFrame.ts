import type { LiftEnd } from '../geometry/fillStack.ts'
import { laidVolume } from '../geometry/laidVolume.ts'
import { type HoleProfile, holeProfile } from '../geometry/holeProfile.ts'
import { cone, heightAt, level, plane, type Surface } from '../geometry/surface.ts'
import { bisect } from '../geometry/volumeBelow.ts'
import { fillKind, liftsOf } from '../kinds/index.ts'
import type { FillSite, Lift } from '../model/kind.ts'
import type { PierSpec } from '../model/spec.ts'
import { innerRadiusOf, type Standpoint, standpoint } from '../spec/standing.ts'
import { type Metres, metres } from '../units/quantity.ts'

/** Where everything of one pier stands: the surfaces, outlines and lifts from which zones are built and rules measured. */
export type PierFrame = Standpoint &
  Readonly<{
    spec: PierSpec
    grade: Surface
    profile: HoleProfile
    /** Radius at which the top's rise is measured: the middle of the post's widest face, or the bracket's landing [m]. */
    innerRadius: number
    end: LiftEnd
    /** Bottom of the fill: hole's bottom or top of its base [m], signed. */
    fillBottom: number
    lifts: readonly Lift[]
  }>

/** Grade through the origin, falling at the site's slope toward `downhill`. */
export const gradePlane = ({ slope, downhill }: PierSpec['site']): Surface =>
  plane(0, -slope * Math.cos(downhill) || 0, -slope * Math.sin(downhill) || 0)

const frames = new WeakMap<PierSpec, PierFrame>()

/** The frame of a pier, worked out once for as long as its spec is held: checks, water, mix and what lets go read one geometry. */
export function frameOf(spec: PierSpec): PierFrame {
  const frame = frames.get(spec) ?? pierFrame(spec)
  frames.set(spec, frame)
  return frame
}

/** The frame of a spec that nobody asks for again. */
export function pierFrame(spec: PierSpec): PierFrame {
  const grade = gradePlane(spec.site)
  const profile = holeProfile(spec.hole, grade)
  const innerRadius = innerRadiusOf(spec)
  const end = finishedEnd(spec, profile, innerRadius, spec.support.kind === 'bracket')
  const stand = standpoint(spec, heightAt(end.kind === 'top' ? end.surface : grade, innerRadius, 0))
  const fillBottom = -spec.hole.depth + (spec.hole.base?.thickness ?? 0)
  const site: FillSite = {
    bottom: metres(fillBottom),
    end,
    looseWeight: spec.placing.looseWeight,
    levelFor: (volume) => levelFor(profile, fillBottom, stand, volume),
  }
  // Field by field: twenty thousand tries make a frame each, and a spread takes longer than the geometry.
  const { postOutline, standing, leaning, round, foot, bracketSite } = stand
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
