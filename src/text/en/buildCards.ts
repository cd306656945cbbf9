import type { steps } from './practice.ts'

/** What to check in a step of building, what goes wrong there, and what nobody sees any more after it. `inspect`: somebody looks before it goes on. */
export type BuildCard = Readonly<{ check: string; wrong: string; hidden?: string; inspect?: true }>

/** Common practice, no source. Tolerances are those of the drawing. */
export const buildCards: Readonly<Record<keyof typeof steps, BuildCard>> = {
  drill: {
    check: 'Measure the width, the depth on the low side, and how plumb the hole is.',
    wrong: 'The auger wears and the hole comes out too narrow. Or it stops at a stone, too shallow for frost.',
  },
  'clean-out': {
    check: 'Step on it or tamp it: the bottom is firm. Measure the depth again.',
    wrong: 'Loose soil stays in the bottom. The pier settles on it and holds less.',
    hidden: 'The bottom of the hole',
    inspect: true,
  },
  'place-base': {
    check: 'It is as thick as drawn, level and packed.',
    wrong: 'A bed that is thrown in loose takes depth away and settles.',
    hidden: 'The soil under the base',
  },
  'set-and-brace': {
    check: 'The post is plumb both ways, in line, in the middle, and off the side of the hole.',
    wrong: 'The post leans or stands at the edge. One side is left with little concrete.',
    inspect: true,
  },
  'empty-bags': {
    check: 'Count the bags. The mix lies all round the post, and the bar is in.',
    wrong: 'All of it falls on one side, or the bar is left out. Nobody can tell how strong it gets.',
    hidden: 'The foot of the post, the bar and the mix',
  },
  'backfill-in-lifts': {
    check: 'Each lift is thin and tamped before the next one.',
    wrong: 'All the soil goes back at once. It sinks later and holds water round the post.',
    hidden: 'The fill below and the post in it',
  },
  'slope-soil-away': {
    check: 'Water poured on the ground runs off on every side.',
    wrong: 'The soil sinks and a dish is left round the post.',
  },
  'place-bar': {
    check: 'Size, length, height over the foot, and cover to the soil at both ends.',
    wrong: 'The bar is left out, is too short, or sticks into the soil.',
    inspect: true,
  },
  'pour-dry': {
    check: 'Each lift is packed, and the bar is covered all round.',
    wrong: 'Loose mix bridges over the bar and leaves hollows.',
    hidden: 'The bar, the foot of the post and the sides of the hole',
  },
  'wet-from-top': {
    check: 'Write down how much water went in and how fast.',
    wrong: 'The water stays near the top, and mix at the foot stays dry.',
  },
  'finish-top': {
    check: 'It falls away from the post on every side and ends above the uphill ground.',
    wrong: 'The top is flat, dished or too low. Water stands at the wood.',
  },
  'place-mixed': {
    check: 'Read the ticket, the strength and the time. Fill from the bottom up.',
    wrong: 'Soil falls in, or the fill stops too low.',
    hidden: 'The bar, the foot of the post, and the sides and bottom of the hole',
  },
  consolidate: {
    check: 'Air stops coming up, and the level no longer sinks.',
    wrong: 'Hollows stay under the bar and at the post.',
  },
  cure: {
    check: 'It is kept wet and covered. Note the day and the cold of the night.',
    wrong: 'It dries out or freezes in its first days, or is loaded too soon.',
  },
  'remove-brace': {
    check: 'The post is still plumb.',
    wrong: 'Braces come off on the next day and wind works the post loose.',
  },
  'pour-flowable': {
    check: 'The post is held down and stays plumb while the fill rises.',
    wrong: 'The post floats up or drifts to the side.',
    hidden: 'The bar, the foot of the post and the sides of the hole',
  },
  'place-pad': {
    check: 'It lies level on firm, clean ground and is as thick as drawn.',
    wrong: 'It lies on loose soil, or not flat, and cracks.',
    hidden: 'The bottom of the hole',
    inspect: true,
  },
  'granular-in-lifts': {
    check: 'Each lift is 8 in or less and packed before the next one.',
    wrong: 'The hole is filled at once. The stone settles and the post gets loose.',
    hidden: 'The pad, the bar and the foot of the post',
  },
  'place-vertical-bars': {
    check: 'Number and size, on chairs, with cover to the soil on all sides.',
    wrong: 'Bars lean on the soil and rust.',
    inspect: true,
  },
  'set-bracket': {
    check: 'It is the bracket on the drawing, and its sheet is at hand.',
    wrong: 'Another bracket is used, with another rating.',
  },
  'set-bracket-in-wet-concrete': {
    check: 'In line, in the middle, at the right height, held by a template.',
    wrong: 'It is set too late, into stiff mix, and hollows stay round its legs.',
    hidden: 'The legs of the bracket',
  },
  'check-bracket-level': {
    check: 'Level, plumb and in line, before the mix sets.',
    wrong: 'It sinks or tips while nobody looks.',
    inspect: true,
  },
  'set-post-on-bracket': {
    check: 'All bolts are in and tight, and the gap under the post is open.',
    wrong: 'Bolts are left out, or the end of the post stands on wet concrete.',
  },
  'drill-and-clean-anchor-holes': {
    check: 'Depth and width of each hole. Dust is blown and brushed out.',
    wrong: 'Dust stays in the hole and the anchor slips.',
    hidden: 'The inside of the anchor holes',
  },
  'set-anchors': {
    check: 'Type, depth, distance to the edge, and how tight.',
    wrong: 'Too near the edge, or not tightened as the rating asks.',
    inspect: true,
  },
  'slot-and-treat-post-end': {
    check: 'The slot fits the plate, and all cut wood is coated.',
    wrong: 'Bare cut wood takes in water.',
    hidden: 'The inside of the slot',
  },
}
