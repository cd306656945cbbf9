/** Letter sizes to try, the largest first [pt]. Nothing on paper is smaller than the last. */
export const letterSizes = [9, 8.6, 8.2, 7.8, 7.5, 7.25, 7] as const

/** The layout in the largest letter in which it takes no more pages than `wanted`; else the largest that takes as few as the smallest. */
export function largestThatFits<T extends { readonly count: number }>(layouts: readonly T[], wanted: number): T | null {
  const few = layouts.find(({ count }) => count <= wanted)
  if (few) return few
  const fewest = layouts.at(-1)?.count
  return layouts.find(({ count }) => count === fewest) ?? null
}

/** Height of a page's body, less what rounding may add, and what stands between two blocks [mm]. */
export const room = 236.4
export const gap = 1.8
const pixelsPerMm = 96 / 25.4
export const heightsOf = (elements: Iterable<Element>): number[] =>
  [...elements].map((element) => element.getBoundingClientRect().height / pixelsPerMm)
