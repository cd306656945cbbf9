/** Where blocks come to lie: pages of columns of places in the list. */
export type Packed = readonly (readonly (readonly number[])[])[]

/**
 * Fills columns in order: a block goes into the first column, from the one before the last on, that still has room, else it begins a
 * new one. A block higher than a column gets one of its own.
 *
 * @param heights of the blocks, `room` of a column and `gap` between two blocks, all in the same unit
 */
export function packed(heights: readonly number[], room: number, gap: number, columns = 2): Packed {
  const all: { places: number[]; left: number }[] = []
  heights.forEach((height, i) => {
    const open = all.slice(-2).find(({ left }) => height + gap <= left)
    if (open) {
      open.places.push(i)
      open.left -= height + gap
    } else all.push({ places: [i], left: room - height })
  })
  const filled = all.map(({ places }) => places)
  const last = filled.at(-1)
  if (last && filled.length % columns === 1 && last.length > 1) filled.splice(-1, 1, ...halved(last, heights))
  return Array.from({ length: Math.ceil(filled.length / columns) }, (_, page) => filled.slice(page * columns, (page + 1) * columns))
}

/** The blocks of one column in two that are as alike in height as can be. */
function halved(places: readonly number[], heights: readonly number[]): [number[], number[]] {
  const high = (some: readonly number[]): number => some.reduce((sum, place) => sum + (heights[place] ?? 0), 0)
  const cuts = places.slice(1).map((_, i) => i + 1)
  const uneven = (at: number): number => Math.max(high(places.slice(0, at)), high(places.slice(at)))
  const at = cuts.reduce((best, cut) => (uneven(cut) < uneven(best) ? cut : best))
  return [places.slice(0, at), places.slice(at)]
}
