/** What goes wrong, what to ask, what to mind: keys of the kinds' records. */
export const cautions = {
  'dry-mix-not-verifiable':
    "The strength of mix placed dry can't be verified. In a trial of 2003, dry mix buried in sand and kept moist could get as strong as mixed concrete. Nobody has tested loose mix wetted from the top in clay. Packing, an even mix and water in every part decide.",
  'backfill-not-listed':
    'The code lists concrete, low-strength fill and packed granular soil as fills round a post. Native soil thrown back is not on that list.',
  'flowable-fill-is-weak': 'Flowable fill is made weak so that it can be dug out again. Ask the code official what it may carry.',
  'granular-holds-water-in-clay': 'Stone drains only if the soil below it drains. In tight clay the hole turns into a sump.',
  'post-not-tied-to-pad': 'The post only stands on the pad. Nothing ties it down to the pad when wind lifts.',
  'bracket-rating': 'A bracket needs its own tested rating for uplift and for sideways load. The numbers here do not stand in for it.',
  'brace-frame-sideways': 'A post on a bracket has a hinge at its foot. The frame above needs bracing against sideways loads.',
  'top-joint-takes-water':
    'Wood shrinks as it dries, and a thin gap opens between wood and concrete. Water that stands on the top runs into it.',
  'shrinkage-gap':
    'No field study shows that concrete rots posts, and none shows that it keeps them sound. The gap at the top is the place to watch.',
  'wood-in-soil-at-groundline': 'Wood and soil meet near the ground, where there is both air and water. Decay is most common there.',
  'anchors-need-evaluation': 'Anchors set after the pour need their own evaluated rating, and clean holes of the right depth.',
  'gap-under-post': 'Keep the gap under the post open, so that the end of the wood can dry.',
  'slot-needs-treatment': 'A slot cuts through the treated shell. Coat the cut wood with field preservative.',
  'earthquake-not-covered': 'Earthquake is not covered. Where it counts, the drawing and its engineer decide.',
  'loads-are-estimated':
    'The loads are an estimate from a few figures of the roof. The drawing of the engineer goes before it. It is no load to build from.',
} as const satisfies Readonly<Record<string, string>>

/** Construction steps, in the words that a crew uses. */
export const steps = {
  drill: 'Drill the hole plumb, to the full width and depth.',
  'clean-out': 'Take out loose soil at the bottom, tamp it, and measure the depth again.',
  'place-base': 'Place the gravel or pad at the bottom, as thick as drawn.',
  'set-and-brace': 'Set the post plumb and brace it both ways. Have the hole looked at before it is filled.',
  'empty-bags': 'Empty the bags round the foot and spread the mix evenly.',
  'backfill-in-lifts': 'Put soil back in thin lifts and tamp each one.',
  'slope-soil-away': 'Slope the soil away from the post, so that water runs off.',
  'place-bar': 'Push the bar through its hole and centre it. Coat the drilled wood with field preservative.',
  'pour-dry': 'Fill the hole with dry mix in lifts and pack each one.',
  'wet-from-top': 'Pour water slowly and evenly until the mix takes no more.',
  'finish-top': 'Shape the top so that it falls away from the post, higher than the uphill ground.',
  'place-mixed': 'Place the mixed concrete from the bottom up, without soil falling in.',
  consolidate: 'Rod or vibrate it, so that it fills round post and bar.',
  cure: 'Keep it moist and warm while it hardens. Load it when the engineer and the inspector say so.',
  'remove-brace': 'Take the braces off when the concrete has hardened.',
  'pour-flowable': 'Pour the flowable fill and hold the post down, as it may float.',
  'place-pad': 'Place the concrete pad on firm, clean ground.',
  'granular-in-lifts': 'Pack crushed stone in lifts of 8 in or less round the post.',
  'place-vertical-bars': 'Set the upright bars on chairs, with cover to the soil.',
  'set-bracket': 'Set the bracket as its maker and the drawing say.',
  'set-bracket-in-wet-concrete': 'Push the bracket into the wet concrete, in line and held by a template.',
  'check-bracket-level': 'Check that it is level, plumb and at the right height before the mix sets.',
  'set-post-on-bracket': 'Set the post on the bracket and put in all bolts.',
  'drill-and-clean-anchor-holes': 'Drill the anchor holes and clean out the dust.',
  'set-anchors': 'Set the anchors and tighten them as their rating asks.',
  'slot-and-treat-post-end': 'Cut the slot in the post and coat the cut wood with field preservative.',
} as const satisfies Readonly<Record<string, string>>
