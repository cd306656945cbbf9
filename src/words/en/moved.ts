import type { MethodChangeId } from '../../core/spec/methodChanges.ts'

/** What has moved since an older version of the page, and why, by subject. */
export const moved = {
  'loads-filled-in':
    'Loads: the older page put in 800 lb up, 4,000 lb down or 400 lb sideways when loads were switched on. Nobody may have given those that stand so. Empty what you did not enter.',
  'drawing-uplift-used': 'Loads: the design uplift of the drawing is now held against the pier. It was left aside.',
  'nought-not-asked': 'Loads: a load of 0 is no longer met by any pier. It counts as not asked.',
  'bearing-under-concrete':
    'Bearing: only as much ground is counted as plain concrete under the post can spread the load to. The whole bottom of the hole was.',
  'pull-through-concrete':
    'Uplift: a pull goes through the concrete only in upright bars that reach far enough on both sides, never under 12 in. Short bars and plain concrete were counted, and no code lets them be.',
  'weak-concrete': 'Concrete under 2,500 psi: bars, legs, cones and footings in it are not counted, as no code gives a value.',
  'bell-counted-apart':
    'Bell: its own break is a link by itself, and a slip of the shaft that a bell rules out no longer lowers the answer.',
  'bracket-hinge': 'Sideways: the foot of a post on a bracket is a hinge and passes no moment into the pier. It was counted as if it did.',
  'years-by-evidence': 'Years: the range follows the field tests row by row, and stakes are told from posts.',
  'dry-mix-mass': 'Dry mix: bags, water and the order come from one sum of weights.',
} as const satisfies Readonly<Record<MethodChangeId, string>>
