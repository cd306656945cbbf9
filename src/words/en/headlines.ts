/** The numbers and links that a page shows as it opens: the main answers, and what may govern. The others are in `answers.ts`. */
export const headlines = {
  'hole-volume': { label: 'Hole', plain: 'Room in the hole below the ground.' },
  'mix-volume': {
    label: 'Concrete or mix',
    plain: 'All that is poured for one pier, less the post and the steel: in the hole, and above the ground.',
  },
  'pier-weight': {
    label: 'Pier weight holding it down',
    plain: 'What hangs on the post and may be counted: concrete, post and steel, lighter where they stand in water.',
  },
  'wood-below-grade': { label: 'Wood below grade', plain: 'The longest line of wood that is below the ground.' },
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
  'user-friction-and-weight': { label: 'Your side friction and weight', plain: 'The friction that you entered, plus 0.6 of the weight.' },
  'clay-adhesion-and-weight': { label: 'Clay adhesion and weight', plain: 'Clay sticks to the side of the pier, and the pier is heavy.' },
  'cone-over-ledge': {
    label: 'Soil cone and weight',
    plain: 'A wide foot lifts a cone of soil with it. The soil and the pier are counted once, at 0.6 of their weight.',
  },
  'breakout-of-ledge': {
    label: 'Breakout of the wide foot',
    plain: 'The ground over a wide foot breaks out with it. Soil and pier are inside this number, so no weight is added.',
  },
  'block-of-piers': {
    label: 'One of a group of piers',
    plain:
      'Piers closer than three widths pull on the same ground. The code takes two thirds of the block that they share, if that is less.',
  },
  'bar-through-post': {
    label: 'Bar through the post',
    plain: 'The bar holds by pressing on the wood and on the concrete. The weakest way in which it could give is used.',
  },
  'bracket-bolts': { label: 'Bolts in the bracket', plain: 'The bolts hold by pressing on the wood and on the steel.' },
  'bracket-legs-hold': {
    label: 'Legs of the bracket in the concrete',
    plain: 'Bars must reach far enough into the concrete for their ends to grip. For flat legs no code says how far.',
  },
  'bar-shear': { label: 'Bar sheared off', plain: 'The steel of the bar itself, cut at both faces of the post.' },
  'post-net-tension': { label: 'Post pulled apart', plain: 'Wood that is left beside the hole, in tension along the grain.' },
  'post-tear-out': { label: 'Torn out of the post end', plain: 'The wood below the bar or bolt could shear out along the grain.' },
  'concrete-breakout': {
    label: 'Cone out of the concrete',
    plain: 'The pull could lift a cone out of the top of the pier. A narrow pier has less room for that cone.',
  },
  'bell-neck': {
    label: 'Bell torn off at its neck',
    plain: 'What the bell holds must be carried by the shaft right over it, or the bell stays down and the shaft comes up.',
  },
  'concrete-tension': {
    label: 'Pier parting under the pull',
    plain: 'All that hangs below the bar or bracket must be carried through the concrete at that level.',
  },
} as const satisfies Readonly<Record<string, Readonly<{ label: string; plain: string }>>>
