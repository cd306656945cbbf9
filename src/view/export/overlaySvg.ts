import { letterStyle } from '../section/paper/sheetSvg.ts'

/** What the page's style sheet says of lines and words; in a picture of their own it has to stand on each of them. */
const told = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'font-family',
  'font-size',
  'font-weight',
  'opacity',
  'visibility',
  'display',
] as const

/** The words and lines over the picture as an SVG that stands alone, as they look now. `shape` is the picture's size on the page [px]. */
export function overlaySvg(overlay: SVGSVGElement, shape: Readonly<{ width: number; height: number }>, letter: string | null): string {
  const copy = overlay.cloneNode(true) as SVGSVGElement
  const originals = overlay.querySelectorAll('*')
  for (const [i, element] of copy.querySelectorAll('*').entries()) {
    const original = originals[i]
    if (!original) continue
    const style = getComputedStyle(original)
    for (const name of told) element.setAttribute(name, style.getPropertyValue(name))
    // The arc that the cut is turned along is for the hand, not for a picture.
    if (original.classList.contains('ink-arc')) element.setAttribute('display', 'none')
    element.removeAttribute('class')
  }
  const inside = [...copy.childNodes].map((node) => new XMLSerializer().serializeToString(node)).join('')
  const { width, height } = shape
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${letterStyle(letter)}${inside}</svg>`
}
