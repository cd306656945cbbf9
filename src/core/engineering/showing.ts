import { type Standing, type Term, type Worked, standingsInOrder } from '../model/worked.ts'
import type { QuantityKind } from '../units/quantity.ts'
import { standingOf } from './sourceStandings.ts'
import type { SourceId } from './sources.ts'

/** The least well verified of several. An empty list is a definition. */
export const weakest = (...list: readonly Standing[]): Standing => {
  let rank = 0
  for (const one of list) rank = Math.max(rank, standingsInOrder.indexOf(one))
  return standingsInOrder[rank] ?? 'definition'
}

/** What a number rests on. */
type Basis = Pick<Worked, 'sources' | 'standing'>
/** How a number was got. */
export type Work = Basis & Pick<Worked, 'formula' | 'inputs' | 'method'>

/** How a number tells what it rests on, from what it keeps for that; `basis` where that is known without the work. */
type Telling<F, U> = Readonly<{ work: (from: F, use: U) => Work; basis?: (use: U) => Basis }>

/** Work that somebody has asked for, kept for as long as its number is. */
const asked = new WeakMap<Worked, Work>()

/** A number that works out how it was got once somebody asks, from what it keeps for that: a study that takes thousands never asks. */
class OnDemand<F, U> implements Worked {
  constructor(
    readonly id: string,
    readonly value: number,
    readonly quantity: QuantityKind,
    private readonly telling: Telling<F, U>,
    private readonly from: F,
    private readonly use: U,
  ) {}
  get work(): Work {
    const known = asked.get(this)
    if (known) return known
    const work = this.telling.work(this.from, this.use)
    asked.set(this, work)
    return work
  }
  get formula() {
    return this.work.formula
  }
  get inputs() {
    return this.work.inputs
  }
  get sources() {
    return (this.telling.basis?.(this.use) ?? this.work).sources
  }
  get standing() {
    return (this.telling.basis?.(this.use) ?? this.work).standing
  }
  get method() {
    return this.work.method
  }
}

const told: Telling<() => Work, undefined> = { work: (show) => show() }

/** A number with how it was got, on demand. */
export const worked = (id: string, value: number, quantity: QuantityKind, show: () => Work): Worked =>
  new OnDemand(id, value, quantity, told, show, undefined)

/** The same number under another id, or with some of its work told otherwise. */
export const retold = (one: Worked, id: string, otherwise: Partial<Work> = {}): Worked =>
  worked(id, one.value, one.quantity, () => ({
    formula: one.formula,
    inputs: one.inputs,
    sources: one.sources,
    standing: one.standing,
    method: one.method,
    ...otherwise,
  }))

/** The same number with inputs under names that say what they are here. */
export const renamed = (one: Worked, names: Readonly<Record<string, string>>): Worked =>
  retold(one, one.id, { inputs: one.inputs.map((term) => ({ ...term, name: names[term.name] ?? term.name })) })

/** How one calculation shows its work. `terms`: each numeric input's TeX symbol and quantity, in the order to print. */
export type Recipe<I, R extends number | null> = Readonly<{
  id: string
  quantity: QuantityKind
  formula: string | ((inputs: I) => string)
  terms: Readonly<{ [K in keyof I]?: readonly [symbol: string, quantity: QuantityKind] }>
  /** What is worked out on the way and stands in the formula by a symbol of its own. */
  along?: (inputs: I) => readonly Term[]
  sources: readonly SourceId[]
  /** Never better than the sources; given only to lower it. */
  standing?: Standing
  method?: 'closed form' | 'integrated'
  of: (inputs: I) => R
}>

/** What a caller adds: another id for this use, the standings of the rows and numbers that went in, their sources. */
export type Use = Readonly<{
  id?: string
  standings?: readonly (Standing | Readonly<{ standing: Standing }>)[]
  sources?: readonly (SourceId | Readonly<{ sources: readonly SourceId[] }>)[]
}>

/**
 * A numeric function that shows its work: same inputs, a `Worked` out, null where the function gives no value. `at` takes a value that was
 * got in another way, with the inputs that would give it, on demand.
 */
export type Shown<I, R extends number | null> = ((inputs: I, use?: Use) => R extends null ? null : Worked) &
  Readonly<{ recipe: Recipe<I, R>; at: (value: number, inputs: () => I, use?: Use) => Worked }>

/**
 * Turns a numeric function into one that shows its work. The standing is the weakest of the recipe's sources, its own,
 * and those of the rows that the caller names.
 */
export const showing = <I, R extends number | null>(recipe: Recipe<I, R>): Shown<I, R> => {
  const { id, quantity, of } = recipe
  const own = basisOf(recipe, {})
  const basis = (use: Use | undefined) => (use?.standings || use?.sources ? basisOf(recipe, use) : own)
  const work = (inputs: I, use: Use | undefined): Work => ({
    formula: typeof recipe.formula === 'string' ? recipe.formula : recipe.formula(inputs),
    inputs: [...termsOf(recipe, inputs), ...(recipe.along?.(inputs) ?? [])],
    method: recipe.method,
    ...basis(use),
  })
  const telling = { work, basis }
  const tellingLate: Telling<() => I, Use | undefined> = { work: (inputs, use) => work(inputs(), use), basis }
  const show = (inputs: I, use?: Use): Worked | null => {
    const value: number | null = of(inputs)
    return value === null ? null : new OnDemand(use?.id ?? id, value, quantity, telling, inputs, use)
  }
  const at = (value: number, inputs: () => I, use?: Use): Worked => new OnDemand(use?.id ?? id, value, quantity, tellingLate, inputs, use)
  return Object.assign(show as (inputs: I, use?: Use) => R extends null ? null : Worked, { recipe, at })
}

function basisOf<I, R extends number | null>(recipe: Recipe<I, R>, { standings: own = [], sources = [] }: Use): Basis {
  const named = [...new Set([...recipe.sources, ...sources.flatMap((one) => (typeof one === 'string' ? one : one.sources))])]
  return {
    sources: named,
    standing: weakest(
      recipe.standing ?? 'definition',
      ...own.map((one) => (typeof one === 'string' ? one : one.standing)),
      ...named.map(standingOf),
    ),
  }
}

const termsOf = <I, R extends number | null>(recipe: Recipe<I, R>, inputs: I): readonly Term[] => {
  const terms: Term[] = []
  for (const name in recipe.terms) {
    const term = recipe.terms[name]
    const value = inputs[name]
    if (term && typeof value === 'number') terms.push({ symbol: term[0], name, value, quantity: term[1] })
  }
  return terms
}
