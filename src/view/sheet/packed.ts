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
  return Array.from({ length: Math.ceil(filled.length / columns) }, (_, page) => filled.slice(page * columns, (page + 1) * columns))
}
