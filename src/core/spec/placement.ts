import { fillKind } from '../kinds/index.ts'
import type { Role } from '../model/solid.ts'
import type { PierSpec } from '../model/spec.ts'

/** Does this way of filling place material of this role? */
export const places = (spec: PierSpec, role: Role): boolean => fillKind(spec.fill.kind).supply[role] !== undefined

/** Does it set the post, or the bracket, in concrete or dry mix? Then vertical bars may stand in it. A pad under granular fill is not that. */
export const placesMix = (spec: PierSpec): boolean => (places(spec, 'concrete') || places(spec, 'dry-mix')) && !places(spec, 'granular')

/** Is there any concrete on this job whose strength and weight matter: placed mix, a pad or a concrete base? */
export const usesConcrete = (spec: PierSpec): boolean =>
  places(spec, 'concrete') || places(spec, 'dry-mix') || spec.hole.base?.material === 'concrete'

/** Is mix placed dry, to be wetted where it lies? */
export const placesDryMix = (spec: PierSpec): boolean => places(spec, 'dry-mix')

/** Does the crew pour water on it? */
export const isWatered = (spec: PierSpec): boolean => fillKind(spec.fill.kind).wetting === 'from-the-top'

/** Does the finished top (crown, rim, heaped soil) belong to this way of filling? */
export const hasTop = (spec: PierSpec): boolean => fillKind(spec.fill.kind).hasTop
