import { formatText } from '../../core/units/format.ts'
import { xmlText } from '../../export/xmlText.ts'
import { drawSection } from '../section/drawSection.ts'
import { family } from '../section/typeSize.ts'
import { paperScales, pixelsPerMillimetre as mm, scaleBar, scaleOf, scaleWords } from '../export/drawingScale.ts'
import { type SectionAsk, type SectionPlan, sectionPlan } from '../export/sectionPlan.ts'
import { hatchesIn, patterns, sectionGroup } from '../export/sectionSvg.ts'
import { legendSvg, notesSvg, scaleBarSvg, viewTitle } from '../export/sheetParts.ts'
import { svgElement } from '../export/svgText.ts'
import { exporting } from '../../text/en/export.ts'

/** Millimetres on paper. */
export type PaperSize = Readonly<{ width: number; height: number }>
/** Room under the section for its title, scale and bar [mm]. */
const under = 13
const barLength = 46 * mm

const layersOf = ({ view }: SectionAsk, isNamed: boolean) =>
  isNamed
    ? { ...view.layers, soil: true, labels: true, dimensions: true }
    : { ...view.layers, soil: true, labels: false, dimensions: false }

const drawn = (ask: SectionAsk, size: PaperSize, isNamed: boolean, scales: readonly number[]) => {
  const { units, cutPost } = ask.view
  return drawSection({
    result: ask.result,
    facing: ask.result.spec.site.downhill + Math.PI / 2,
    cutPost,
    layers: layersOf(ask, isNamed),
    say: {
      length: (value) => formatText(value, 'length', units, { style: 'sheet' }),
      slope: (value) => formatText(value, 'slope', units),
    },
    type: { name: 14.5, figure: 14.5 },
    size: { width: size.width * mm, height: size.height * mm },
    scales,
  })
}

/** The section at a scale of the drawing board, as large as fits `size`; with names and dimensions, or bare. */
export function planned(ask: SectionAsk, size: PaperSize, isNamed = true, scales = paperScales(ask.view.units)): SectionPlan {
  const base = sectionPlan({ ...ask, view: { ...ask.view, layers: layersOf(ask, isNamed) } })
  const drawing = drawn(ask, size, isNamed, scales)
  const { perMetre } = drawing.frame
  const scale = scaleWords(scaleOf(perMetre), ask.view.units)
  return {
    ...base,
    drawing,
    size: { width: size.width * mm, height: size.height * mm },
    type: { name: 14.5, figure: 14.5 },
    bar: scaleBar(perMetre, ask.view.units, barLength),
    words: { ...base.words, scale: `${exporting.sheet.scale} ${scale}` },
  }
}

/** Wide enough that its width never decides the scale: what is too wide for a column is left out at its sides [mm]. */
const bareWidth = 200

/** Sections of several piers at the largest scale at which all of them fit columns of this size, seen in the middle of a wider drawing. */
export function plannedTogether(asks: readonly SectionAsk[], size: PaperSize): readonly SectionPlan[] {
  const wide = { width: bareWidth, height: size.height }
  const each = asks.map((ask) => planned(ask, wide, false).drawing.frame.perMetre)
  const widest = Math.max(...asks.map(({ result: { spec } }) => Math.max(spec.hole.diameter, spec.hole.bell?.diameter ?? 0)), 0.1)
  const most = Math.min(...each, (0.8 * size.width * mm) / widest)
  return asks.map((ask) =>
    planned(
      ask,
      wide,
      false,
      paperScales(ask.view.units).filter((scale) => scale <= most * 1.0001),
    ),
  )
}

const svg = (width: number, height: number, label: string, body: readonly string[], left = 0): string =>
  svgElement(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${width}mm`,
      height: `${height}mm`,
      viewBox: `${Math.round(left * 100) / 100} 0 ${Math.round(width * mm * 100) / 100} ${Math.round(height * mm * 100) / 100}`,
      'font-family': family,
      role: 'img',
      'aria-label': label,
    },
    [svgElement('title', {}, xmlText(label)), ...body],
  )

/** Keeps the patterns of several drawings on one page apart. */
const apart = (text: string, prefix: string): string =>
  text.replaceAll('id="marks-', `id="${prefix}marks-`).replaceAll('url(#marks-', `url(#${prefix}marks-`)

/** The section with its title, its scale and its bar. */
export const sectionFigure = (plan: SectionPlan, prefix: string): string => {
  const height = plan.size.height / mm
  const width = plan.size.width / mm
  return apart(
    svg(width, height + under, `${plan.words.name}: ${plan.words.title}`, [
      patterns(hatchesIn(plan)),
      sectionGroup(plan),
      viewTitle(plan, 3 * mm, height * mm),
      scaleBarSvg(plan, plan.size.width - 3 * mm, height * mm),
    ]),
    prefix,
  )
}

/** The middle of a section alone, for one of several columns of this width. */
export const bareFigure = (plan: SectionPlan, prefix: string, label: string, width: number): string =>
  apart(
    svg(width, plan.size.height / mm, label, [patterns(hatchesIn(plan)), sectionGroup(plan)], plan.drawing.frame.axis - (width * mm) / 2),
    prefix,
  )

export const barFigure = (plan: SectionPlan, width: number): string =>
  svg(width, under, plan.words.scale, [viewTitle(plan, 3 * mm, 0), scaleBarSvg(plan, (width - 3) * mm, 0)])

/** What the marks mean, and how the section is cut. Its patterns stand in the section's own drawing of the same prefix. */
export const legendFigure = (plan: SectionPlan, prefix: string, width: number): string => {
  const rows = Math.max(3, Math.ceil(plan.legend.length / 3))
  const legend = 6 + rows * 6.3
  const notes = 7.5 + plan.words.notes.length * 4.4
  return apart(
    svg(width, legend + notes, exporting.sheet.legend, [
      legendSvg(plan.legend, 0, 0, width * mm),
      notesSvg(plan, 0, legend * mm, width * mm),
    ]),
    prefix,
  )
}
