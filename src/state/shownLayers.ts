import type { ViewSettings } from './appState.ts'

let last: Readonly<{ of: ViewSettings['layers']; shown: ViewSettings['layers'] }> | null = null

/**
 * Layers as they are shown. While years are looked at, what wets the wood is shown; and while it is, lengths step back: one thing at a
 * time. The same object for the same answer.
 */
export const shownLayers = ({ layers, time }: Pick<ViewSettings, 'layers' | 'time'>): ViewSettings['layers'] => {
  if (!layers.wetness && time?.stretch !== 'years') return layers
  if (last?.of !== layers) last = { of: layers, shown: { ...layers, wetness: true, dimensions: false } }
  return last.shown
}
