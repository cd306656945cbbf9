/** Tries before the search for a way to share gives up. */
const mostTries = 60_000

/**
 * Blocks shared out over columns of given rooms: read on from column to column where that can be, as evenly filled as can be; else each
 * block in the first column that leaves a place for all others. In a column blocks keep their order, and the first block comes first of
 * all. Null when there is no such way.
 *
 * @param heights of the blocks; `rooms` of the columns and `gap` between two blocks in the same unit
 * @param early so many blocks stand in the first two columns, whatever follows
 */
export function shared(
  heights: readonly number[],
  rooms: readonly number[],
  gap: number,
  early = 1,
): readonly (readonly number[])[] | null {
  const read = inOrder(heights, rooms, gap)
  return read && (read[0]?.length ?? 0) + (read[1]?.length ?? 0) >= early ? read : anyhow(heights, rooms, gap, early)
}

function inOrder(heights: readonly number[], rooms: readonly number[], gap: number): number[][] | null {
  let best: readonly number[] | null = null
  let least = 1 + 1e-9
  /** How full a column is that holds the blocks from one place up to another. */
  const filled = (from: number, to: number, column: number): number => {
    if (from === to) return 0
    const high = heights.slice(from, to).reduce((sum, height) => sum + height + gap, -gap)
    return high / Math.max(rooms[column] ?? 0, 1e-9)
  }
  const cut = (ends: readonly number[], most: number): void => {
    const from = ends.at(-1) ?? 0
    const column = ends.length
    if (column === rooms.length - 1) {
      const all = Math.max(most, filled(from, heights.length, column))
      if (all < least) {
        least = all
        best = [...ends, heights.length]
      }
      return
    }
    for (let to = from; to <= heights.length; to++) {
      const all = Math.max(most, filled(from, to, column))
      if (all >= least) break
      cut([...ends, to], all)
    }
  }
  if (rooms.length > 0) cut([], 0)
  const ends: readonly number[] | null = best
  return ends && rooms.map((_, column) => range(column === 0 ? 0 : (ends[column - 1] ?? 0), ends[column] ?? 0))
}

const range = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, i) => from + i)

/** In the order in which they are read, which fills the first columns first; where that is a long search, the highest blocks first. */
function anyhow(heights: readonly number[], rooms: readonly number[], gap: number, early: number): number[][] | null {
  const read = range(0, heights.length)
  const highest = read.toSorted((a, b) => (heights[b] ?? 0) - (heights[a] ?? 0))
  return placed(read, heights, rooms, gap, early) ?? placed(highest, heights, rooms, gap, early)
}

function placed(
  order: readonly number[],
  heights: readonly number[],
  rooms: readonly number[],
  gap: number,
  early: number,
): number[][] | null {
  const left = rooms.map((room) => room + gap)
  const columns: number[][] = rooms.map(() => [])
  let open = heights.reduce((sum, height) => sum + height + gap, 0)
  let tries = 0
  const place = (at: number): boolean => {
    const i = order[at]
    if (i === undefined) return true
    if (tries++ > mostTries || open > left.reduce((sum, room) => sum + Math.max(0, room), 0)) return false
    const high = (heights[i] ?? 0) + gap
    const last = i === 0 ? 0 : i < early ? 1 : rooms.length - 1
    for (const [column, room] of left.entries()) {
      if (high > room + 1e-9 || column > last) continue
      left[column] = room - high
      open -= high
      columns[column]?.push(i)
      if (place(at + 1)) return true
      columns[column]?.pop()
      open += high
      left[column] = room
    }
    return false
  }
  return place(0) ? columns.map((column) => column.toSorted((a, b) => a - b)) : null
}
