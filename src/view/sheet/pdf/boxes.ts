import type { jsPDF } from 'jspdf'
import { inkOf, isSeen, mmPerPixel, onPaper, type PagePlace } from './place.ts'

const sides = ['Top', 'Right', 'Bottom', 'Left'] as const

/** Fills and rules of everything that the page lays out in boxes. */
export function drawBoxes(pdf: jsPDF, page: PagePlace, paper: Element): void {
  for (const element of paper.querySelectorAll('*')) {
    if (element.closest('svg') || !isSeen(element)) continue
    const style = getComputedStyle(element)
    const { x, y, width, height } = onPaper(page, element.getBoundingClientRect())
    const ground = inkOf(style.backgroundColor)
    if (ground) {
      pdf.setFillColor(...ground)
      pdf.rect(x, y, width, height, 'F')
    }
    for (const side of sides) {
      const thick = Number.parseFloat(style[`border${side}Width`]) * mmPerPixel
      const ink = inkOf(style[`border${side}Color`])
      if (!ink || thick === 0 || style[`border${side}Style`] === 'none') continue
      pdf.setFillColor(...ink)
      if (side === 'Top') pdf.rect(x, y, width, thick, 'F')
      else if (side === 'Bottom') pdf.rect(x, y + height - thick, width, thick, 'F')
      else if (side === 'Left') pdf.rect(x, y, thick, height, 'F')
      else pdf.rect(x + width - thick, y, thick, height, 'F')
    }
  }
}
