import type { PierResult } from '../../../core/model/result.ts'
import type { Role } from '../../../core/model/solid.ts'
import type { PierDocument } from '../../../core/model/spec.ts'
import { formatText } from '../../../core/units/format.ts'
import type { UnitSystem } from '../../../core/units/quantity.ts'
import type { ViewSettings } from '../../../state/appState.ts'
import { wordsOf } from '../../../words/index.ts'
import { drawSection, type SectionDrawing } from '../drawSection.ts'
import type { Hatch } from '../hatch.ts'
import { family, type TypeSize } from '../typeSize.ts'
import { paperScales, pixelsPerMillimetre, scaleBar, type ScaleBar, scaleOf, scaleWords } from './drawingScale.ts'
import { pierMark } from './pierMark.ts'
import { drawWet } from '../wetInk.ts'

/** What a drawing is made from. The date is written as it comes; nothing here asks a clock. */
export type SectionAsk = Readonly<{
  document: PierDocument
  result: PierResult
  view: Pick<ViewSettings, 'cutPost' | 'layers' | 'units'>
  date: string
  version: string
}>

export type LegendEntry =
  | Readonly<{ name: string; role: Role; hatch: Exclude<Hatch, 'none'> }>
  | Readonly<{ name: string; line: 'water' | 'frost' }>

/** A section ready for paper: the drawing in pixels of 1/4.2 mm, and every word that goes with it. */
export type SectionPlan = Readonly<{
  drawing: SectionDrawing
  size: Readonly<{ width: number; height: number }>
  type: TypeSize
  letter: string
  units: UnitSystem
  /** Plan angle of the reader's right hand [rad]: downhill. */
  rightAngle: number
  /** Of the hole at the axis [m]. */
  depth: number
  bar: ScaleBar
  legend: readonly LegendEntry[]
  words: Readonly<{
    name: string
    title: string
    /** How the section is cut, and what is left whole. */
    notes: readonly string[]
    scale: string
    block: readonly (readonly [label: string, value: string])[]
    status: string
    caution: string
  }>
}>

/** Printable area that Letter and A4 share, less what stands under the section. Pixels. */
const size = { width: 180 * pixelsPerMillimetre, height: 177 * pixelsPerMillimetre }
/** Capitals of 2.5 mm. */
const type: TypeSize = { name: 16, figure: 16 }
const barLength = 46 * pixelsPerMillimetre

/**
 * Plans the section with the layers that the screen shows, but along the slope with downhill at the right, at a scale of the drawing
 * board, and with lengths written as a drawing has them.
 */
export function sectionPlan({ document, result, view, date, version }: SectionAsk): SectionPlan {
  const words = wordsOf('takeAlong').sheet
  const { units, cutPost, layers } = view
  const { downhill, slope } = result.spec.site
  const say = {
    length: (value: number) => formatText(value, 'length', units, { style: 'sheet' }),
    slope: (value: number) => formatText(value, 'slope', units),
  }
  const facing = downhill + Math.PI / 2
  const drawing = drawSection({ result, facing, cutPost, layers, drawWet, say, type, size, scales: paperScales(units) })
  const { perMetre } = drawing.frame
  const name = document.name === '' ? wordsOf('app').untitled : document.name
  const scale = scaleWords(scaleOf(perMetre), units)
  return {
    drawing,
    size,
    type,
    letter: family,
    units,
    rightAngle: downhill,
    depth: result.spec.hole.depth,
    bar: scaleBar(perMetre, units, barLength),
    legend: legendOf(drawing),
    words: {
      name,
      title: words.section,
      notes: [...(slope > 0 ? [words.alongSlope] : []), cutPost ? words.postCut : words.postWhole, words.lengths[units], words.asEntered],
      scale: `${words.scale} ${scale}`,
      block: [
        [words.pier, name],
        [words.drawing, words.section],
        [words.scale, scale],
        [words.mark, pierMark(document)],
        [words.date, date],
        [words.madeWith, `${wordsOf('app').name} ${version}`],
        [words.madeBy, ''],
        [words.engineer, ''],
      ],
      status: words.status,
      caution: words.caution,
    },
  }
}

/** The patterns and lines in the drawing, each once, in the order of the zones. */
function legendOf({ bodies, lines }: SectionDrawing): LegendEntry[] {
  const seen = new Set<Hatch>()
  const names = wordsOf('scene').patterns
  const entries = bodies.flatMap(({ hatch, role }): LegendEntry[] => {
    if (hatch === 'none' || seen.has(hatch)) return []
    seen.add(hatch)
    return [{ name: names[hatch], role, hatch }]
  })
  for (const line of ['water', 'frost'] as const) if (lines.some(({ style }) => style === line)) entries.push({ name: names[line], line })
  return entries
}
