import type { PierDocument } from '../../src/core/model/spec.ts'
import { formatText } from '../../src/core/units/format.ts'
import { openDocument } from '../../src/state/actions/document.ts'
import { showMoment } from '../../src/state/actions/time.ts'
import { setCutPost, setLayer, setMistake, setTheme, setUnits } from '../../src/state/actions/view.ts'
import { defaultView } from '../../src/state/defaultView.ts'
import { shownResult } from '../../src/state/derived.ts'
import { type Gone, goneBy } from '../../src/state/goneBy.ts'
import { hiddenZones } from '../../src/state/shown.ts'
import { shownLayers } from '../../src/state/shown.ts'
import { pierStore } from '../../src/state/store.ts'
import { sectionPlan } from '../../src/view/section/paper/sectionPlan.ts'
import { bareSvg, sheetSvg } from '../../src/view/section/paper/sheetSvg.ts'
import { drawSection } from '../../src/view/section/drawSection.ts'
import { drawWet } from '../../src/view/section/wetInk.ts'
import { tallyRoom } from '../../src/view/section/tallyRoom.ts'
import { typeSize } from '../../src/view/section/typeSize.ts'
import { planned, sectionFigure } from '../../src/view/sheet/sheetSection.ts'
import list from './drawings/piers.txt?raw'
import { ofLink } from './piers.ts'

/** How a section is looked at: on the page, as a file to print, or in ink alone as on the printed sheet. */
type Look = Readonly<{
  as: 'page' | 'file' | 'ink'
  size?: Readonly<{ width: number; height: number }>
  /** What is set on the page before. */
  set?: () => void
}>

const desk = { width: 1000, height: 760 }
const layers = ['soil', 'labels', 'dimensions', 'water', 'frost'] as const
const hide = () => {
  for (const layer of layers) setLayer(pierStore, layer, false)
}

const looks = {
  page: { as: 'page' },
  file: { as: 'file' },
  ink: { as: 'ink' },
  dark: { as: 'page', set: () => setTheme(pierStore, 'dark') },
  phone: { as: 'page', size: { width: 390, height: 520 } },
  metric: { as: 'file', set: () => setUnits(pierStore, 'metric') },
  wet: { as: 'page', set: () => setLayer(pierStore, 'wetness', true) },
  'cut-post': { as: 'file', set: () => setCutPost(pierStore, true) },
  plain: { as: 'page', set: hide },
  step: { as: 'page', set: () => showMoment(pierStore, { stretch: 'build', step: 2 }) },
  years: { as: 'page', set: () => showMoment(pierStore, { stretch: 'years', year: 30 }) },
  wrong: { as: 'page', set: () => setMistake(pierStore, 'dished-top', true) },
} as const satisfies Readonly<Record<string, Look>>
type LookName = keyof typeof looks

/** Which piers are looked at in more ways than on the page. */
const more: Readonly<Record<string, readonly LookName[]>> = {
  'level-dry-bag-at-foot': ['file', 'step', 'years'],
  'level-dry-full-height': ['file', 'wet'],
  'level-mixed-full-height': ['file', 'ink', 'dark', 'phone', 'plain', 'wrong', 'years'],
  'level-mixed-collar': ['file', 'wet', 'step'],
  'level-mixed-bracket-pier': ['file', 'dark', 'phone', 'cut-post', 'metric'],
  'level-granular-on-pad': ['file'],
  'level-flowable-fill': ['file'],
  'bell-flare-steep': ['file', 'ink', 'metric', 'dark', 'phone'],
  'bracket-side-plates': ['file'],
  'lean-steep': ['file', 'cut-post'],
  'water-frost-steep': ['file', 'ink', 'wet'],
  'two-soils': ['file'],
}

const piers: ReadonlyMap<string, PierDocument> = new Map(
  list
    .trim()
    .split('\n')
    .map((line) => {
      const [name = '', code = ''] = line.split(' ')
      return [name, ofLink(code)]
    }),
)

export type Section = Readonly<{ name: string; document: PierDocument; look: Look }>
export const sections: readonly Section[] = [...piers].flatMap(([name, document]) =>
  (['page', ...(more[name] ?? [])] as const).map((look) => ({ name: `${name}, ${look}`, document, look: looks[look] })),
)

/** Opens the pier on a page that nobody has touched, and sets what the look wants. */
export const opened = ({ document, look }: Section): void => {
  pierStore.setState({ view: defaultView })
  openDocument(pierStore, document)
  look.set?.()
}
export const sizeOf = ({ look }: Section) => look.size ?? desk

/** The section as an SVG file in its printed colors: the page's own colors are its stylesheet's. */
export function sectionOf(section: Section): string {
  opened(section)
  const state = pierStore.getState()
  const { view } = state
  const result = shownResult(state)
  const plan = { document: section.document, result, view, date: '2026-01-02', version: '1.2.3' }
  if (section.look.as === 'file') return sheetSvg(sectionPlan(plan), null)
  if (section.look.as === 'ink') return sectionFigure(planned(plan, { width: 136, height: 97 }), 'a-')
  const size = sizeOf(section)
  const type = typeSize(view.theme, size.width < 560)
  const year = view.time?.stretch === 'years' ? view.time.year : null
  const gone: Gone = { least: 0, most: 0 }
  const drawing = drawSection({
    result,
    facing: result.spec.site.downhill + Math.PI / 2,
    cutPost: view.cutPost,
    layers: shownLayers(view),
    drawWet,
    say: {
      length: (value) => formatText(value, 'length', view.units),
      slope: (value) => formatText(value, 'slope', view.units),
    },
    type,
    size,
    hidden: hiddenZones(state),
    gone: year !== null && goneBy(result.spec, year, gone) ? gone : null,
    over: year === null ? [] : [tallyRoom(size, view.theme, view.mistakes.length > 0)],
    isInYears: year !== null,
  })
  return bareSvg({ ...sectionPlan(plan), drawing, size, type }, null)
}
