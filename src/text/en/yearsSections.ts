/** Heads of the sections of mix, years and cost, there before they are opened. */
export const yearsSections = {
  mix: { title: 'Mix and strength', help: 'What water the mix gets, and how strength grows.' },
  life: { title: 'Years of the post', help: 'What rows of evidence say, as a range, and what nobody knows.' },
  cost: { title: 'Cost over the years', help: 'Your own prices, counted over the years.' },
  loading: 'Loading.',
} as const
