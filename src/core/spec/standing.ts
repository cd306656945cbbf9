import { postSections } from '../engineering/tables/postSections.ts'
import type { StandingPost } from '../geometry/fillStack.ts'
import { type LeaningPost, leaningPost } from '../geometry/leaningPost.ts'
import { circle, type Radial, rectangle } from '../geometry/radial.ts'
import { bracketKind } from '../kinds/index.ts'
import type { BracketSite } from '../model/kind.ts'
import type { PierSpec } from '../model/spec.ts'
import { type Metres, metres } from '../units/quantity.ts'

/** How the post stands: read alike by the rules of what can be built and by everything that is worked out of it. */
export type Standpoint = Readonly<{
  postOutline: Radial
  /** Post in the hole; null above a bracket. */
  standing: StandingPost | null
  /** The same off plumb; null for a post that stands plumb or on a bracket. */
  leaning: LeaningPost | null
  /** What the fill is laid round: the post in the hole. Null where none is, and round a leaning one, which displaces it. */
  round: StandingPost | null
  /** Signed height of the post's foot [m]. */
  foot: Metres
  bracketSite: BracketSite | null
}>

/** Radius at which a top's rise is measured: the middle of the post's widest face, or the bracket's landing [m]. */
export function innerRadiusOf(spec: PierSpec): number {
  const { support } = spec
  const { width, depth } = postSections[spec.post.section]
  return support.kind === 'bracket'
    ? bracketKind(support.bracket.kind).landingRadius(support.bracket, siteAt(spec, 0))
    : Math.min(width, depth) / 2
}

const siteAt = ({ post, support }: PierSpec, landing: number): BracketSite => ({
  landing: metres(landing),
  standOff: support.kind === 'bracket' ? support.standOff : metres(0),
  postWidth: postSections[post.section].width,
  postDepth: postSections[post.section].depth,
})

/** @param landing height of the finished top, or of grade, at the inner radius [m], signed */
export function standpoint(spec: PierSpec, landing: number): Standpoint {
  const { post, support, hole, site } = spec
  const { shape, width, depth } = postSections[post.section]
  const postOutline = shape === 'round' ? circle(width / 2) : rectangle(width, depth)
  const isIn = support.kind === 'embedded'
  const foot = metres(isIn ? -hole.depth + support.foot : landing + support.standOff)
  const standing = isIn ? { outline: postOutline, foot } : null
  const leaning = standing && post.lean > 0 ? leaningPost(postOutline, foot, post.heightAboveGrade - foot, post.lean, site.downhill) : null
  return { postOutline, standing, leaning, round: leaning ? null : standing, foot, bracketSite: isIn ? null : siteAt(spec, landing) }
}
