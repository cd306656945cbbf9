/** The way into the time strip. */
export const timeEntry = { open: 'Over time', short: 'Time', loading: 'Loading' } as const
