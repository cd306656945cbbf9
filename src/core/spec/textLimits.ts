/** Longest name and note of a job [characters]. */
export const longestName = 120
export const longestNote = 4000
