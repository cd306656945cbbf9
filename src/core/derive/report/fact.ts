import type { Fact, FactValue } from '../../model/fact.ts'
import type { Worked } from '../../model/worked.ts'
import type { QuantityKind } from '../../units/quantity.ts'

const nothing = {
  value: null,
  limit: null,
  isEstimate: false,
  ratio: null,
  counted: null,
  standing: null,
  reason: null,
  verdict: null,
  sources: [],
  drawn: [],
  restsOn: [],
  figures: [],
  work: { steps: [], value: null, limit: null },
} as const satisfies Omit<Fact, 'id' | 'group'>

/** A fact of what is known of it; all else is nothing. */
export const fact = (known: Pick<Fact, 'id' | 'group'> & Partial<Fact>): Fact => ({ ...nothing, ...known })

export const figure = (value: number, quantity: QuantityKind): FactValue => ({ as: 'number', value, quantity })
export const figureOf = (worked: Worked | null | undefined): FactValue | null => (worked ? figure(worked.value, worked.quantity) : null)
