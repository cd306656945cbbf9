import type { BracketId } from '../../core/model/spec.ts'
import type { KindText } from './fills.ts'

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
