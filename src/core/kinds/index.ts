import type { FillSite, Lift } from '../model/kind.ts'
import { barLegs } from './bracket/barLegs.ts'
import { basePlate } from './bracket/basePlate.ts'
import { knifePlate } from './bracket/knifePlate.ts'
import { sidePlates } from './bracket/sidePlates.ts'
import { dryBagAtFoot } from './fill/dryBagAtFoot.ts'
import { dryFullHeight } from './fill/dryFullHeight.ts'
import { flowableFill } from './fill/flowableFill.ts'
import { granularOnPad } from './fill/granularOnPad.ts'
import { mixedBracketPier } from './fill/mixedBracketPier.ts'
import { mixedCollar } from './fill/mixedCollar.ts'
import { mixedFullHeight } from './fill/mixedFullHeight.ts'

/**
 * Every way to fill the hole, in the order in which they are offered: what goes in dry, what is mixed first, what holds no concrete around the
 * post. That is the order in which the question comes up, cheapest idea first, and no ranking. The only list; adding one is a file and a line here.
 */
export const fillKinds = [dryBagAtFoot, dryFullHeight, mixedFullHeight, mixedCollar, mixedBracketPier, granularOnPad, flowableFill] as const

/** Methods that a pier is set beside unless somebody picks others: poured around the post, under a bracket, and the two that go in dry. No ranking. */
export const comparedFirst: readonly AnyFillKind['id'][] = ['mixed-full-height', 'mixed-bracket-pier', 'dry-bag-at-foot', 'dry-full-height']

/** Every bracket shape. */
export const bracketKinds = [barLegs, sidePlates, knifePlate, basePlate] as const

/** A record of any kind, when it is not known which. */
export type AnyFillKind = (typeof fillKinds)[number]
type AnyBracketKind = (typeof bracketKinds)[number]

/** Record of a kind in use. Throws on an unlisted id: validation has refused it long before. */
export function fillKind(id: AnyFillKind['id']): AnyFillKind {
  const kind = fillKinds.find((k) => k.id === id)
  if (!kind) throw new Error(`fillKind: no kind "${id}"`)
  return kind
}
export function bracketKind(id: AnyBracketKind['id']): AnyBracketKind {
  const kind = bracketKinds.find((k) => k.id === id)
  if (!kind) throw new Error(`bracketKind: no kind "${id}"`)
  return kind
}

/** The lifts that a pier's fill places. The record and the fill carry the same id, which the compiler can't see. */
export const liftsOf = (fill: AnyFillKind['defaults'], site: FillSite): readonly Lift[] =>
  (fillKind(fill.kind).lifts as (fill: AnyFillKind['defaults'], site: FillSite) => readonly Lift[])(fill, site)
