import type { SoilWetness } from '../moisture/soilWetness.ts'
import { type Cited, cited } from '../cited.ts'

/** Effective saturation of the ground when a rain begins, by its class: chosen here to tell classes apart, no measurement. Source: assumption. */
export const startingSaturation: Readonly<Record<SoilWetness, Cited>> = {
  drains: cited(0.3, '1', 'assumption', 'assumed here'),
  damp: cited(0.6, '1', 'assumption', 'assumed here'),
  wet: cited(0.9, '1', 'assumption', 'assumed here'),
}
