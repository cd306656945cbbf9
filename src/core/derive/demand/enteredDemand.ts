import type { Demand } from '../../model/result.ts'
import type { EnteredLoads, PierSpec } from '../../model/spec.ts'
import type { Worked } from '../../model/worked.ts'
import { given } from '../given.ts'

/** Null where nothing is asked: nobody gave a figure, or a nought, which is what people type for one that they do not know. */
const entered = (id: string, value: number | null): Worked | null =>
  value === null || value === 0 ? null : given(id, value, 'force', { sources: ['user'], standing: 'assumed here' })

const nothing: EnteredLoads = { uplift: null, gravity: null, lateral: null, lateralHeight: null }

/**
 * Loads from the drawing, as they were entered, each by itself; null where none is. Where no uplift is entered with them, the one that the
 * drawing check holds is the drawing's too.
 */
export function enteredDemand({ loads, callout }: Pick<PierSpec, 'loads' | 'callout'>): Demand | null {
  const { uplift, gravity, lateral, lateralHeight } = loads.entered ?? nothing
  const found = {
    uplift: entered('demand-uplift', uplift ?? callout?.uplift ?? null),
    gravity: entered('demand-gravity', gravity),
    lateral: entered('demand-lateral', lateral),
  }
  if (!found.uplift && !found.gravity && !found.lateral) return null
  return {
    kind: 'entered',
    isEstimate: false,
    ...found,
    lateralHeight: found.lateral && lateralHeight,
    cases: [],
    governing: { uplift: null, gravity: null },
    worked: [],
    notes: [],
  }
}
