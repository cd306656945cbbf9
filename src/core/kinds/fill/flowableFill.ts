import { counting } from '../counting.ts'
import { declareFill } from '../record.ts'

/** Controlled low-strength material poured round the post up to grade. */
export const flowableFill = declareFill({
  id: 'flowable-fill',
  support: 'embedded',
  fields: {},
  prices: { first: 'og', replacement: 'rg' },
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
})
