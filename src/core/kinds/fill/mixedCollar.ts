import { length } from '../../fields/makers.ts'
import { counting } from '../counting.ts'
import { declareFill } from '../record.ts'

/** Mixed concrete round the lower part of the post, soil thrown back above it. */
export const mixedCollar = declareFill({
  id: 'mixed-collar',
  support: 'embedded',
  fields: { height: length({ from: '4 in', to: '96 in', link: 'fc', silent: '18 in' }) },
  prices: { first: 'od', replacement: 'rd' },
  lifts: (fill, site) => [
    { id: 'concrete', role: 'concrete', label: 'collar', to: { kind: 'level', y: site.bottom + fill.height } },
    { id: 'backfill', role: 'backfill', label: 'backfill', to: { kind: 'grade' } },
  ],
  supply: { concrete: 'ready-mix', backfill: 'none' },
  hasTop: false,
  counting: {
    weight: counting.concreteWeight,
    sideFriction: counting.concreteFriction,
    connection: counting.barInConcrete,
    strength: counting.mixedStrength,
    sideways: counting.soilSideways,
  },
  lateralWidth: 'post',
  steps: [
    'drill',
    'clean-out',
    'place-base',
    'set-and-brace',
    'place-bar',
    'place-mixed',
    'consolidate',
    'cure',
    'backfill-in-lifts',
    'slope-soil-away',
  ],
  cautions: ['backfill-not-listed', 'wood-in-soil-at-groundline'],
  sources: ['ibc-1807-3-3', 'ibc-1810-3-3-1-5', 'nds-2018-12-3-1'],
})
