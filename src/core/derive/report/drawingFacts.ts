import type { CalloutItem } from '../../model/calloutResult.ts'
import type { Fact } from '../../model/fact.ts'
import type { PierResult } from '../../model/result.ts'
import { fact, figure } from './fact.ts'

/** The pier against its drawing as a whole; undefined while nothing of a drawing is entered. */
export const drawingOf = (facts: readonly Fact[]): Fact | undefined =>
  facts.find(({ group, value }) => group === 'drawing' && value?.as === 'number' && value.value > 0)

/** The pier against its drawing: how the whole stands and of how many items, then every item, those that are not on the drawing too. */
export function drawingFacts({ callout }: PierResult): Fact[] {
  if (callout === null) return []
  const { overall, checked, items } = callout
  const told = items.filter(({ drawn }) => drawn !== null).map(({ id }) => id)
  return [
    fact({ id: 'drawing', group: 'drawing', value: figure(checked, 'count'), verdict: overall, restsOn: told }),
    ...items.map(itemFact),
  ]
}

function itemFact({ id, drawn, set, difference, tolerance, verdict, why, consequences, verify, where, sources }: CalloutItem): Fact {
  const quantity = drawn?.as === 'number' ? drawn.quantity : 'length'
  return fact({
    id,
    group: 'drawing-item',
    value: set,
    limit: drawn,
    verdict,
    reason: why,
    sources,
    drawn: where,
    figures: consequences.map((one) => ({ id: one.id, value: figure(one.value, one.quantity) })),
    difference: difference === null ? null : figure(difference, quantity),
    tolerance: tolerance === null ? null : figure(tolerance, quantity),
    shownBy: verify,
  })
}
