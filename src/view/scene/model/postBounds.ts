import { postOf } from '../../../core/geometry/postOf.ts'
import { reachAlong } from '../../../core/geometry/leaningPost.ts'
import type { Zone } from '../../../core/model/zone.ts'
import type { PostBounds } from '../materials/zoneMaterials.ts'

/** Sides of the post [m], read off its outline; null when there is none. */
export function postBounds(zones: readonly Zone[]): PostBounds | null {
  const post = postOf(zones)
  return post && { width: 2 * reachAlong(post.outline, 0), depth: 2 * reachAlong(post.outline, Math.PI / 2) }
}
