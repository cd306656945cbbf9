import { places } from '../../spec/placement.ts'
import type { PierSpec } from '../../model/spec.ts'

/** Sayings of the trade that touch this pier, by the ids of tables/claims.ts. */
export function claimsOnLife(spec: PierSpec): readonly string[] {
  const { support, post, hole } = spec
  const isDry = places(spec, 'dry-mix')
  if (support.kind === 'bracket') return []
  return [
    ...(places(spec, 'concrete') ? ['concrete-rots-posts', 'concrete-protects-posts'] : []),
    ...(isDry ? ['dry-mix-never-hydrates', 'dry-mix-is-as-good-as-mixed'] : []),
    'posts-in-wet-soil-last-ten-years',
    ...(post.treatment === 'untreated' ? [] : ['treated-posts-last-sixty-years']),
    ...(hole.base?.material === 'gravel' || places(spec, 'granular') ? ['gravel-drains-the-hole'] : []),
  ]
}
