import type { FillKind, FillOf } from '../../model/kind.ts'
import { counting } from '../counting.ts'

/** Controlled low-strength material poured round the post up to grade. */
export const flowableFill: FillKind<FillOf<'flowable-fill'>> = {
  id: 'flowable-fill',
  support: 'embedded',
  fields: [],
  defaults: { kind: 'flowable-fill' },
  lifts: () => [{ id: 'flowable-fill', role: 'flowable-fill', label: 'flowable-fill', to: { kind: 'grade' } }],
  supply: { 'flowable-fill': 'ready-mix' },
  hasTop: false,
  counting: {
    weight: counting.fillWeight,
    sideFriction: counting.flowableFriction,
    connection: counting.barInFlowableFill,
    strength: counting.flowableStrength,
    sideways: counting.flowableSideways,
  },
  lateralWidth: 'post',
  steps: ['drill', 'clean-out', 'place-base', 'set-and-brace', 'pour-flowable', 'cure', 'slope-soil-away'],
  cautions: ['flowable-fill-is-weak'],
  sources: ['ibc-1807-3-3'],
}
