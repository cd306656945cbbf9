/** The one button of the page that leads to the comparison; all its other words come with it. */
export const compareEntry = {
  open: 'Side by side',
  loading: 'The comparison is loading.',
} as const
