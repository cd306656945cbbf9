import type { Box, Pixel } from './ink.ts'

export type Side = 'left' | 'right'

/** A name that wants to stand beside the picture. Anchors are points inside the part, on the screen; either may be missing. */
export type LabelWish = Readonly<{
  id: string
  lines: readonly string[]
  width: number
  height: number
  anchors: Readonly<Partial<Record<Side, Pixel>>>
}>

export type PlacedLabel = Readonly<{ id: string; lines: readonly string[]; side: Side; box: Box; anchor: Pixel; elbow: Pixel; end: Pixel }>

/** Inner edges of the two columns, and the stretch of height they may use [px]. `taken` are stretches already in use, by side. */
export type Columns = Readonly<{
  left: number
  right: number
  top: number
  bottom: number
  taken: Readonly<Record<Side, readonly (readonly [number, number])[]>>
}>

const shoulder = 14
const gap = 6

type Entry = { wish: LabelWish; anchor: Pixel; y: number }

/**
 * Names in two columns, left and right of the picture, each on a leader of one bend. Sides stay as in `before` where they can;
 * a column is sorted by the height of its anchors, pushed apart by least squares, and freed of crossings. Of more names than a column has
 * height for, the first of the list stand.
 */
export function placeLabels(wishes: readonly LabelWish[], columns: Columns, before: ReadonlyMap<string, Side>): PlacedLabel[] {
  const sides = chooseSides(wishes, columns, before)
  return (['left', 'right'] as const).flatMap((side) => {
    const entries = wishes.flatMap((wish): Entry[] => {
      const anchor = sides.get(wish.id) === side ? wish.anchors[side] : undefined
      return anchor ? [{ wish, anchor, y: 0 }] : []
    })
    return placeColumn(entries, side, columns)
  })
}

function chooseSides(wishes: readonly LabelWish[], columns: Columns, before: ReadonlyMap<string, Side>): Map<string, Side> {
  const sides = new Map<string, Side>()
  const used: Record<Side, number> = { left: takenHeight(columns, 'left'), right: takenHeight(columns, 'right') }
  const put = (wish: LabelWish, side: Side): void => {
    sides.set(wish.id, side)
    used[side] += wish.height + gap
  }
  const free: LabelWish[] = []
  for (const wish of wishes) {
    const { left, right } = wish.anchors
    if (left && !right) put(wish, 'left')
    else if (right && !left) put(wish, 'right')
    else if (left && right) {
      const last = before.get(wish.id)
      if (last) put(wish, last)
      else free.push(wish)
    }
  }
  for (const wish of free) put(wish, used.left <= used.right ? 'left' : 'right')
  return sides
}

const takenHeight = (columns: Columns, side: Side): number => columns.taken[side].reduce((sum, [low, high]) => sum + high - low, 0)

function placeColumn(wanted: readonly Entry[], side: Side, columns: Columns): PlacedLabel[] {
  for (let count = wanted.length; count > 0; count--) {
    const placed = placeAll(wanted.slice(0, count), side, columns)
    if (count === 1 || placed.every(({ box }) => box.y + box.height <= columns.bottom + 1e-6)) return placed
  }
  return []
}

function placeAll(entries: Entry[], side: Side, columns: Columns): PlacedLabel[] {
  entries.sort((a, b) => a.anchor[1] - b.anchor[1] || (a.wish.id < b.wish.id ? -1 : 1))
  const inner = side === 'left' ? columns.left : columns.right
  const away = side === 'left' ? -1 : 1
  for (let round = 0; round < 8; round++) {
    spread(entries, side, columns)
    if (!uncross(entries, inner - away * shoulder)) break
  }
  return entries.map(({ wish, anchor, y }) => {
    const box = { x: side === 'left' ? inner - wish.width : inner, y: y - wish.height / 2, width: wish.width, height: wish.height }
    return { id: wish.id, lines: wish.lines, side, box, anchor, elbow: [inner - away * shoulder, y], end: [inner - away * 2, y] }
  })
}

/** Middles as near as can be to the anchors, in order, a gap apart: neighbours that collide are pooled and share their mean. */
function spread(entries: Entry[], side: Side, columns: Columns): void {
  type Pool = { entries: Entry[]; wanted: number; height: number }
  const pools: Pool[] = []
  const heightOf = (list: readonly Entry[]): number => list.reduce((sum, e) => sum + e.wish.height + gap, 0)
  const startOf = (pool: Pool): number => {
    const top = pool.wanted - pool.height / 2
    return Math.min(Math.max(top, columns.top), Math.max(columns.top, columns.bottom - pool.height))
  }
  for (const entry of entries) {
    pools.push({ entries: [entry], wanted: entry.anchor[1], height: entry.wish.height + gap })
    for (;;) {
      const last = pools[pools.length - 1]
      const above = pools[pools.length - 2]
      if (!last || !above || startOf(above) + above.height <= startOf(last)) break
      const all = [...above.entries, ...last.entries]
      const wanted = meanMiddle(all)
      pools.splice(-2, 2, { entries: all, wanted, height: heightOf(all) })
    }
  }
  let floor = columns.top
  for (const pool of pools) {
    let top = Math.max(startOf(pool), floor)
    for (const entry of pool.entries) {
      top = clearOf(columns.taken[side], top, entry.wish.height + gap)
      entry.y = top + (entry.wish.height + gap) / 2
      top += entry.wish.height + gap
    }
    floor = top
  }
}

/** Middle of a pool that leaves its members, on average, at their anchors. */
function meanMiddle(entries: readonly Entry[]): number {
  const total = entries.reduce((sum, e) => sum + e.wish.height + gap, 0)
  let before = 0
  let sum = 0
  for (const { wish, anchor } of entries) {
    const offset = before + (wish.height + gap) / 2 - total / 2
    sum += anchor[1] - offset
    before += wish.height + gap
  }
  return sum / entries.length
}

function clearOf(taken: readonly (readonly [number, number])[], top: number, height: number): number {
  let y = top
  for (const [low, high] of [...taken].sort((a, b) => a[0] - b[0])) if (y < high + gap && y + height > low - gap) y = high + gap
  return y
}

/** Swaps neighbours whose leaders cross. True when it changed the order. */
function uncross(entries: Entry[], elbowX: number): boolean {
  let changed = false
  for (let i = 0; i + 1 < entries.length; i++) {
    const a = entries[i]
    const b = entries[i + 1]
    if (!a || !b || !linesCross([elbowX, a.y], a.anchor, [elbowX, b.y], b.anchor)) continue
    entries[i] = b
    entries[i + 1] = a
    changed = true
  }
  return changed
}

export function linesCross(a: Pixel, b: Pixel, c: Pixel, d: Pixel): boolean {
  const turn = (p: Pixel, q: Pixel, r: Pixel): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0
}
