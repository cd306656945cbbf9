import { jsPDF } from 'jspdf'
import type { PaperName } from '../paperSize.ts'
import { drawBoxes } from './boxes.ts'
import { drawDrawings, drawPictures } from './drawings.ts'
import { giveLetters } from './letters.ts'
import { drawListMarks, drawWords } from './words.ts'
import { locale } from '../../../words/index.ts'

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
