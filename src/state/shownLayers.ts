import type { ViewSettings } from './appState.ts'
import { perSpec } from './perSpec.ts'

const wetAlone = perSpec((layers: ViewSettings['layers']): ViewSettings['layers'] => ({ ...layers, wetness: true, dimensions: false }))

/**
 * Layers as they are shown. While years are looked at, what wets the wood is shown; and while it is, lengths step back: one thing at a
 * time. The same object for the same answer.
 */
export const shownLayers = ({ layers, time }: Pick<ViewSettings, 'layers' | 'time'>): ViewSettings['layers'] =>
  layers.wetness || time?.stretch === 'years' ? wetAlone(layers) : layers
