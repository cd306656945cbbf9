import { counting } from '../counting.ts'
import { declareFill } from '../record.ts'

/** The hole filled with dry mix to the top and wetted from above. */
export const dryFullHeight = declareFill({
  id: 'dry-full-height',
  support: 'embedded',
  fields: {},
  prices: { first: 'ob', replacement: 'rb' },
  lifts: (_fill, site) => [{ id: 'dry-mix', role: 'dry-mix', label: 'dry-mix', to: site.end }],
  supply: { 'dry-mix': 'bags' },
  wetting: 'from-the-top',
  hasTop: true,
  counting: {
    weight: counting.dryMixWeight,
    sideFriction: counting.dryMixFriction,
    connection: counting.barInDryMix,
    strength: counting.dryMixStrength,
    sideways: counting.dryMixSideways,
  },
  cored: {
    weight: counting.coredMix,
    sideFriction: counting.coredMix,
    connection: counting.coredMix,
    strength: counting.coredMix,
    sideways: counting.coredMix,
  },
  lateralWidth: 'post',
  steps: ['drill', 'clean-out', 'place-base', 'set-and-brace', 'place-bar', 'pour-dry', 'wet-from-top', 'finish-top'],
  cautions: ['dry-mix-not-verifiable'],
  sources: ['ibc-1807-3-3', 'bohnhoff-2003', 'bag-yields'],
})
