/** Why something is counted, left to an engineer, or can't be verified: keys of the core's records and checks. */
export const reasons = {
  'weight-of-mixed-concrete': 'Concrete that was mixed before placing holds together and hangs on the post.',
  'weight-of-dry-mix':
    "Its weight would help only if the mix holds together from top to bottom. With mix placed dry that can't be verified without cores.",
  'weight-of-fill-not-tied': 'The fill is not tied to the post, so the post can slide out of it.',
  'friction-on-undisturbed-ground': 'Concrete cast against ground that was not dug grips that ground.',
  'friction-of-dry-mix':
    "The grip needs sound mix all the way to the soil. A trial of 2003 found that buried dry mix can get strong, but loose mix wetted from the top has not been tested. It can't be verified.",
  'friction-of-loose-backfill': "Soil that was thrown back is loose. No standard lets you count its grip, so it can't be verified.",
  'friction-of-granular-fill': "Packed stone presses on the post, but no standard gives a value for its grip. It can't be verified.",
  'friction-of-flowable-fill': 'The code lists this fill, but gives no value for its grip. An engineer has to decide.',
  'bar-in-concrete':
    'Standards give formulas for bars and bolts in wood and concrete, but have no row for a bar cast in a pier. An engineer has to decide.',
  'bar-in-dry-mix': "A bar holds only as well as the mix that it bears on. The strength of mix placed dry can't be verified.",
  'bar-in-soil': "A bar in soil bears on nothing that a standard lets you count. It can't be verified.",
  'bar-in-flowable-fill': "A bar in weak fill bears on little, and no standard gives a value. It can't be verified.",
  'bolts-in-bracket': 'Standards give formulas for bolts through wood with steel plates.',
  'strength-of-mixed-concrete': 'The strength of mixed concrete can be specified and tested.',
  'strength-of-dry-mix': "It can't be verified unless cores are taken. Published evidence cuts both ways.",
  'strength-of-flowable-fill': 'It is ordered by strength, but that strength is low on purpose.',
  'upper-bound-only': 'The code gives this friction for piers that are pushed down, not for uplift. So it is shown and never counted.',
  'no-length-below-frost': 'No part of the side lies both below the frost and against ground that was not dug. Only the weight is counted.',
  'no-friction-angle-for-rock': 'The code gives no friction angle for rock. Only the weight is counted.',
  'no-bar': "Nothing joins post and concrete that a standard lets you count. Their bond can't be verified.",
  'bar-outside-concrete': "A bar is not in the concrete. What it holds in other ground can't be verified.",
  'bar-without-cover': "With 3 in of concrete kept at its ends, no length of bar is left beside the post. It can't be verified.",
  'dowel-too-near-end': "The bar or bolt is nearer to the end of the post than the standard allows. It can't be verified.",
  'outside-yield-range': "The sizes are outside the range of the published formulas. It can't be verified.",
  'frost-at-downhill-edge': 'Frost is held against the depth on the downhill side, where the pier stands least deep.',
  'least-depth-at-downhill-edge': 'The depth is taken on the downhill side, where the pier stands least deep.',
  'stand-off-is-a-condition': 'This is a condition for wood without treatment. A treated post may stand lower.',
  'strength-of-pad': 'The pad is mixed concrete and can be specified and tested.',
} as const satisfies Readonly<Record<string, string>>
