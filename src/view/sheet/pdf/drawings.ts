import type { jsPDF } from 'jspdf'
import { svg2pdf } from 'svg2pdf.js'
import { isSeen, onPaper, type PagePlace } from './place.ts'

/** What a style sheet may say of a line or a face. */
const asWritten = ['fill', 'stroke', 'stroke-width', 'stroke-dasharray', 'stroke-linecap', 'stroke-linejoin'] as const

/** A drawing that needs nothing of the page: colours and widths as they are seen, its patterns within, its words left to the page's text. */
function alone(drawing: SVGSVGElement): SVGSVGElement {
  const copy = drawing.cloneNode(true) as SVGSVGElement
  const parts = [...drawing.querySelectorAll('*')]
  const copies = [...copy.querySelectorAll('*')]
  const patterns = new Set<string>()
  parts.forEach((part, i) => {
    const own = copies[i]
    if (!own || part.closest('defs')) return
    const style = getComputedStyle(part)
    for (const name of asWritten) {
      const value = style.getPropertyValue(name)
      const pattern = /^url\("?#([^")]+)"?\)/.exec(value)?.[1]
      if (pattern !== undefined) patterns.add(pattern)
      own.setAttribute(name, pattern === undefined ? value.replaceAll('px', '') : `url(#${pattern})`)
    }
  })
  for (const word of copy.querySelectorAll('text, title')) word.remove()
  const missing = [...patterns].filter((id) => copy.querySelector(`[id="${id}"]`) === null)
  if (missing.length > 0) {
    const defs = document.createElementNS('http://www.w3.org/2000/svg', 'defs')
    defs.append(...missing.flatMap((id) => document.getElementById(id)?.cloneNode(true) ?? []))
    copy.prepend(defs)
  }
  return copy
}

/** Sections, marks and codes, as lines and faces. */
export async function drawDrawings(pdf: jsPDF, page: PagePlace, paper: Element): Promise<void> {
  for (const drawing of paper.querySelectorAll('svg')) {
    if (drawing.parentElement?.closest('svg') || !isSeen(drawing)) continue
    await svg2pdf(alone(drawing), pdf, onPaper(page, drawing.getBoundingClientRect()))
  }
}

/** Dots per millimetre on paper: 300 an inch. */
const dots = 300 / 25.4

/** Pictures, fitted to their frame as the page does. */
export async function drawPictures(pdf: jsPDF, page: PagePlace, paper: Element): Promise<void> {
  for (const image of paper.querySelectorAll('img')) {
    await image.decode()
    const { x, y, width, height } = onPaper(page, image.getBoundingClientRect())
    const canvas = document.createElement('canvas')
    canvas.width = Math.round(width * dots)
    canvas.height = Math.round(height * dots)
    const fill = getComputedStyle(image).objectFit === 'contain' ? Math.min : Math.max
    const scale = fill(canvas.width / image.naturalWidth, canvas.height / image.naturalHeight)
    const [wide, high] = [image.naturalWidth * scale, image.naturalHeight * scale]
    const context = canvas.getContext('2d')
    if (!context) continue
    context.fillStyle = '#ffffff'
    context.fillRect(0, 0, canvas.width, canvas.height)
    context.drawImage(image, (canvas.width - wide) / 2, (canvas.height - high) / 2, wide, high)
    pdf.addImage(canvas.toDataURL('image/jpeg', 0.9), 'JPEG', x, y, width, height)
  }
}
