import { radians } from '../core/units/quantity.ts'
import type { ViewSettings } from './appState.ts'

/**
 * First look: a sector of 110 degrees taken out toward the reader, its broad side a little behind the bar of the first pier, so that
 * the bar stands free in the cut; downhill is on the right.
 */
export const defaultView: ViewSettings = {
  units: 'us',
  theme: 'paper',
  language: 'en',
  cut: { open: radians((110 * Math.PI) / 180), facing: radians((135 * Math.PI) / 180) },
  viewpoint: { name: 'three-quarter', at: 0 },
  layers: { soil: true, labels: true, dimensions: true, water: true, frost: true, wetness: false },
  cutPost: false,
  explode: 0,
  pointedAt: null,
  openLink: null,
  pull: null,
  time: null,
  playing: false,
  mistakes: [],
  panel: 'inputs',
  quality: 'full',
}
