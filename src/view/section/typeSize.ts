import type { Theme } from '../../state/appState.ts'

/** Letter sizes over the picture [px]. */
export type TypeSize = Readonly<{ name: number; figure: number }>

/** 18 px for names, never under 16; a third larger on the projector's page. */
export const typeSize = (theme: Theme, isNarrow: boolean): TypeSize => {
  const scale = theme === 'dark' ? 4 / 3 : 1
  return isNarrow ? { name: 16 * Math.min(scale, 1.125), figure: 16 } : { name: Math.round(18 * scale), figure: Math.round(16 * scale) }
}

export const family = "'Source Sans 3 Variable', 'Source Sans 3', 'Gill Sans', 'Frutiger', 'Segoe UI', sans-serif"

let context: CanvasRenderingContext2D | null | undefined
const widths = new Map<string, number>()

/** Width of a text in the picture's letter [px]. Without a canvas it is guessed from the count of letters. */
export function textWidth(text: string, size: number, weight = 500): number {
  const key = `${size}|${weight}|${text}`
  const known = widths.get(key)
  if (known !== undefined) return known
  if (context === undefined) context = typeof document === 'undefined' ? null : document.createElement('canvas').getContext('2d')
  if (context) context.font = `${weight} ${size}px ${family}`
  const width = context ? context.measureText(text).width : text.length * size * 0.52
  if (widths.size > 600) widths.clear()
  widths.set(key, width)
  return width
}

/** Forget what was measured before the page's letters had arrived. */
export const forgetWidths = (): void => widths.clear()

/** Breaks a name in two where that makes it clearly narrower than `widest` px allows on one line. */
export function wrapped(text: string, size: number, widest: number): string[] {
  const words = text.split(' ')
  if (words.length < 2 || textWidth(text, size) <= widest) return [text]
  let best: string[] = [text]
  let bestWidth = Infinity
  for (let i = 1; i < words.length; i++) {
    const lines = [words.slice(0, i).join(' '), words.slice(i).join(' ')]
    const width = Math.max(...lines.map((line) => textWidth(line, size)))
    if (width < bestWidth) {
      bestWidth = width
      best = lines
    }
  }
  return best
}

export const platePadding = 4

/** Size of a plate for these lines [px]; the second line of a figure is a caption and a little smaller. */
export function plateSize(lines: readonly string[], size: number, kind: 'name' | 'figure'): Readonly<{ width: number; height: number }> {
  const widths = lines.map((line, i) =>
    kind === 'name' ? textWidth(line, size) : i === 0 ? textWidth(line, size, 600) : textWidth(line, captionSize(size)),
  )
  const line = size * 1.14
  return {
    width: Math.max(...widths) + 2 * platePadding,
    height: (kind === 'name' ? line * lines.length : line + (lines.length - 1) * captionSize(size) * 1.1) + 2 * platePadding - 2,
  }
}

export const captionSize = (size: number): number => Math.max(14, size - 2)

/** When the picture's letters can be measured; at once where the page can't say. */
export const lettersReady = (): Promise<unknown> =>
  typeof document !== 'undefined' && document.fonts
    ? Promise.allSettled([500, 600].map((weight) => document.fonts.load(`${weight} 18px ${family}`)))
    : Promise.resolve()
