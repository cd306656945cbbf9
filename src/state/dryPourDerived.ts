import { type DryPourPicture, dryPourPicture } from '../core/derive/mix/dryPourPicture.ts'
import type { PierSpec } from '../core/model/spec.ts'

const known = new WeakMap<PierSpec, Readonly<{ picture: DryPourPicture | null }>>()

/** The picture of a dry pour, worked out once for as long as somebody holds the spec. */
export const dryPourOf = (spec: PierSpec): DryPourPicture | null => {
  const before = known.get(spec)
  if (before) return before.picture
  const picture = dryPourPicture(spec)
  known.set(spec, { picture })
  return picture
}
