/**
 * What would make a link verifiable that is not counted, by the reason why not. Facts that would have to be there, never
 * advice to build in a certain way.
 */
export const verifiable = {
  'weight-of-dry-mix': 'Cores from the mix as it stands, tested. Or mix that is wetted and mixed before it is placed.',
  'weight-of-fill-not-tied': 'Concrete that is tied to the post by a bar.',
  'friction-of-dry-mix': 'Cores that show sound mix from top to bottom, out to the soil.',
  'friction-of-loose-backfill': 'Concrete cast against ground that was not dug.',
  'friction-of-granular-fill': 'Concrete cast against ground that was not dug, or a pull-out test by an engineer.',
  'bar-in-dry-mix': 'Cores from the mix at the level of the bar, tested. Or mixed concrete round the bar.',
  'bar-in-soil': 'Mixed concrete round the bar, so that the bar bears on something with a known strength.',
  'bar-in-flowable-fill': 'Mixed concrete round the bar.',
  'strength-of-dry-mix': 'Three cores from the mix as it stands, tested. Or mixed concrete with a known strength.',
  'strength-of-flowable-fill': 'A strength on the ticket, and an engineer who counts on it.',
  'clay-exclusions-leave-nothing': 'A deeper pier, or weight alone.',
  'no-bar': 'A bar through the post, in mixed concrete.',
  'bar-outside-concrete': 'Concrete round every bar.',
  'bar-without-cover': 'A wider hole, so that a bar fits with 3 in of concrete kept at its ends.',
  'dowel-too-near-end': 'More post below the bar or bolt.',
  'outside-yield-range': 'Sizes within the range of the published formulas, or a test.',
  'legs-too-short': 'Legs that reach deeper, or a rating of the bracket.',
  'flat-legs-outside-code': "The bracket maker's own evaluation report, entered as a rating. Or legs of reinforcing bars.",
  'plain-concrete-tension': 'Upright bars through this level that reach their development length above it and below it.',
  'vertical-bars-too-short':
    'Bars that reach the development length on both sides of this level: longer or thinner bars, or a connection higher up in the pier.',
  'concrete-around-post-too-weak': 'Concrete of 2,000 psi or more around the post.',
  'concrete-below-code': 'Concrete of 2,500 psi or more.',
  'hinge-passes-no-moment': 'The push that the braced frame brings to the bracket, entered at the height of the bracket.',
  'anchors-need-evaluation': "The anchor maker's own evaluation report, entered as a rating.",
} as const satisfies Readonly<Record<string, string>>
