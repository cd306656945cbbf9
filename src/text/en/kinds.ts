import type { BracketId, FillId } from '../../core/model/spec.ts'

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

export const brackets: Readonly<Record<BracketId, KindText>> = {
  'bar-legs': {
    label: 'Side plates on hooked bars',
    short: 'Two No. 4 bars cast in',
    what: 'Two steel plates hold the post. Two reinforcing bars under them reach down into the concrete, each with a hook at its end.',
    strength: 'Codes say how far hooked bars must reach, so their hold can be worked out.',
    weakness: 'The welds between bars and plates are the work of the maker, and no number here speaks of them.',
    ask: 'How deep do the hooks reach, and who welded them?',
  },
  'side-plates': {
    label: 'Side plates on a base',
    short: 'One on each side of the post',
    what: 'Two steel plates rise from the concrete, one on each side of the post, with bolts through both.',
    strength: 'Bolts are held by steel on both sides of the wood.',
    weakness: 'Plates can hold water against the wood if they fit too tight. For flat legs in concrete no code gives a value.',
    ask: 'Is there a gap under the post, and a rating from tests?',
  },
  'knife-plate': {
    label: 'Hidden knife plate',
    short: 'In a slot in the post',
    what: 'One upright plate sits in a slot cut in the post. Bolts or pins pass through both.',
    strength: 'Steel is out of sight, and wood shields it.',
    weakness: 'The slot weakens the post end and can take in water from the top.',
    ask: 'Is the cut wood treated again after slotting?',
  },
  'base-plate': {
    label: 'Base plate, anchored later',
    short: 'Bolted to hard concrete',
    what: 'A steel base is bolted to the concrete once that is hard.',
    strength: 'It can be placed exactly, and changed later.',
    weakness: 'Its hold depends on the anchors and on how the holes were drilled and cleaned.',
    ask: 'Which anchors, how deep, and who checked them?',
  },
}
