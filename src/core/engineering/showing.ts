import { type Standing, type Term, type Worked, standings } from '../model/worked.ts'
import type { QuantityKind } from '../units/quantity.ts'
import { standingOf } from './sourceStandings.ts'
import type { SourceId } from './sources.ts'

/** The least well verified of several. An empty list is a definition. */
export const weakest = (...list: readonly Standing[]): Standing =>
  standings[Math.max(0, ...list.map((one) => standings.indexOf(one)))] ?? 'definition'

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

/** What a caller adds: another id for this use, the standings of the table rows that went in, their sources. */
export type Use = Readonly<{ id?: string; standings?: readonly Standing[]; sources?: readonly SourceId[] }>

/** A numeric function that shows its work: same inputs, a `Worked` out, null where the function gives no value. */
export type Shown<I, R extends number | null> = ((inputs: I, use?: Use) => R extends null ? null : Worked) &
  Readonly<{ recipe: Recipe<I, R> }>

/**
 * Turns a numeric function into one that shows its work. The standing is the weakest of the recipe's sources, its own,
 * and those of the rows that the caller names.
 */
export const showing = <I, R extends number | null>(recipe: Recipe<I, R>): Shown<I, R> => {
  const show = (inputs: I, use: Use = {}): Worked | null => {
    const value: number | null = recipe.of(inputs)
    if (value === null) return null
    const named = [...new Set([...recipe.sources, ...(use.sources ?? [])])]
    return {
      id: use.id ?? recipe.id,
      value,
      quantity: recipe.quantity,
      formula: typeof recipe.formula === 'string' ? recipe.formula : recipe.formula(inputs),
      inputs: [...termsOf(recipe, inputs), ...(recipe.along?.(inputs) ?? [])],
      sources: named,
      standing: weakest(recipe.standing ?? 'definition', ...(use.standings ?? []), ...named.map(standingOf)),
      ...(recipe.method === undefined ? {} : { method: recipe.method }),
    }
  }
  return Object.assign(show as (inputs: I, use?: Use) => R extends null ? null : Worked, { recipe })
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
