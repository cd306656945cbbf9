import type { Cited } from '../engineering/cited.ts'
import type { SourceId } from '../engineering/sources.ts'
import type { Standing, Term, Worked } from '../model/worked.ts'
import type { QuantityKind } from '../units/quantity.ts'

type From = Readonly<{ formula?: string; inputs?: readonly Term[]; sources?: readonly SourceId[]; standing?: Standing }>

/** A number that stands by itself: a length that is there, or a figure that was entered. By definition unless said otherwise. */
export const given = (id: string, value: number, quantity: QuantityKind, from: From = {}): Worked => ({
  id,
  value,
  quantity,
  formula: from.formula ?? '',
  inputs: from.inputs ?? [],
  sources: from.sources ?? ['definition'],
  standing: from.standing ?? 'definition',
})

/** A printed limit as it stands in its table. */
export const limitOf = (id: string, { value, source, standing }: Cited, quantity: QuantityKind): Worked =>
  given(id, value, quantity, { sources: [source], standing })

/** A length that goes into a formula. */
export const lengthTerm = (symbol: string, name: string, value: number): Term => ({ symbol, name, value, quantity: 'length' })
