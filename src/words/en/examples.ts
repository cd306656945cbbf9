import type { ExampleFile } from '../../state/exampleFiles.ts'

/** Piers that come with the page, to open and look at. */
export const examples = {
  title: 'Examples',
  help: 'Piers of one boat shelter, built in different ways. Each opens as a file does.',
  names: {
    'boat-shelter-mixed': 'Mixed concrete, full height',
    'boat-shelter-mixed-metric': 'Mixed concrete, typed in metric',
    'boat-shelter-bracket': 'Concrete pier with a bracket',
    'boat-shelter-steep-bank': 'Bracket on a steep bank',
    'boat-shelter-collar': 'Concrete collar with soil above',
    'boat-shelter-bag-at-foot': 'One bag of dry mix at the foot',
    'boat-shelter-dry-pour': 'Hole of dry mix, watered from the top',
    'boat-shelter-dry-pour-cored': 'Dry mix, cored and tested',
    'boat-shelter-stone-on-pad': 'Packed stone on a pad',
    'boat-shelter-flowable': 'Flowable fill round a round post',
  } satisfies Record<ExampleFile, string>,
} as const
