/** Job files that come with the page, in `public/examples`, in the order in which they are offered. */
export const exampleFiles = [
  'boat-shelter-mixed',
  'boat-shelter-mixed-metric',
  'boat-shelter-bracket',
  'boat-shelter-steep-bank',
  'boat-shelter-collar',
  'boat-shelter-bag-at-foot',
  'boat-shelter-dry-pour',
  'boat-shelter-dry-pour-cored',
  'boat-shelter-stone-on-pad',
  'boat-shelter-flowable',
] as const

export type ExampleFile = (typeof exampleFiles)[number]
