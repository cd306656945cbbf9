import type { Box, Pixel } from '../ink.ts'

type Stretch = readonly [number, number]

/** Shares of the way from `a` to `b` that lie inside the box; null when none does (Liang and Barsky's parameters). */
function inside(a: Pixel, b: Pixel, box: Box): Stretch | null {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  let [enter, leave] = [0, 1]
  for (const [step, room] of [
    [-dx, a[0] - box.x],
    [dx, box.x + box.width - a[0]],
    [-dy, a[1] - box.y],
    [dy, box.y + box.height - a[1]],
  ] as const) {
    if (step === 0) {
      if (room < 0) return null
    } else if (step < 0) enter = Math.max(enter, room / step)
    else leave = Math.min(leave, room / step)
  }
  return enter < leave ? [enter, leave] : null
}

/** What is left of a straight line when boxes hide parts of it: a figure on paper breaks the line that it stands on. */
export function outside(a: Pixel, b: Pixel, boxes: readonly Box[]): (readonly [Pixel, Pixel])[] {
  const hidden = boxes.map((box) => inside(a, b, box)).filter((stretch) => stretch !== null)
  const at = (share: number): Pixel => [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]
  const left: (readonly [Pixel, Pixel])[] = []
  let from = 0
  for (const [start, end] of hidden.sort((p, q) => p[0] - q[0])) {
    if (start > from) left.push([at(from), at(start)])
    from = Math.max(from, end)
  }
  if (from < 1) left.push([at(from), b])
  return left
}
