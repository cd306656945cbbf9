import { formatText } from '../../core/units/format.ts'
import { xmlText } from '../../export/xmlText.ts'
import { drawSection } from '../section/drawSection.ts'
import { family, textWidth } from '../section/typeSize.ts'
import { paperScales, pixelsPerMillimetre as mm, scaleBar, scaleOf, scaleWords } from '../section/paper/drawingScale.ts'
import { type SectionAsk, type SectionPlan, sectionPlan } from '../section/paper/sectionPlan.ts'
import { bare, bareWithin, hatchesIn, ink, sectionGroup, tiles } from '../section/paper/sectionSvg.ts'
import { legendMark, letters, scaleBarSvg, viewTitle } from '../section/paper/sheetParts.ts'
import { svgElement, svgWords } from '../section/paper/svgText.ts'
import { drawWet } from '../section/wetInk.ts'
import { wordsOf } from '../../words/index.ts'

/** Millimetres on paper. */
export type PaperSize = Readonly<{ width: number; height: number }>
/** Room under the section for its title, scale and bar [mm]. */
const under = 13
const barLength = 46 * mm
const barHeight = 10.4

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
    drawWet,
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
    words: { ...base.words, scale: `${wordsOf('takeAlong').sheet.scale} ${scale}` },
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

const round = (value: number): number => Math.round(value * 100) / 100

const svg = (width: number, height: number, label: string, body: readonly string[], left = 0, top = 0): string =>
  svgElement(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${width}mm`,
      height: `${height}mm`,
      viewBox: `${round(left)} ${round(top)} ${round(width * mm)} ${round(height * mm)}`,
      'font-family': family,
      role: 'img',
      'aria-label': label,
    },
    [svgElement('title', {}, xmlText(label)), ...body],
  )

/** Keeps the patterns of several drawings on one page apart. */
const apart = (text: string, prefix: string): string =>
  text
    .replaceAll('id="marks-', `id="${prefix}marks-`)
    .replaceAll('url(#marks-', `url(#${prefix}marks-`)
    .replaceAll('href="#marks-', `href="#${prefix}marks-`)

/** From the highest to the lowest thing drawn in any of these sections [px], with a little paper round it. */
const extent = (plans: readonly SectionPlan[]): readonly [top: number, bottom: number] => {
  const past = 3 * mm
  const ends = plans.flatMap(({ drawing: { frame, ink: over } }) => [
    frame.grade - frame.top * frame.perMetre - past,
    frame.grade - frame.bottom * frame.perMetre + past,
    ...over.plates.flatMap(({ y, height }) => [y, y + height]),
  ])
  return [Math.min(...ends), Math.max(...ends)]
}

/** The section with its title, its scale and its bar, no higher than what is drawn. */
export const sectionFigure = (plan: SectionPlan, prefix: string): string => {
  const [top, bottom] = extent([plan])
  return apart(
    svg(
      plan.size.width / mm,
      (bottom - top) / mm + under,
      `${plan.words.name}: ${plan.words.title}`,
      [
        tiles(hatchesIn(plan)),
        sectionGroup(plan, bare),
        viewTitle(plan, 3 * mm, bottom, 17),
        scaleBarSvg(plan, plan.size.width - 3 * mm, bottom),
      ],
      0,
      top,
    ),
    prefix,
  )
}

/** A bare section has no room for figures and names, nor for what stands at the far ends of its lines. */
const unnamed = (plan: SectionPlan): SectionPlan => ({
  ...plan,
  drawing: { ...plan.drawing, ink: { ...plan.drawing.ink, plates: [], paths: { ...plan.drawing.ink.paths, water: '' } } },
})

/** The middle of each section alone, for columns of this width, with grade at one height in all of them. */
export function bareFigures(plans: readonly SectionPlan[], labels: readonly string[], prefix: string, width: number): readonly string[] {
  const ends = plans.map((plan) => {
    const [top, bottom] = extent([unnamed(plan)])
    const { grade } = plan.drawing.frame
    return { over: grade - top, under: bottom - grade }
  })
  const over = Math.max(...ends.map((one) => one.over))
  const height = over + Math.max(...ends.map((one) => one.under))
  return plans.map((plan, i) => {
    const left = plan.drawing.frame.axis - (width * mm) / 2
    return apart(
      svg(
        width,
        height / mm,
        labels[i] ?? plan.words.title,
        [tiles(hatchesIn(plan)), sectionGroup(unnamed(plan), bareWithin(left, left + width * mm))],
        left,
        plan.drawing.frame.grade - over,
      ),
      `${prefix}${i}-`,
    )
  })
}

export const barFigure = (plan: SectionPlan, width: number): string =>
  svg(width, barHeight, plan.words.scale, [scaleBarSvg(plan, (width - 1) * mm, 0)])

const rowHeight = 6.2
/** From one mark to the next: its swatch, and what stands before its name and after it [mm]. */
const besideName = 13.5

/** What the marks of these sections mean, each once, side by side. Its patterns stand in it, so that it can be printed anywhere. */
export const legendFigure = (plans: readonly SectionPlan[], prefix: string, width: number): string => {
  const entries = plans.flatMap(({ legend }) => legend).filter((entry, i, all) => all.findIndex(({ name }) => name === entry.name) === i)
  const title = wordsOf('takeAlong').sheet.legend
  let left = textWidth(title, letters.fine, 600) / mm + 5
  let row = 0
  const marks = entries.map((entry) => {
    const wide = textWidth(entry.name, letters.fine, 400) / mm + besideName
    if (left + wide - 4 > width) {
      left = 0
      row += 1
    }
    const at = left
    left += wide
    return legendMark(entry, at * mm, row * rowHeight * mm, wide * mm, bare)
  })
  const hatches = entries.flatMap((entry) => ('hatch' in entry ? [entry.hatch] : []))
  return apart(
    svg(width, (row + 1) * rowHeight, title, [
      tiles(hatches),
      svgWords(title, { x: 0, y: 3.6 * mm, 'font-size': letters.fine, 'font-weight': 600, fill: ink }),
      ...marks,
    ]),
    prefix,
  )
}
