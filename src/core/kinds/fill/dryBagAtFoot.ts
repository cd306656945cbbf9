import { bagSizes, bags } from '../../engineering/tables/bags.ts'
import { count, oneOf } from '../../fields/makers.ts'
import { counting } from '../counting.ts'
import { declareFill } from '../record.ts'

/** A bag or more of dry mix emptied round the post's foot, with the dug soil thrown back on top. */
export const dryBagAtFoot = declareFill({
  id: 'dry-bag-at-foot',
  support: 'embedded',
  fields: {
    bags: count({ from: 1, to: 20, link: 'fn', silent: 1 }),
    bagSize: oneOf(bagSizes, { link: 'fb', silent: 80 }),
  },
  prices: { first: 'oa', replacement: 'ra' },
  lifts: (fill, site) => {
    const volume = (fill.bags * bags[fill.bagSize].weight.value) / site.looseWeight
    return [
      { id: 'dry-mix', role: 'dry-mix', label: 'dry-mix', to: { kind: 'level', y: site.levelFor(volume) } },
      { id: 'backfill', role: 'backfill', label: 'backfill', to: { kind: 'grade' } },
    ]
  },
  supply: { 'dry-mix': 'bags', backfill: 'none' },
  wetting: 'by-the-ground',
  hasTop: false,
  counting: {
    weight: counting.dryMixWeight,
    sideFriction: counting.backfillFriction,
    connection: counting.barInSoil,
    strength: counting.dryMixStrength,
    sideways: counting.soilSideways,
  },
  lateralWidth: 'post',
  steps: ['drill', 'clean-out', 'place-base', 'set-and-brace', 'empty-bags', 'backfill-in-lifts', 'slope-soil-away'],
  cautions: ['dry-mix-not-verifiable', 'backfill-not-listed'],
  sources: ['ibc-1807-3-3', 'bohnhoff-2003', 'bag-yields'],
})
