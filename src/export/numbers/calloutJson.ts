import type { CalloutItem, CalloutResult, CalloutValue, Consequence } from '../../core/model/calloutResult.ts'
import type { QuantityKind } from '../../core/units/quantity.ts'
import { wordsOf } from '../../words/index.ts'
import { inWords, unitOf } from './named.ts'

const number = (value: number, quantity: QuantityKind) => ({ value, unit: unitOf(quantity), text: inWords(value, quantity) })

const value = (one: CalloutValue | null) => {
  if (one === null) return null
  if (one.as === 'number') return number(one.value, one.quantity)
  if (one.as === 'choice') return { value: one.choice, text: wordsOf('choices')[one.path]?.[one.choice] ?? one.choice }
  return { value: one.word, text: wordsOf('drawing').words[one.word] }
}

const consequence = ({ id, value: size, quantity }: Consequence) => ({
  id,
  label: wordsOf('drawing').consequences[id],
  ...number(size, quantity),
})

const item = (one: CalloutItem) => {
  const words = wordsOf('drawing')
  const quantity = one.drawn?.as === 'number' ? one.drawn.quantity : one.set?.as === 'number' ? one.set.quantity : 'length'
  return {
    id: one.id,
    label: words.items[one.id],
    drawn: value(one.drawn),
    set: value(one.set),
    difference: one.difference === null ? null : number(one.difference, quantity),
    tolerance: one.tolerance === null ? null : number(one.tolerance, quantity),
    verdict: one.verdict,
    why: words.why[one.why],
    consequences: one.consequences.map(consequence),
    verify: one.verify.map((key) => words.verify[key]),
    where: one.where,
    sources: one.sources,
  }
}

/** The check of a pier against its drawing as plain data; null without a drawing. Whoever reads it is told who decides. */
export const calloutJson = (callout: CalloutResult | null): unknown => {
  const words = wordsOf('drawing')
  return (
    callout && {
      overall: callout.overall,
      checked: callout.checked,
      note: `${words.checked(callout.checked)} ${words.decides}`,
      items: callout.items.map(item),
    }
  )
}
