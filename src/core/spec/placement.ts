import type { Condition } from '../fields/node.ts'
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

/** Does the finished top (crown, rim, heaped soil) belong to this way of filling? */
export const hasTop = (spec: PierSpec): boolean => fillKind(spec.fill.kind).hasTop

/** What decides whether a pier has an input, beyond the part or the kind that holds it. */
export const conditions: Readonly<Record<Condition, (spec: PierSpec) => boolean>> = {
  'post in the hole': ({ support }) => support.kind === 'embedded',
  'post on a bracket': ({ support }) => support.kind === 'bracket',
  'mix round the post': placesMix,
  'concrete or dry mix': usesConcrete,
  'dry mix': (spec) => places(spec, 'dry-mix'),
  watered: ({ fill }) => fillKind(fill.kind).wetting === 'from-the-top',
  'finished top': hasTop,
  'shaped top': ({ top }) => top.shape !== 'flat',
  'several bars': ({ bars }) => bars !== null && bars.count > 1,
  slope: ({ site }) => site.slope > 0,
  'free roof': ({ loads }) => loads.estimate?.roof.startsWith('free') ?? false,
  'own years': ({ life }) => life.reference === 'own',
  'no own months': ({ life }) => life.months === null,
}
