/** Longest piece of foreign text that an issue repeats [characters]. */
export const longestShown = 80

/** Any value of a document as a short text for an issue. Never throws, whatever the value calls itself. */
export const shown = (value: unknown): string =>
  (typeof value === 'string' ? value : (JSON.stringify(value) ?? 'undefined')).slice(0, longestShown)
