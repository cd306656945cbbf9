import { comparedFirst, fillKind, fillKinds } from '../core/kinds/index.ts'
import type { Issue } from '../core/model/issue.ts'
import type { PierResult } from '../core/model/result.ts'
import type { FillId, PierDocument } from '../core/model/spec.ts'
import { setChoice, setPart } from '../core/spec/edit.ts'
import { type CompareState, mostPiers, type Pick } from './compare.ts'
import { derived } from './derived.ts'
import { perSpec } from './perSpec.ts'

/** One pier beside the others. `pier` is null when the method can't be built at these sizes; then `issues` name the fields. */
export type ComparedPier = Readonly<{
  pick: Pick
  /** How its hole is filled, also where it can't be built; null for none known. */
  method: FillId
  pier: Readonly<{ document: PierDocument; result: PierResult }> | null
  issues: readonly Issue[]
}>

/**
 * A method that is counted through a bar in the post has one here, of the drawn size where the drawing names it: it is compared as it is
 * built, not as the open pier happens to lack it. Where no bar fits, the pier stays without.
 */
function withBarNeeded(document: PierDocument): PierDocument {
  const { fill, bars, callout } = document.spec
  const kind = fillKind(fill.kind)
  if (bars !== null || kind.support !== 'embedded' || kind.counting.connection.counted === 'not counted') return document
  const barred = setPart(document, 'bars', true)
  if (!barred.ok) return document
  const sized = callout?.barSize ? setChoice(barred.value, 'bars.size', callout.barSize) : barred
  return sized.ok ? sized.value : barred.value
}

/** The same site, hole, post and drawing with another method. */
const variants = perSpec((own: PierDocument) => {
  const known = new Map<FillId, ComparedPier>()
  return (method: FillId): ComparedPier => {
    const before = known.get(method)
    if (before) return before
    const chosen = setChoice(own, 'fill.kind', method)
    const changed = chosen.ok ? { ...chosen, value: withBarNeeded(chosen.value) } : chosen
    const made: ComparedPier = {
      pick: `method:${method}`,
      method,
      pier: changed.ok ? { document: changed.value, result: derived(changed.value.spec) } : null,
      issues: changed.ok ? [] : changed.issues,
    }
    known.set(method, made)
    return made
  }
})

/** Methods that the open pier can be set beside: all but its own. */
export const otherMethods = (own: PierDocument): readonly FillId[] =>
  fillKinds.map((kind) => kind.id).filter((id) => id !== own.spec.fill.kind)

/** Piers and order that everybody starts from: the open pier first, then three methods in their fixed order. */
export const firstPicks = (own: PierDocument): readonly Pick[] => [
  'own',
  ...comparedFirst
    .filter((id) => id !== own.spec.fill.kind)
    .slice(0, mostPiers - 1)
    .map((id): Pick => `method:${id}`),
]

/** The fixed order: the open pier, the methods that everybody starts from, the other methods as they are offered, what was brought. */
export function inFixedOrder(picks: readonly Pick[]): readonly Pick[] {
  const methods: readonly string[] = [...comparedFirst, ...fillKinds.map((kind) => kind.id).filter((id) => !comparedFirst.includes(id))]
  const rank = (pick: Pick): number => {
    const [kind, what] = split(pick)
    if (kind === 'own') return 0
    return kind === 'method' ? 1 + methods.indexOf(what) : 1 + methods.length + Number(what)
  }
  return [...picks].sort((a, b) => rank(a) - rank(b))
}

/** The picks as they stand: those that have lost their pier, or name the open pier's own method, are left out. */
export function picksOf({ picks, brought }: Chosen, own: PierDocument): readonly Pick[] {
  const first = firstPicks(own)
  if (picks === null) return first
  const methods = otherMethods(own)
  const standing = picks.filter((pick) => {
    const [kind, what] = split(pick)
    if (kind === 'own') return true
    return kind === 'method' ? methods.some((id) => id === what) : (brought[Number(what)] ?? null) !== null
  })
  if (standing.length >= 2) return standing
  return [...standing, ...first.filter((pick) => !standing.includes(pick))].slice(0, 2)
}

type Chosen = Readonly<{ picks: CompareState['picks']; brought: CompareState['brought'] }>
const split = (pick: Pick): readonly [string, string] => {
  const at = pick.indexOf(':')
  return at < 0 ? [pick, ''] : [pick.slice(0, at), pick.slice(at + 1)]
}

/** The pier that a pick stands for; null when it has gone. */
function pierOf(pick: Pick, brought: CompareState['brought'], own: PierDocument): ComparedPier | null {
  const [kind, what] = split(pick)
  if (kind === 'method') {
    const method = fillKinds.find((one) => one.id === what)?.id
    return method === undefined ? null : variants(own)(method)
  }
  const document = kind === 'own' ? own : (brought[Number(what)] ?? null)
  return document && { pick, method: document.spec.fill.kind, pier: { document, result: derived(document.spec) }, issues: [] }
}

/** The piers side by side, in the order shown. */
export const comparedPiers = (state: Chosen, own: PierDocument): readonly ComparedPier[] =>
  picksOf(state, own).flatMap((pick) => pierOf(pick, state.brought, own) ?? [])

/** The documents side by side, in the order shown: for the sheet and for files. Methods that can't be built are not among them. */
export const comparedDocuments = (state: Chosen, own: PierDocument): readonly PierDocument[] =>
  comparedPiers(state, own).flatMap(({ pier }) => pier?.document ?? [])
