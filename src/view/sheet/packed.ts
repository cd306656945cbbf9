/** Where blocks come to lie: pages of columns of places in the list. */
export type Packed = readonly (readonly (readonly number[])[])[]

/**
 * Fills columns in order, a block that does not fit the rest of its column begins the next one. Gaps stand between blocks. A block
 * higher than a column gets one of its own.
 *
 * @param heights of the blocks, and `room` of a column, in the same unit
 */
export function packed(heights: readonly number[], room: number, gap: number, columns = 2): Packed {
  const all: number[][] = []
  let left = 0
  heights.forEach((height, i) => {
    const column = all.at(-1)
    if (column && height + gap <= left) {
      column.push(i)
      left -= height + gap
    } else {
      all.push([i])
      left = room - height
    }
  })
  return Array.from({ length: Math.ceil(all.length / columns) }, (_, page) => all.slice(page * columns, (page + 1) * columns))
}
