/** Of one page: what a place on the screen is on paper. */
export type PagePlace = Readonly<{ left: number; top: number }>
/** Millimetres on paper. */
export type PaperBox = Readonly<{ x: number; y: number; width: number; height: number }>
export type Rgb = readonly [red: number, green: number, blue: number]

export const mmPerPixel = 25.4 / 96
export const pointsPerPixel = 72 / 96

export const onPaper = (page: PagePlace, box: Pick<DOMRect, 'left' | 'top' | 'width' | 'height'>): PaperBox => ({
  x: (box.left - page.left) * mmPerPixel,
  y: (box.top - page.top) * mmPerPixel,
  width: box.width * mmPerPixel,
  height: box.height * mmPerPixel,
})

/** The colour that a browser writes as `rgb(…)`; null for one that cannot be seen. */
export function inkOf(colour: string): Rgb | null {
  const [red = 0, green = 0, blue = 0, alpha = 1] = (colour.match(/[\d.]+/g) ?? []).map(Number)
  return !colour.startsWith('rgb') || alpha === 0 ? null : [red, green, blue]
}

/** Words for screen readers alone, and what is not drawn at all, stay off the paper. */
export const isSeen = (element: Element): boolean =>
  element.closest('.spoken') === null && element.checkVisibility({ visibilityProperty: true, opacityProperty: true })
