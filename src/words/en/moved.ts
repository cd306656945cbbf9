import type { MethodChangeId } from '../../core/spec/methodChanges.ts'

/** What has moved since an older version of the page, and why, by subject. */
export const moved = {
  'loads-filled-in':
    'Loads: the older page put in 800 lb up, 4,000 lb down or 400 lb sideways when loads were switched on. Nobody may have given those that stand so. Empty what you did not enter.',
  'drawing-uplift-used': 'Loads: the design uplift of the drawing is now held against the pier. It was left aside.',
  'nought-not-asked': 'Loads: a load of 0 is no longer met by any pier. It counts as not asked.',
  'bearing-under-concrete':
    'Bearing: only as much ground is counted as plain concrete under the post can spread the load to. The whole bottom of the hole was.',
  'upright-bars-developed':
    'Upright bars: they count only where they reach far enough on both sides of the parting level, and never under 12 in. They counted at any length.',
  'bell-counted-apart': 'Bell: its own break is a link by itself. A slip of the shaft that a bell rules out no longer lowers the answer.',
  'bar-in-weak-concrete':
    'Bar through the post: concrete under 2,500 psi no longer counts under the bar, as its value is printed for 2,500 psi and up.',
  'bracket-hinge': 'Sideways: the foot of a post on a bracket is a hinge and passes no moment into the pier. It was counted as if it did.',
  'years-by-evidence': 'Years: the range follows the field tests row by row, and stakes are told from posts.',
  'dry-mix-mass': 'Dry mix: bags, water and the order come from one sum of weights.',
} as const satisfies Readonly<Record<MethodChangeId, string>>
