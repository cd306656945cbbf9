import { radians } from '../../core/units/quantity.ts'
import type { Viewpoint } from '../appState.ts'
import { lookFrom, setCut } from './view.ts'
import { defaultView } from '../defaultView.ts'
import { shownDocument } from '../derived.ts'
import type { PierStore } from '../store.ts'

/**
 * Takes a named view with the cut that belongs to it: the section is half the block taken off along the fall line, so that both edges are
 * the true ones, with downhill on the right; three-quarter has the first cut again. Every other view leaves the cut alone.
 */
export function takeView(store: PierStore, name: Viewpoint): void {
  const { downhill } = shownDocument(store.getState()).spec.site
  if (name === 'section') setCut(store, { open: radians(Math.PI), facing: radians(downhill + Math.PI / 2) })
  if (name === 'three-quarter') setCut(store, defaultView.cut)
  lookFrom(store, name)
}
