import { counting } from '../counting.ts'
import { declareFill } from '../record.ts'

/** Concrete mixed before placing, all round the post from the bottom to the finished top. */
export const mixedFullHeight = declareFill({
  id: 'mixed-full-height',
  support: 'embedded',
  fields: {},
  prices: { first: 'oc', replacement: 'rc' },
  lifts: (_fill, site) => [{ id: 'concrete', role: 'concrete', label: 'concrete', to: site.end }],
  supply: { concrete: 'ready-mix' },
  hasTop: true,
  counting: {
    weight: counting.concreteWeight,
    sideFriction: counting.concreteFriction,
    connection: counting.barInConcrete,
    strength: counting.mixedStrength,
    sideways: counting.concreteSideways,
  },
  lateralWidth: 'hole',
  steps: [
    'drill',
    'clean-out',
    'place-base',
    'set-and-brace',
    'place-bar',
    'place-mixed',
    'consolidate',
    'finish-top',
    'cure',
    'remove-brace',
  ],
  cautions: ['top-joint-takes-water', 'shrinkage-gap'],
  sources: ['ibc-1807-3-3', 'ibc-1810-3-3-1-5', 'nds-2018-12-3-1'],
})
