import { formatText } from '../../../core/units/format.ts'
import { wordsOf } from '../../../words/index.ts'
import { pixelsPerMillimetre as mm } from './drawingScale.ts'
import type { Hatch } from '../hatch.ts'
import { ink, lineStyles, type Paint, softInk, tinted, wide } from './sectionSvg.ts'
import type { LegendEntry, SectionPlan } from './sectionPlan.ts'
import { svgElement, svgLine, svgWords } from './svgText.ts'

/** Letter sizes whose capitals are about 3.5, 2.5, 2.2 and 1.8 mm high. */
export const letters = { title: 22, note: 16, fine: 14, small: 11.5 } as const

/** Under the view: what it is, and its scale. `x` and `top` in pixels, as in all parts here. */
export const viewTitle = ({ words }: SectionPlan, x: number, top: number, size: number = letters.title): string =>
  svgElement('g', {}, [
    svgWords(words.title.toUpperCase(), { x, y: top + 4.2 * mm, 'font-size': size, 'font-weight': 600, fill: ink }),
    svgWords(words.scale, { x, y: top + 9 * mm, 'font-size': letters.note, fill: ink }),
  ])

/** How the section is cut, what is left whole, how lengths are written. */
export const notesSvg = ({ words }: SectionPlan, x: number, top: number, room: number): string =>
  svgElement('g', { 'data-part': 'notes' }, [
    svgWords(wordsOf('takeAlong').sheet.notes, { x, y: top + 2.6 * mm, 'font-size': letters.note, 'font-weight': 600, fill: ink }),
    ...words.notes.map((note, i) => svgWords(note, { x, y: top + (7.2 + 4.4 * i) * mm, 'font-size': letters.fine, fill: ink }, room)),
  ])

/** A bar of black and white in turn, its first part split to the left of nought; it ends at `right`. */
export function scaleBarSvg({ bar, units, drawing }: SectionPlan, right: number, top: number): string {
  const part = bar.step * drawing.frame.perMetre
  const height = 1.8 * mm
  const y = top + 4.4 * mm
  const zero = right - bar.parts * part - 3 * mm
  const cells = [
    ...Array.from({ length: bar.fine }, (_, i) => ({
      x: zero - part + (i * part) / bar.fine,
      width: part / bar.fine,
      isDark: i % 2 === 1,
    })),
    ...Array.from({ length: bar.parts }, (_, i) => ({ x: zero + i * part, width: part, isDark: i % 2 === 0 })),
  ]
  const label = (value: number): string => (value === 0 ? '0' : formatText(value, 'length', units, { style: 'sheet', feetInches: true }))
  const marks = Array.from({ length: bar.parts + 2 }, (_, i) => ({ x: zero + (i - 1) * part, value: Math.abs(i - 1) * bar.step }))
  return svgElement('g', { 'data-part': 'scale-bar' }, [
    ...cells.map(({ x, width, isDark }) =>
      svgElement('rect', { x, y, width, height, fill: isDark ? ink : '#ffffff', stroke: ink, 'stroke-width': wide('fine') }),
    ),
    ...marks.map(({ x, value }) => svgWords(label(value), { x, y: y - 1.2 * mm, 'font-size': 13, 'text-anchor': 'middle', fill: ink })),
    svgWords(wordsOf('takeAlong').sheet.checkBar, {
      x: right,
      y: y + height + 3.4 * mm,
      'font-size': letters.small,
      'text-anchor': 'end',
      fill: softInk,
    }),
  ])
}

const swatch = { width: 8 * mm, height: 5 * mm }

/** A swatch is too short for the dashes of the drawing: they are halved in it. */
const swatchLine = { water: lineStyles.water, frost: { ...lineStyles.frost, 'stroke-dasharray': `${3.5 * mm} ${1 * mm}` } } as const

/** Two columns where they hold every name, which leaves long names more room. */
const columnsFor = (count: number, rows: number): number => Math.max(2, Math.ceil(count / rows))
const mostColumns = 3
const pitch = 6.3 * mm

/** Where in a tile a swatch looks, so that it shows the marks that tell the material [mm]. */
const looksAt: Readonly<Partial<Record<Hatch, readonly [number, number]>>> = {
  topsoil: [2.5, 2.5],
  sand: [5, 3.5],
  earth: [1.8, 2],
  clay: [7.5, 3.5],
  'broken-earth': [0.6, 1.3],
}

/** A swatch of 8 by 5 mm with its name, in `room` pixels. */
export function legendMark(entry: LegendEntry, left: number, y: number, room: number, paint: Paint = tinted): string {
  const from = left + swatch.width + 2 * mm
  const name = svgWords(entry.name, { x: from, y: y + 3.6 * mm, 'font-size': letters.fine, fill: ink }, left + room - from - mm)
  const middle = y + swatch.height / 2
  if ('line' in entry) return svgLine(left, middle, left + swatch.width, middle, swatchLine[entry.line]) + name
  const [x = 0, above = 0] = looksAt[entry.hatch]?.map((length) => length * mm) ?? []
  const outline = `M${x} ${above}L${x + swatch.width} ${above}L${x + swatch.width} ${above + swatch.height}L${x} ${above + swatch.height}Z`
  return (
    svgElement('g', { transform: `translate(${left - x} ${y - above})` }, [
      svgElement('path', { d: outline, fill: paint.ground(entry.role) }),
      paint.marks(outline, entry.hatch, `of-${entry.hatch}`),
      svgElement('path', { d: outline, fill: 'none', stroke: ink, 'stroke-width': wide('fine') }),
    ]) + name
  )
}

/** Swatches with their names, in two or three columns. */
export function legendSvg(entries: readonly LegendEntry[], x: number, top: number, room: number): string {
  const rows = Math.max(3, Math.ceil(entries.length / mostColumns))
  const column = room / columnsFor(entries.length, rows)
  const head = svgWords(wordsOf('takeAlong').sheet.legend, {
    x,
    y: top + 2.6 * mm,
    'font-size': letters.note,
    'font-weight': 600,
    fill: ink,
  })
  const drawn = entries.map((entry, i) => legendMark(entry, x + Math.floor(i / rows) * column, top + 5 * mm + (i % rows) * pitch, column))
  return svgElement('g', { 'data-part': 'legend' }, [head, ...drawn])
}

/** Fields of the title block in a box from `left` to `right`; empty ones are for the pen. */
export function titleBlock({ words }: SectionPlan, left: number, right: number, top: number, bottom: number): string {
  const row = (bottom - top) / (words.block.length + 1)
  const value = left + 22 * mm
  const rows = words.block.flatMap(([label, said], i) => {
    const y = top + i * row
    return [
      svgWords(label, { x: left + 2 * mm, y: y + row * 0.7, 'font-size': letters.fine, fill: softInk }),
      svgWords(
        said,
        { x: value, y: y + row * 0.7, 'font-size': letters.note, 'font-weight': i === 0 ? 600 : 400, fill: ink },
        right - value - 2 * mm,
      ),
      svgLine(left, y + row, right, y + row, { stroke: ink, 'stroke-width': wide('fine') }),
    ]
  })
  const status = words.status.toUpperCase()
  return svgElement('g', { 'data-part': 'title-block' }, [
    svgLine(left, top, left, bottom, { stroke: ink, 'stroke-width': wide('seen') }),
    ...rows,
    svgWords(
      status,
      {
        x: (left + right) / 2,
        y: bottom - row * 0.3,
        'font-size': letters.fine,
        'font-weight': 600,
        'text-anchor': 'middle',
        fill: ink,
      },
      right - left - 3 * mm,
    ),
  ])
}
