// @vitest-environment jsdom
import type { ReactNode } from 'react'
import { describe, expect, it } from 'vitest'
import { startingAssumptions } from '../../src/core/uncertainty/assumptions.ts'
import { simulate } from '../../src/core/uncertainty/simulate.ts'
import { openDocument } from '../../src/state/actions/document.ts'
import { setLayer } from '../../src/state/actions/view.ts'
import { showMoment } from '../../src/state/actions/time.ts'
import { defaultView } from '../../src/state/defaultView.ts'
import { shownResult } from '../../src/state/derived.ts'
import { tallyBy } from '../../src/state/goneBy.ts'
import { thumbnailOf } from '../../src/core/documents/readPier.ts'
import { pierStore } from '../../src/state/store.ts'
import { suggestionSteps } from '../../src/state/suggestions.ts'
import { questionOf, sureStore } from '../../src/state/sure.ts'
import { PageSwitches } from '../../src/view/app/PageSwitches.tsx'
import { InputsPanel } from '../../src/view/panels/inputs/InputsPanel.tsx'
import { LoadPath } from '../../src/view/panels/loadPath/LoadPath.tsx'
import { SurePanel } from '../../src/view/panels/sure/SurePanel.tsx'
import { WaterPanel } from '../../src/view/panels/water/WaterPanel.tsx'
import { LifePanel } from '../../src/view/panels/years/LifePanel.tsx'
import { MixPanel } from '../../src/view/panels/years/MixPanel.tsx'
import { Legend } from '../../src/view/scene/Legend.tsx'
import { OneCode } from '../../src/view/sheet/Code.tsx'
import { Thumbnail } from '../../src/view/shelf/Thumbnail.tsx'
import { MonthPanel } from '../../src/view/time/MonthPanel.tsx'
import { Tally } from '../../src/view/kit/Tally.tsx'
import { TimeRule } from '../../src/view/time/TimeRule.tsx'
import { YearsPanel } from '../../src/view/time/YearsPanel.tsx'
import { draw } from '../view/page.ts'
import { chartsIn } from './chartText.ts'
import { soundDocument } from '../soundPier.ts'
import { exampleDocuments } from './piers.ts'
import { kept, leftOver } from './kept.ts'

HTMLCanvasElement.prototype.getContext = () => null
// The test environment has no animated lengths; a chart moves its needle through them.
for (const end of ['x1', 'x2'])
  Object.defineProperty(SVGElement.prototype, end, {
    get(this: SVGElement) {
      const line = this
      return {
        baseVal: {
          set value(to: number) {
            line.setAttribute(end, String(to))
          },
        },
      }
    },
  })

const result = () => shownResult(pierStore.getState())

/** The study of how sure a number is, done before the panel asks for it. */
const Sure = (): ReactNode => {
  const { spec, demand } = result()
  const state = sureStore.getState()
  const load = demand.uplift?.value ?? null
  const question = { ...questionOf({ ...state, samples: 1000 }, spec, load) }
  const found = simulate(spec, startingAssumptions, { seed: question.seed, samples: question.samples, demand: load })
  if (found === null) throw new Error('the study did not end')
  sureStore.setState({ samples: 1000, run: { kind: 'done', question, result: found }, last: { question, result: found } })
  return <SurePanel demand={load} />
}
/** The load path with all that would change it, tried before the page asks. */
const WithChanges = (): ReactNode => {
  const steps = suggestionSteps(result().spec)
  while (!steps.next().done);
  return <LoadPath />
}
const WithWater = (): ReactNode => {
  setLayer(pierStore, 'wetness', true)
  showMoment(pierStore, { stretch: 'years', year: 20 })
  return <Legend />
}
const rule = (stretch: 'build' | 'month' | 'years', at: number, last: number) => (
  <TimeRule ref={null} stretch={stretch} at={at} last={last} playing={false} line='' />
)

/** Every chart of the page, by the panel that it stands in. */
const charts: Readonly<Record<string, () => ReactNode>> = {
  'load-path': WithChanges,
  sure: Sure,
  month: () => <MonthPanel day={10} />,
  years: () => <YearsPanel year={25} />,
  mix: () => <MixPanel />,
  life: () => <LifePanel />,
  tally: () => <Tally counts={tallyBy(result().spec, 30)} year={30} rows={1} />,
  water: () => <WaterPanel />,
  legend: () => <Legend />,
  'legend-with-water': WithWater,
  stamp: () => <Thumbnail drawing={thumbnailOf(result().spec)} />,
  code: () => <OneCode document={pierStore.getState().document} name='' />,
}
const once: typeof charts = {
  inputs: () => <InputsPanel switches={<PageSwitches />} />,
  'rule-of-steps': () => rule('build', 3, 9),
  'rule-of-days': () => rule('month', 12, 28),
  'rule-of-years': () => rule('years', 31, 60),
}

const wanted = [
  ...exampleDocuments
    .filter(([name]) => !name.endsWith('metric'))
    .flatMap(([name, document], i) =>
      Object.entries(i === 5 ? { ...charts, ...once } : charts).map(([chart, make]) => [`${name}-${chart}`, document, make] as const),
    ),
  // Of a pier of which every link counts: without one there is no study.
  ['sound-sure', soundDocument, Sure] as const,
]

describe('[Z3] every chart is drawn as it was', () => {
  const drawnNames: string[] = []
  it.each(wanted)('%s', async (name, document, make) => {
    pierStore.setState({ view: defaultView })
    openDocument(pierStore, document)
    const page = await draw(make())
    const now = chartsIn(globalThis.document.body)
    await page.end()
    if (now === null) return
    drawnNames.push(`${name}.svg`)
    expect(now.split('\n')).toEqual(kept(`drawings/chart/${name}.svg`, now).split('\n'))
  })

  it('and none is left out', () => {
    expect(drawnNames.length).toBeGreaterThan(70)
    expect(leftOver('drawings/chart', drawnNames)).toEqual([])
    for (const chart of [...Object.keys(charts), ...Object.keys(once)])
      expect(
        drawnNames.some((name) => [...exampleDocuments, ['sound']].some(([pier]) => name === `${pier}-${chart}.svg`)),
        chart,
      ).toBe(true)
  })

  it('whatever its classes and ids are called, and a bar that is a little longer shows', () => {
    const of = (markup: string): string | null => {
      const holder = globalThis.document.createElement('div')
      holder.innerHTML = markup
      return chartsIn(holder)
    }
    const bar = (width: string, name: string) =>
      of(`<svg viewBox="0 0 100 9"><defs><pattern id="${name}"/></defs><rect class="${name}" fill="url(#${name})" width="${width}"/></svg>`)
    expect(bar('31.25%', 'other')).toBe(bar('31.25%', 'bar'))
    expect(bar('31.26%', 'bar')).not.toBe(bar('31.25%', 'bar'))
    expect(of('<p style="width: 31%">')).not.toBe(of('<p style="width: 32%">'))
    expect(of('<p>No chart</p>')).toBeNull()
  })
})
