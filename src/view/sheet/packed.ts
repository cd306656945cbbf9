/** Where blocks come to lie: pages of columns of places in the list. */
export type Packed = readonly (readonly (readonly number[])[])[]

/**
 * Fills columns in order: a block goes into the first column, from the one before the last on, that still has room, else it begins a
 * new one. A block higher than a column gets one of its own.
 *
 * What fits two columns in any way is laid out so, as even as can be.
 *
 * @param heights of the blocks, `room` of a column and `gap` between two blocks, all in the same unit
 */
export function packed(heights: readonly number[], room: number, gap: number, columns = 2): Packed {
  const even = columns === 2 ? twoColumns(heights, room, gap) : null
  if (even) return [even]
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

/** More blocks than this have too many ways to be parted. */
const mostParted = 14

/** All blocks in two columns that both fit, one after the other where that can be, else each in order and the first one first; null when there is no such way. */
function twoColumns(heights: readonly number[], room: number, gap: number): [number[], number[]] | null {
  const count = heights.length
  if (count < 2 || count > mostParted) return null
  const high = (places: readonly number[]): number => places.reduce((sum, place) => sum + (heights[place] ?? 0) + gap, -gap)
  const places = heights.map((_, i) => i)
  const parted = (isRight: (i: number) => boolean): [number[], number[]] => [places.filter((i) => !isRight(i)), places.filter(isRight)]
  const evenest = (ways: readonly [number[], number[]][]): [number[], number[]] | null => {
    const most = ways.map(([left, right]) => Math.max(high(left), high(right)))
    const least = Math.min(...most)
    return least <= room ? (ways[most.indexOf(least)] ?? null) : null
  }
  const inOrder = evenest(places.slice(1).map((cut) => parted((i) => i >= cut)))
  if (inOrder) return inOrder
  const ways = Array.from({ length: 2 ** (count - 1) - 1 }, (_, way) => parted((i) => i > 0 && (((way + 1) >> (i - 1)) & 1) === 1))
  return evenest(ways)
}
