import { length } from '../../fields/makers.ts'
import { counting } from '../counting.ts'
import { declareFill } from '../record.ts'

/** A concrete footing pad with the post standing on it, and granular backfill compacted in lifts round the post. */
export const granularOnPad = declareFill({
  id: 'granular-on-pad',
  support: 'embedded',
  fields: { pad: length({ from: '4 in', to: '24 in', link: 'fp', silent: '6 in' }) },
  prices: { first: 'of', replacement: 'rf' },
  lifts: (fill, site) => [
    { id: 'pad', role: 'concrete', label: 'footing-pad', to: { kind: 'level', y: site.bottom + fill.pad } },
    { id: 'granular', role: 'granular', label: 'granular', to: { kind: 'grade' } },
  ],
  supply: { concrete: 'ready-mix', granular: 'loose' },
  hasTop: false,
  counting: {
    weight: counting.fillWeight,
    sideFriction: counting.granularFriction,
    connection: counting.barInSoil,
    strength: counting.padStrength,
    sideways: counting.granularSideways,
  },
  lateralWidth: 'post',
  steps: ['drill', 'clean-out', 'place-base', 'place-pad', 'cure', 'set-and-brace', 'granular-in-lifts', 'slope-soil-away'],
  cautions: ['granular-holds-water-in-clay', 'post-not-tied-to-pad'],
  sources: ['ibc-1807-3-3'],
})
