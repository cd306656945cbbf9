import type { jsPDF } from 'jspdf'
import { pdfFamily, hasAll, weightOf } from './letters.ts'
import { linesOf, type SetLine } from './lines.ts'
import { inkOf, isSeen, mmPerPixel, onPaper, type PagePlace, pointsPerPixel } from './place.ts'

type Style = Readonly<{ size: number; weight: number; colour: string; ascent: number; descent: number }>

const pen = document.createElement('canvas').getContext('2d')
const rises = new Map<string, readonly [number, number]>()

/** How far a letter reaches above and below its line, as the browser has it [px]. */
function reach(font: string, size: number): readonly [number, number] {
  const known = rises.get(font)
  if (known) return known
  if (pen) pen.font = font
  const measured = pen?.measureText('x')
  const found = [measured?.fontBoundingBoxAscent ?? size, measured?.fontBoundingBoxDescent ?? size * 0.3] as const
  rises.set(font, found)
  return found
}

function styleOf(holder: Element): Style {
  const { fontSize, fontWeight, fontFamily, color, fill } = getComputedStyle(holder)
  const scale = holder instanceof SVGGraphicsElement ? (holder.getScreenCTM()?.a ?? 1) : 1
  const size = Number.parseFloat(fontSize) * scale
  const [ascent, descent] = reach(`${fontWeight} ${size}px ${fontFamily}`, size)
  return { size, weight: Number(fontWeight), colour: holder instanceof SVGElement ? fill : color, ascent, descent }
}

/** A script that the letter has no shapes for is drawn by the browser, as a picture: seen by all, though not to be selected. */
function drawAsPicture(pdf: jsPDF, page: PagePlace, line: SetLine, style: Style, holder: Element): void {
  const sharp = 4
  const canvas = document.createElement('canvas')
  canvas.width = Math.ceil((line.right - line.left) * sharp)
  canvas.height = Math.ceil(line.height * sharp)
  const context = canvas.getContext('2d')
  if (!context) return
  context.scale(sharp, sharp)
  context.font = `${style.weight} ${style.size}px ${getComputedStyle(holder).fontFamily}`
  context.fillStyle = style.colour
  context.direction = line.fromRight ? 'rtl' : 'ltr'
  context.textAlign = 'left'
  context.fillText(line.text, 0, (line.height - style.ascent - style.descent) / 2 + style.ascent)
  const { x, y, width, height } = onPaper(page, { ...line, width: line.right - line.left })
  pdf.addImage(canvas.toDataURL('image/png'), 'PNG', x, y, width, height)
}

/** A line that the page cuts short, cut to the same width with the same dots. */
function asSeen(pdf: jsPDF, line: SetLine, holder: Element): SetLine {
  if (getComputedStyle(holder).textOverflow !== 'ellipsis' || holder.scrollWidth <= holder.clientWidth) return line
  const { right } = holder.getBoundingClientRect()
  if (line.right <= right) return line
  const room = (right - line.left) * mmPerPixel
  let text = line.text
  while (text.length > 1 && pdf.getTextWidth(`${text}…`) > room) text = text.slice(0, -1)
  return { ...line, text: `${text.trimEnd()}…`, right }
}

function drawLine(pdf: jsPDF, page: PagePlace, whole: SetLine, style: Style, holder: Element): void {
  pdf.setFont(pdfFamily, 'normal', weightOf(style.weight))
  pdf.setFontSize(style.size * pointsPerPixel)
  const [red, green, blue] = inkOf(style.colour) ?? [0, 0, 0]
  pdf.setTextColor(red, green, blue)
  const line = asSeen(pdf, whole, holder)
  if (!hasAll(pdf, line.text)) {
    drawAsPicture(pdf, page, line, style, holder)
    return
  }
  const { x, y, width } = onPaper(page, { ...line, width: line.right - line.left })
  const base = y + ((line.height - style.ascent - style.descent) / 2 + style.ascent) * mmPerPixel
  // The page sets pairs of letters closer: what that makes is spread over the line, so that it ends where it does on the page.
  const steps = [...line.text].length - 1
  const charSpace = steps > 0 && line === whole ? (width - pdf.getTextWidth(line.text)) / steps : 0
  pdf.text(line.text, x, base, { charSpace })
}

/** Every word of a page at its place, as text. */
export function drawWords(pdf: jsPDF, page: PagePlace, paper: Element): void {
  const walk = document.createTreeWalker(paper, NodeFilter.SHOW_TEXT)
  for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    const holder = node.parentElement
    if (!(node instanceof Text) || !holder || node.data.trim() === '' || holder.localName === 'title' || !isSeen(holder)) continue
    const style = styleOf(holder)
    for (const line of linesOf(node)) drawLine(pdf, page, line, style, holder)
  }
}

/** Dots and numbers of lists, which are no text of the page. */
export function drawListMarks(pdf: jsPDF, page: PagePlace, paper: Element): void {
  for (const item of paper.querySelectorAll('li')) {
    const { listStyleType, display, color } = getComputedStyle(item)
    if (display !== 'list-item' || listStyleType === 'none' || !isSeen(item)) continue
    const style = styleOf(item)
    const { x, y } = onPaper(page, item.getBoundingClientRect())
    const lineHeight = Number.parseFloat(getComputedStyle(item).lineHeight)
    const base = y + ((lineHeight - style.ascent - style.descent) / 2 + style.ascent) * mmPerPixel
    const size = style.size * mmPerPixel
    const [red, green, blue] = inkOf(color) ?? [0, 0, 0]
    if (listStyleType === 'decimal') {
      pdf.setFont(pdfFamily, 'normal', weightOf(style.weight))
      pdf.setFontSize(style.size * pointsPerPixel)
      pdf.setTextColor(red, green, blue)
      const place = [...(item.parentElement?.children ?? [])].indexOf(item) + 1
      pdf.text(`${place}.`, x - 0.35 * size, base, { align: 'right' })
    } else {
      pdf.setFillColor(red, green, blue)
      pdf.circle(x - 0.62 * size, base - 0.3 * size, 0.15 * size, 'F')
    }
  }
}
