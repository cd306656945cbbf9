/** Every number and every check by its id: a name, and one plain sentence. */
export const answers = {
  // Main answers.
  'hole-volume': { label: 'Hole', plain: 'Room in the hole below the ground.' },
  'mix-volume': { label: 'Mix in the hole', plain: 'Concrete or mix in one pier, less the post and the steel.' },
  'pier-weight': {
    label: 'Weight on the post',
    plain: 'What hangs on the post and may be counted: concrete, post and steel, lighter where they stand in water.',
  },
  'wood-below-grade': { label: 'Wood below grade', plain: 'The longest line of wood that is below the ground.' },

  // Pier to ground.
  'friction-and-weight': {
    label: 'Side friction and weight',
    plain: 'The ground grips the side of the pier, and the pier is heavy. A low value is used for the grip.',
  },
  'rational-friction-and-weight': {
    label: 'Friction from the boring, and weight',
    plain: 'Friction worked out from the blow count of a boring, plus 0.6 of the weight. An engineer decides.',
  },
  'depth-friction-and-weight': {
    label: 'Friction by depth, and weight',
    plain: 'An older rule for deep shafts, high near the surface, plus 0.6 of the weight. An engineer decides.',
  },
  'beta-by-depth': { label: 'Beta by depth', plain: 'Friction for each unit of soil pressure, by an older rule for deep shafts.' },
  'side-friction-rational-ultimate': { label: 'Friction from the boring', plain: 'Grip of the soil on the side, before its factor.' },
  'side-friction-rational-allowable': { label: 'Friction from the boring, factor taken off', plain: 'With wind, the code takes half.' },
  'side-friction-by-depth-ultimate': { label: 'Friction by depth', plain: 'Grip of the soil on the side, before its factor.' },
  'side-friction-by-depth-allowable': { label: 'Friction by depth, factor taken off', plain: 'With wind, the code takes half.' },
  'user-friction-and-weight': { label: 'Your side friction and weight', plain: 'The friction that you entered, plus 0.6 of the weight.' },
  'presumptive-bound': {
    label: 'Code friction',
    plain: 'The code gives a friction for piers that are pushed down. It is shown for scale and is never counted against uplift.',
  },
  'allowable-soil-uplift': {
    label: 'Allowable, pier to ground',
    plain: 'Side friction with its factor taken off, plus 0.6 of the weight.',
  },
  'clay-adhesion-and-weight': { label: 'Clay adhesion and weight', plain: 'Clay sticks to the side of the pier, and the pier is heavy.' },
  'cone-over-ledge': {
    label: 'Soil cone and weight',
    plain: 'A wide foot lifts a cone of soil with it. The soil and the pier are counted once, at 0.6 of their weight.',
  },
  'breakout-of-ledge': {
    label: 'Breakout of the wide foot',
    plain: 'The ground over a wide foot breaks out with it. Soil and pier are inside this number, so no weight is added.',
  },
  'soil-cone': { label: 'Volume of the cone', plain: 'Soil over the wide foot, out to a slope of the rule.' },
  'cone-soil-weight': { label: 'Weight of the soil cone', plain: 'The cone less the pier inside it, times the weight of the soil.' },
  'cone-and-pier-weight': { label: 'Cone and pier', plain: 'Soil in the cone and the pier, each counted once.' },
  'breakout-factor-sand': { label: 'Breakout factor, sand', plain: 'Grows with depth and with the friction angle, up to a limit.' },
  'breakout-sand': { label: 'Breakout in sand', plain: 'Load at which a wide foot breaks out of sand.' },
  'breakout-clay': { label: 'Breakout in clay', plain: 'Load at which a wide foot breaks out of clay.' },
  'clay-adhesion': { label: 'Clay adhesion', plain: 'Grip of clay on the side, along the length that counts.' },
  'clay-adhesion-ultimate': { label: 'Clay adhesion', plain: 'Grip of clay on the side, before its factor.' },
  'clay-adhesion-allowable': { label: 'Clay adhesion, factor taken off', plain: 'With wind, the code takes half of what was worked out.' },
  'side-friction-lower-bound-ultimate': {
    label: 'Side friction',
    plain: 'Grip of ground that was not dug, along the length that counts, before its factor.',
  },
  'side-friction-lower-bound-allowable': {
    label: 'Side friction, factor taken off',
    plain: 'With wind, the code takes half of the friction that was worked out.',
  },
  'beta-lower-bound': { label: 'Beta', plain: 'A low value of friction for each unit of soil pressure, from the friction angle.' },
  'user-friction': { label: 'Your side friction', plain: 'The friction that you entered, over the area that counts.' },
  'presumptive-friction': { label: 'Code friction on each unit of area', plain: 'A sixth of the bearing value, and no more than 500 psf.' },
  'presumptive-friction-bound': { label: 'Code friction over the side', plain: 'That friction over the whole length. No more than this.' },
  'factored-dead-load': { label: 'Weight that counts', plain: 'Codes let you count 0.6 of a weight against wind uplift.' },

  // Post to concrete.
  'bar-through-post': {
    label: 'Bar through the post',
    plain: 'The bar holds by pressing on the wood and on the concrete. The weakest way in which it could give is used.',
  },
  'bracket-bolts': { label: 'Bolts in the bracket', plain: 'The bolts hold by pressing on the wood and on the steel.' },
  'connection-allowable': {
    label: 'Allowable, post to concrete',
    plain: 'The value of one bar or bolt times their number, with factors for wind, wet wood and spacing.',
  },
  'yield-value': { label: 'One bar or bolt', plain: 'The least of all the ways below in which the bar can bend or the wood can crush.' },
  'yield-mode-Im': { label: 'Mode Im', plain: 'The wood of the post crushes along the whole bar.' },
  'yield-mode-Is': { label: 'Mode Is', plain: 'What the bar bears on at the sides of the post crushes.' },
  'yield-mode-IIIs': { label: 'Mode IIIs', plain: 'The bar bends in the post and crushes what it bears on at the sides.' },
  'yield-mode-IV': { label: 'Mode IV', plain: 'The bar bends in the post and at both sides.' },
  'bar-bearing-length': { label: 'Bar in concrete on each side', plain: 'Length of bar outside the post, less the cover to the soil.' },
  'end-distance-factor': { label: 'End distance factor', plain: 'Near the end of the post the wood can split, so the bar holds less.' },
  'spacing-factor': { label: 'Spacing factor', plain: 'Bars or bolts close to each other hold less.' },
  'group-action': { label: 'Group factor', plain: 'Bars or bolts in a row do not share a load evenly.' },

  'bar-shear': { label: 'Bar sheared off', plain: 'The steel of the bar itself, cut at both faces of the post.' },
  'bar-shear-allowable': { label: 'Allowable, bar sheared off', plain: 'The shear strength of the steel, less its factor.' },

  // Post.
  'post-net-tension': { label: 'Post pulled apart', plain: 'Wood that is left beside the hole, in tension along the grain.' },
  'net-tension': {
    label: 'Allowable, post pulled apart',
    plain: 'Tension value of the wood, times the wood that is left beside the hole.',
  },
  'post-tear-out': { label: 'Torn out of the post end', plain: 'The wood below the bar or bolt could shear out along the grain.' },
  'row-tear-out': { label: 'Allowable, torn out of the end', plain: 'Shear value of the wood, times the two planes below the bar.' },

  // Concrete.
  'concrete-breakout': {
    label: 'Cone out of the concrete',
    plain: 'The pull could lift a cone out of the top of the pier. A narrow pier has less room for that cone.',
  },
  'round-pier-breakout': { label: 'Breakout of a round pier', plain: 'Nominal strength of the cone that fits in the pier.' },
  'breakout-allowable': { label: 'Allowable, cone of concrete', plain: 'Nominal strength less its factors.' },
  'concrete-tension': {
    label: 'Pier parting under the pull',
    plain: 'All that hangs below the bar or bracket must be carried through the concrete at that level.',
  },
  'parting-level': { label: 'Level where it could part', plain: 'Depth below the ground of the plane just under the bar or bracket.' },
  'weight-below-plane': {
    label: 'Weight below that level',
    plain: 'This weight and the friction below it are lost if the pier parts there.',
  },
  'plain-tension': { label: 'Plain concrete in tension', plain: 'A screening number. Codes give plain concrete no tension value.' },
  'plain-tension-allowable': { label: 'Allowable, plain concrete', plain: 'The screening number, brought to the level of the wind load.' },
  'development-straight': {
    label: 'Development length',
    plain: 'Length of straight bar that must be in the concrete to reach its full strength.',
  },
  'bar-tension': { label: 'Upright bars in tension', plain: 'Steel area times the working stress.' },
  'vertical-bar-tension': { label: 'Allowable, upright bars', plain: 'Less where the bars are too short to reach their full strength.' },

  // Depth and stand-off.
  'bearing-depth-downhill': { label: 'Depth on the downhill side', plain: 'From the ground at the downhill edge down to what bears.' },
  'frost-depth': { label: 'Frost depth', plain: 'The pier should bear at or below the depth to which the ground freezes.' },
  'least-depth': { label: 'Least depth of a footing', plain: 'Codes ask that a footing bears at least this deep.' },
  'stand-off-above-concrete': {
    label: 'Wood above the concrete',
    plain: 'With this gap the code lets some posts go without treatment. It is no duty to stand the post off.',
  },
  'stand-off-above-concrete-least': { label: 'least gap for wood without treatment', plain: 'From the code named below.' },
  'stand-off-above-earth': {
    label: 'Wood above the ground',
    plain: 'With this height the code lets some posts go without treatment. It is no duty to stand the post off.',
  },
  'stand-off-above-earth-least': { label: 'least height for wood without treatment', plain: 'From the code named below.' },
} as const satisfies Readonly<Record<string, Readonly<{ label: string; plain: string }>>>
