import type { ExampleFile } from '../../state/exampleFiles.ts'

/** Piers that come with the page, to open and look at. */
export const examples = {
  title: 'Examples',
  help: 'Piers of one boat shelter, built in different ways. Each opens as a file does. The first three meet every check that is asked of them; the others show a fault.',
  names: {
    'boat-shelter-mixed': 'Mixed concrete, full height',
    'boat-shelter-mixed-metric': 'Mixed concrete, typed in metric',
    'boat-shelter-bracket': 'Concrete pier with a bracket',
    'boat-shelter-steep-bank': 'Bracket on a steep bank, legs too short',
    'boat-shelter-collar': 'Concrete collar, too little hold below frost',
    'boat-shelter-bag-at-foot': 'One bag of dry mix at the foot, bar in soil',
    'boat-shelter-dry-pour': 'Dry mix watered from the top, above frost',
    'boat-shelter-dry-pour-cored': 'Dry mix, cored, above frost',
    'boat-shelter-stone-on-pad': 'Packed stone on a pad, post not held down',
    'boat-shelter-flowable': 'Flowable fill, bar in weak fill',
  } satisfies Record<ExampleFile, string>,
} as const
