import type { PierSpec } from '../model/spec.ts'
import { fillKinds } from './kindsFixture.ts'

const record = (spec: PierSpec) => fillKinds.find((kind) => kind.id === spec.fill.kind)

/** Does this way of filling place concrete, mixed or dry? Then vertical bars may stand in it. */
export const placesConcrete = (spec: PierSpec): boolean => {
  const supply = record(spec)?.supply ?? {}
  return 'concrete' in supply || 'dry-mix' in supply
}

/** Does the finished top (crown, rim, heaped soil) belong to this way of filling? */
export const hasTop = (spec: PierSpec): boolean => record(spec)?.hasTop ?? false
