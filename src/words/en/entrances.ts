/** What stands on the page before its other pages and folded sections are loaded: their buttons and heads. */
export const entrances = {
  takeAlong: 'Take it along',
  compare: {
    open: 'Side by side',
    loading: 'The comparison is loading.',
  },
  sheet: { open: 'Sheet to print' },
  time: { open: 'Over time', short: 'Time', loading: 'Loading' },
  sure: {
    title: 'How sure',
    help: 'How far the answer moves when soil, concrete and work come out a little different.',
    loading: 'Loading.',
  },
  years: {
    mix: { title: 'Mix and strength', help: 'What water the mix gets, and how strength grows.' },
    life: { title: 'Years of the post', help: 'What rows of evidence say, as a range, and what nobody knows.' },
    cost: { title: 'Cost over the years', help: 'Your own prices, counted over the years.' },
    loading: 'Loading.',
  },
} as const
