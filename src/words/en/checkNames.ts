import type { CheckId } from '../../core/model/saidIds.ts'
import type { headlines } from './headlines.ts'

/** What each check is called that is no link of the load path: the page opens with those that fall short. */
export const checkNames = {
  'bearing-gross': 'Bearing, pier included',
  'bearing-net': 'Bearing, soil taken off',
  'post-end-on-concrete': 'End of the post on concrete',
  'frost-depth': 'Frost depth',
  'least-depth': 'Least depth of a footing',
  'stand-off-above-concrete': 'Wood above the concrete',
  'stand-off-above-earth': 'Wood above the ground',
  'bar-in-treated-wood': 'Coating of the bar',
  'bar-end-cover': 'Cover at the bar ends',
  'bar-outside-post': 'Bar out of the post',
  'vertical-bar-cover': 'Cover of the upright bars',
  'freeze-thaw': 'Strength against frost',
  'strength-structural': 'Strength to carry',
  'strength-backfill': 'Strength to fill round a post',
  'strength-weather': 'Strength for the weather',
  'pier-spacing': 'Distance to the next pier',
  'post-clearance': 'Room round the post',
  'post-plumb': 'Post off plumb',
  'setback-from-slope': 'Distance to the slope face',
  'treatment-class': 'Treatment of the post',
  'frost-jacking': 'Frost jacking',
  'lateral-broms': 'Depth by another method',
  'lateral-embedment': 'Ground against a sideways push',
  'lateral-held-at-grade': 'Ground and floor against a push',
  'presumptive-bound': 'Code friction',
  'cores-mean': 'Cores, their mean',
  'cores-each': 'Cores, the weakest',
} as const satisfies Readonly<Record<Exclude<CheckId, keyof typeof headlines>, string>>
