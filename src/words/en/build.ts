import type { StepCheckId } from '../../core/model/saidIds.ts'
import type { MistakeId } from '../../core/model/buildStep.ts'
import type { steps } from './steps.ts'

/** What to check at a step of building. Common practice, no source, but where a figure says more. */
const checks = {
  'width-both-ways': 'Measure the width twice, crosswise, at the top and at the bottom.',
  'hole-plumb': 'Hold a level to the wall of the hole: does it go straight down?',
  'depth-downhill': 'Measure the depth on the downhill side, where it is least.',
  'bottom-firm': 'Push a rod into the bottom: it should be firm all over.',
  'depth-again': 'Measure the depth again after cleaning, and take the least.',
  'no-water': 'Take out standing water before anything goes in.',
  'base-thickness': 'Measure the layer after tamping it.',
  'pad-thickness': 'Measure how thick the pad is, and check that its top is level.',
  'post-plumb': 'Check two faces of the post with a level.',
  'post-tag': 'Read the tag on the post: is it treated for the ground?',
  'braced-both-ways': 'Push the post: the braces should hold it both ways.',
  'bar-there': 'See that the bar is through the post.',
  'bar-sticks-out': 'Measure the bar beyond both faces of the post.',
  'bar-cover': 'Measure from the ends of the bar to the soil: 3 in or what the drawing says.',
  'bars-cover': 'Measure from the upright bars to the soil: 3 in or what the drawing says.',
  'cut-wood-coated': 'See that drilled and cut wood is coated.',
  'bags-counted': 'Count the bags.',
  'mix-all-round': 'See that mix lies on all sides of the post.',
  'packed-in-lifts': 'Pack each layer before the next goes in.',
  'water-counted': 'Write down how much water went in.',
  ticket: 'Read the ticket: strength, time of loading, water added.',
  'no-soil-in-mix': 'See that no soil falls into the mix.',
  'no-voids': 'Look for holes along the post and under the bar.',
  'post-held-down': 'Hold the post down: it can float.',
  'thin-lifts': 'Measure each layer before it is packed: 8 in or less.',
  'soil-falls-away': 'Lay a level on the ground: it should fall away on all sides.',
  'top-sheds': 'Pour a cup of water on the top: it should run away from the post.',
  'top-above-uphill': 'See that the rim stands above the ground on the uphill side.',
  'kept-moist': 'Keep it moist.',
  'not-frozen': 'Keep it from freezing, and place nothing on frozen ground.',
  'strong-enough': 'Ask the engineer or the inspector when the braces may go.',
  'bracket-right-way': 'Check which way the bracket faces before it goes in.',
  'bracket-depth': 'Measure how deep the steel goes in.',
  'bracket-line': 'Stretch a string along the row: is the bracket on it?',
  'bracket-level': 'Check level, plumb and height before the mix sets.',
  'gap-open': 'See that the gap under the post is open.',
  'anchor-holes-clean': 'Measure how deep the anchor holes are, after the dust is out.',
  'anchors-tight': 'Tighten each anchor as its rating asks.',
  'all-bolts': 'Count the bolts, nuts and washers.',
} as const satisfies Readonly<Record<StepCheckId, string>>

type MistakeWords = Readonly<{ name: string; what: string; later: string }>

