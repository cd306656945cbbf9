import { inches } from '../../model/fieldMakers.ts'
import type { FillKind, FillOf } from '../../model/kind.ts'
import { toSI } from '../../units/factors.ts'
import { metres } from '../../units/quantity.ts'
import { counting } from '../counting.ts'

/** A concrete footing pad with the post standing on it, and granular backfill compacted in lifts round the post. */
export const granularOnPad: FillKind<FillOf<'granular-on-pad'>> = {
  id: 'granular-on-pad',
  support: 'embedded',
  fields: [inches('fill.pad', 'fill', 4, 24, 1)],
  defaults: { kind: 'granular-on-pad', pad: metres(toSI(6, 'in')) },
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
}
