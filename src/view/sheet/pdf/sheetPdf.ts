import { jsPDF } from 'jspdf'
import type { PaperName } from '../paperSize.ts'
import { drawDrawings, drawPictures } from './drawings.ts'
import { giveLetters } from './letters.ts'
import { drawListMarks, drawWords } from './words.ts'
import { locale } from '../../../words/index.ts'
import { inkOf, isSeen, mmPerPixel, onPaper, type PagePlace } from './place.ts'

const sides = ['Top', 'Right', 'Bottom', 'Left'] as const

/** Fills and rules of everything that the page lays out in boxes. */
function drawBoxes(pdf: jsPDF, page: PagePlace, paper: Element): void {
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

/** Width and height [mm]. */
const sizes: Readonly<Record<PaperName, [number, number]>> = { letter: [215.9, 279.4], a4: [210, 297] }

/**
 * The pages that lie on the screen, as a PDF: words stay text, sections and codes stay lines, each where the page has set it. One
 * pixel of the page is 1/96 in on paper.
 */
export async function sheetPdf(
  papers: readonly Element[],
  { paper, title, madeWith }: Readonly<{ paper: PaperName; title: string; madeWith: string }>,
): Promise<Blob> {
  const pdf = new jsPDF({ unit: 'mm', format: sizes[paper], compress: true, putOnlyUsedFonts: true })
  pdf.setDocumentProperties({ title, creator: madeWith })
  pdf.setLanguage(locale())
  await giveLetters(pdf)
  for (const [i, one] of papers.entries()) {
    if (i > 0) pdf.addPage(sizes[paper])
    const { left, top } = one.getBoundingClientRect()
    const page = { left, top }
    drawBoxes(pdf, page, one)
    await drawPictures(pdf, page, one)
    await drawDrawings(pdf, page, one)
    drawListMarks(pdf, page, one)
    drawWords(pdf, page, one)
  }
  return pdf.output('blob')
}
