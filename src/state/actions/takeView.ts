import { radians } from '../../core/units/quantity.ts'
import type { Viewpoint } from '../appState.ts'
import { lookFrom, setCut } from './view.ts'
import { defaultView } from '../defaultView.ts'
import { shownDocument } from '../derived.ts'
import type { PierStore } from '../store.ts'

/**
 * Takes a named view with the cut that belongs to it: the section is half the block taken off along the fall line, so that both edges are
 * the true ones, with downhill on the right; the plan is of the whole block, turned the same way; three-quarter has the first cut again.
 * Every other view leaves the cut alone, but for a block that is whole because the plan was on show.
 */
export function takeView(store: PierStore, name: Viewpoint): void {
  const { downhill } = shownDocument(store.getState()).spec.site
  const { cut, viewpoint } = store.getState().view
  const open = name === 'section' ? Math.PI : name === 'plan' ? 0 : null
  if (open !== null) setCut(store, { open: radians(open), facing: radians(downhill + Math.PI / 2) })
  else if (name === 'three-quarter' || (viewpoint.name === 'plan' && cut.open === 0)) setCut(store, defaultView.cut)
  lookFrom(store, name)
}
