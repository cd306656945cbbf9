let newest = 0

/** A number for one opening of a pier. Undo brings pier and lineage back together, so no two openings may share one. */
export const newLineage = (): number => ++newest
