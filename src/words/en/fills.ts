import type { FillId } from '../../core/model/spec.ts'

export type KindText = Readonly<{
  label: string
  /** A few words for a card. */
  short: string
  what: string
  strength: string
  weakness: string
  /** What a customer may ask of whoever builds it. */
  ask: string
}>

export const fills: Readonly<Record<FillId, KindText>> = {
  'dry-bag-at-foot': {
    label: 'Dry bag at the foot',
    short: 'Bagged mix, soil on top',
    what: 'One or more bags of dry mix are emptied round the foot of the post. Soil goes back on top.',
    strength: 'Quick and cheap. Treated posts set in soil stood for decades in long field trials.',
    weakness: 'Nobody can tell how strong the mix gets, and loose soil adds no grip that a code lets you count.',
    ask: 'How is the soil tamped, and what holds the post down when wind lifts the roof?',
  },
  'dry-full-height': {
    label: 'Dry mix, wetted in the hole',
    short: 'Water poured from the top',
    what: 'The hole is filled with dry bagged mix. Water is poured on top, or soil water does the rest.',
    strength: 'In a 2003 trial, dry mix buried in sand could get as strong as mixed concrete.',
    weakness: 'Water and packing differ from place to place in the hole, so its strength is not known without cores.',
    ask: 'How much water went in, how was it packed, and will anyone take cores?',
  },
  'mixed-full-height': {
    label: 'Mixed concrete, full height',
    short: 'From the bottom to a crown',
    what: 'Concrete is mixed first, then placed round the post from the bottom to above the ground.',
    strength: 'Strength can be specified, ticketed and tested. It grips the undisturbed sides of the hole.',
    weakness: 'The joint between wood and concrete at the top can take in water. A crown sheds most of it.',
    ask: 'What strength is on the ticket, and is the top crowned above the uphill ground?',
  },
  'mixed-collar': {
    label: 'Mixed concrete collar',
    short: 'Round the foot, soil on top',
    what: 'Mixed concrete is placed round the lower part of the post. Soil goes back above it.',
    strength: 'Known concrete where the bar is, with less of it to buy.',
    weakness: 'The wood stands in soil in the zone near the ground where decay is most common.',
    ask: 'How high is the collar, and how is the soil above it tamped?',
  },
  'mixed-bracket-pier': {
    label: 'Concrete pier with bracket',
    short: 'All wood above the ground',
    what: 'The hole is filled with mixed concrete. A steel bracket on top carries the post above the ground.',
    strength: 'No wood below grade. The post can be looked at, and can be changed without digging.',
    weakness: 'The bracket is the weak point for sideways loads, and steel needs care against rust.',
    ask: 'What is the bracket rated for, and who braces the frame sideways?',
  },
  'granular-on-pad': {
    label: 'Packed gravel on a pad',
    short: 'Stone packed in thin lifts',
    what: 'The post stands on a concrete pad. Crushed stone is packed round it in thin lifts.',
    strength: 'No concrete touches the side of the wood, and the post can be pulled and replaced.',
    weakness: 'Stone grips the post little against uplift. In tight clay the hole can hold water.',
    ask: 'How thin are the lifts, what packs them, and where does the water go?',
  },
  'flowable-fill': {
    label: 'Flowable fill',
    short: 'Weak fill, poured',
    what: 'A weak, flowing mix of cement, sand and water fills the hole round the post.',
    strength: 'It runs into every gap and needs no tamping. It can be dug out later.',
    weakness: 'It is weak on purpose. A bar in it bears on little.',
    ask: 'What strength was ordered, and may the code official count it?',
  },
}
