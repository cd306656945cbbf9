import type { CautionId } from '../../core/model/saidIds.ts'

/** Shown on every pier, on screen and on paper. Danger first. */
const standing: readonly Readonly<{ id: string; short: string; long: string }>[] = [
  {
    id: 'not-a-design',
    short: 'Preliminary. Not a design.',
    long: 'These are preliminary numbers and not a design. Local code, your permit drawing and a licensed engineer decide.',
  },
  {
    id: 'call-before-you-dig',
    short: 'Call before you dig.',
    long: 'Call 811 (in the United States) some days before you dig, so that buried lines are marked.',
  },
  {
    id: 'open-holes',
    short: 'Cover open holes.',
    long: 'An open hole can cave in, and people fall in. Cover it, keep soil piles 2 ft away, and never go into a deep hole without shoring.',
  },
  {
    id: 'cement-burns',
    short: 'Wet cement burns skin.',
    long: 'Wet cement burns, often with no pain at first. Wear gloves and boots, change wet clothes, and wash it off at once.',
  },
  {
    id: 'silica-dust',
    short: 'Do not breathe the dust.',
    long: 'Dust from dry mix and cut concrete holds silica, which harms lungs. Keep it wet or wear a fitted mask.',
  },
]

/** What to mind in one pier, by the keys of the kinds’ records. */
const ofPiers = {
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
} as const satisfies Readonly<Record<CautionId, string>>

/** What may hurt people or cost a pier. */
export const cautions = { standing, ofPiers }
