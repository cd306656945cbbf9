/** The button that leads to the printed sheet; all its other words come with it. */
export const sheetEntry = { open: 'Sheet to print' } as const
