import type {
  CalloutItem,
  CalloutItemId,
  CalloutValue,
  Consequence,
  DrawingEffect,
  DrawingProof,
  DrawingWord,
} from '../../model/calloutResult.ts'
import type { SourceId } from '../../engineering/sources.ts'
import type { PierResult } from '../../model/result.ts'
import type { Callout } from '../../model/spec.ts'
import type { QuantityKind } from '../../units/quantity.ts'
import type { PierFrame } from '../pierFrame.ts'

/** What the items are worked out from. */
export type CalloutContext = Readonly<
  { callout: Callout; frame: PierFrame } & Pick<PierResult, 'depths' | 'uplift' | 'checks' | 'quantities' | 'zones'>
>

export const number = (value: number, quantity: QuantityKind): CalloutValue => ({ as: 'number', value, quantity })
export const choice = (path: string, one: string): CalloutValue => ({ as: 'choice', path, choice: one })
export const word = (one: DrawingWord): CalloutValue => ({ as: 'word', word: one })

/** The found part of an item whose figure is on the drawing. */
export type ItemFinding = Readonly<
  Pick<CalloutItem, 'verdict' | 'why'> & { consequences?: readonly Consequence[]; verify?: readonly DrawingProof[]; difference?: number }
>

type Parts = Readonly<{
  id: CalloutItemId
  drawn: CalloutValue | null
  set: CalloutValue | null
  where: readonly string[]
  /** What shows it on the day, whatever the verdict. */
  verify: readonly DrawingProof[]
  tolerance?: number
  sources?: readonly SourceId[]
  /** Asked only when the drawing speaks of it. */
  find: () => ItemFinding
}>

/** One item of the check. Where the drawing says nothing, nothing is found. */
export function item({ id, drawn, set, where, verify, tolerance, sources = [], find }: Parts): CalloutItem {
  const bare = { id, drawn, set, where, tolerance: tolerance ?? null, sources }
  if (drawn === null)
    return { ...bare, difference: null, verdict: 'not on the drawing', why: 'not-on-the-drawing', consequences: [], verify: [] }
  const found = find()
  return {
    ...bare,
    difference: found.difference ?? null,
    verdict: found.verdict,
    why: found.why,
    consequences: found.consequences ?? [],
    verify: found.verify ?? verify,
  }
}

/** Rounding that a length, a force or a strength may carry without falling short, relative. */
const rounding = 1e-9
/** Is it not below the figure drawn, less what the drawing allows? */
export const reaches = (set: number, drawn: number, tolerance = 0): boolean => set >= (drawn - tolerance) * (1 - rounding) - 1e-12

/** Set over drawn, less one: -0.21 is 21 % less. Nothing where the two are alike. */
export const share = (id: DrawingEffect, set: number, drawn: number): readonly Consequence[] =>
  drawn > 0 && Math.abs(set - drawn) > rounding * drawn ? [{ id, value: set / drawn - 1, quantity: 'ratio' }] : []
/** A difference in its own unit. Nothing where there is none. */
export const amount = (id: DrawingEffect, value: number, quantity: QuantityKind): readonly Consequence[] =>
  Math.abs(value) > 1e-9 ? [{ id, value, quantity }] : []
