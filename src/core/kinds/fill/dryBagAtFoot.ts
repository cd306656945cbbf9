import { bags } from '../../engineering/tables/bags.ts'
import { materials } from '../../engineering/tables/materials.ts'
import { choiceField, countField } from '../../model/fieldMakers.ts'
import type { FillKind, FillOf } from '../../model/kind.ts'
import { counting } from '../counting.ts'

/** A bag or more of dry mix emptied round the post's foot, with the dug soil thrown back on top. */
export const dryBagAtFoot: FillKind<FillOf<'dry-bag-at-foot'>> = {
  id: 'dry-bag-at-foot',
  support: 'embedded',
  fields: [countField('fill.bags', 'fill', 1, 20), choiceField('fill.bagSize', 'fill', [50, 60, 80])],
  defaults: { kind: 'dry-bag-at-foot', bags: 1, bagSize: 80 },
  lifts: (fill, site) => {
    const volume = (fill.bags * bags[fill.bagSize].weight.value) / materials['dry-mix'].unitWeight.value
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
}