/** Each mistake: its name, what goes wrong, and what nobody sees later. */
const mistakes: Readonly<Record<MistakeId, MistakeWords>> = {
  'undersized-hole': {
    name: 'Hole too narrow',
    what: 'The hole is 2 in narrower than drawn. A narrower pier is lighter and has less wall to hold it.',
    later: 'Once it is full, nobody sees how wide it is below the ground.',
  },
  'loose-bottom': {
    name: 'Loose soil at the bottom',
    what: 'Three inches of loose soil stay in the hole. They press together under load, and the pier is that much shorter.',
    later: 'The first thing placed on it hides it.',
  },
  'off-plumb': {
    name: 'Post off plumb',
    what: 'The post leans 2 degrees to the downhill side. It stands nearer to one wall, and the load on it pushes sideways.',
    later: 'The fill holds it that way. What shows above the ground can be checked with a level.',
  },
  'bar-missed': {
    name: 'Bar left out',
    what: 'No bar goes through the post. Nothing but the grip on the wood then ties it to the fill.',
    later: 'The fill hides whether a bar is there.',
  },
  'bar-too-short': {
    name: 'Bar too short',
    what: 'The bar ends half an inch beyond the post. There is too little of it for the fill to hold.',
    later: 'The fill hides how long the bar is.',
  },
  'bar-too-high': {
    name: 'Bar too high',
    what: 'The bar sits 8 in higher than drawn. Less of the pier is above it to hold it down.',
    later: 'The fill hides where the bar is.',
  },
  'flat-top': {
    name: 'Top left flat',
    what: 'The top has no fall. Water stays on it, at the post.',
    later: 'You can see it as long as the top is bare. Soil heaped on it hides it.',
  },
  'dished-top': {
    name: 'Top dished',
    what: 'The top is an inch lower at the post than at the rim. Water collects at the wood.',
    later: 'You can see it as long as the top is bare. Soil heaped on it hides it.',
  },
  'low-fill': {
    name: 'Filled too low',
    what: 'The fill stops lower than drawn. Soil and water reach wood that should be clear of them.',
    later: 'Soil that washes in hides where the fill ends.',
  },
}

/** What goes wrong at a step of building. Common practice, no source. */
const wrong: Readonly<Record<keyof typeof steps, string>> = {
  drill: 'The auger wears and the hole comes out too narrow. Or it stops at a stone, too shallow for frost.',
  'clean-out': 'Loose soil stays in the bottom. The pier settles on it and holds less.',
  'place-base': 'A bed that is thrown in loose takes depth away and settles.',
  'set-and-brace': 'The post leans or stands at the edge. One side is left with little concrete.',
  'empty-bags': 'All of it falls on one side, or the bar is left out. Nobody can tell how strong it gets.',
  'backfill-in-lifts': 'All the soil goes back at once. It sinks later and holds water round the post.',
  'slope-soil-away': 'The soil sinks and a dish is left round the post.',
  'place-bar': 'The bar is left out, is too short, or sticks into the soil.',
  'pour-dry': 'Loose mix bridges over the bar and leaves hollows.',
  'wet-from-top': 'The water stays near the top, and mix at the foot stays dry.',
  'finish-top': 'The top is flat, dished or too low. Water stands at the wood.',
  'place-mixed': 'Soil falls in, or the fill stops too low.',
  consolidate: 'Hollows stay under the bar and at the post.',
  cure: 'It dries out or freezes in its first days, or is loaded too soon.',
  'remove-brace': 'Braces come off on the next day and wind works the post loose.',
  'pour-flowable': 'The post floats up or drifts to the side.',
  'place-pad': 'It lies on loose soil, or not flat, and cracks.',
  'granular-in-lifts': 'The hole is filled at once. The stone settles and the post gets loose.',
  'place-vertical-bars': 'Bars lean on the soil and rust.',
  'set-bracket': 'Another bracket is used, with another rating.',
  'set-bracket-in-wet-concrete': 'It is set too late, into stiff mix, and hollows stay round its legs.',
  'check-bracket-level': 'It sinks or tips while nobody looks.',
  'set-post-on-bracket': 'Bolts are left out, or the end of the post stands on wet concrete.',
  'drill-and-clean-anchor-holes': 'Dust stays in the hole and the anchor slips.',
  'set-anchors': 'Too near the edge, or not tightened as the rating asks.',
  'slot-and-treat-post-end': 'Bare cut wood takes in water.',
}

/** Words of the steps of building: read when its stretch of time is opened. */
export const build = {
  checks,
  mistakes,
  notice: {
    title: 'Built with mistakes:',
    why: 'Picture and numbers show them. Your inputs, files and links hold the pier as you set it.',
    putRight: 'Build it right',
  },
  wrong,
}
