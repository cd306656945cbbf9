// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest'
import { fillKinds } from '../../src/core/kinds/index.ts'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { formatText } from '../../src/core/units/format.ts'
import { openDocument } from '../../src/state/actions/document.ts'
import { editField, pickChoice, switchPart } from '../../src/state/actions/edit.ts'
import { pointAt, setUnits } from '../../src/state/actions/view.ts'
import { shownResult } from '../../src/state/derived.ts'
import { pierStore } from '../../src/state/store.ts'
import { wordsOf } from '../../src/words/index.ts'
import { AnswersPanel } from '../../src/view/panels/answers/AnswersPanel.tsx'
import { CautionStrip } from '../../src/view/panels/answers/CautionStrip.tsx'
import { TitleBlock } from '../../src/view/panels/answers/TitleBlock.tsx'
import { draw } from './page.ts'

const Answers = () => (
  <>
    <TitleBlock />
    <AnswersPanel />
    <CautionStrip />
  </>
)
let view: Awaited<ReturnType<typeof draw>> | null = null
const shown = async (kind: string, units: 'us' | 'metric' = 'us'): Promise<string> => {
  await view?.end()
  openDocument(pierStore, defaultDocument)
  setUnits(pierStore, units)
  pickChoice(pierStore, 'fill.kind', kind)
  view = await draw(<Answers />)
  return document.body.textContent ?? ''
}
afterEach(async () => {
  await view?.end()
  view = null
})

describe('[P2] answers', () => {
  it('tells under the mix what is ordered of it, never the stone of the bed', async () => {
    await shown('mixed-collar')
    const without = document.querySelector('.title')?.textContent ?? ''
    await view?.act(async () => switchPart(pierStore, 'hole.base', true))
    const line = shownResult(pierStore.getState()).quantities.find((one) => one.role === 'concrete')
    const order = line?.orders[0]
    if (order === undefined || order.as === 'bags') expect.fail('no ready mix')
    expect(document.querySelector('.title')?.textContent).toContain(
      formatText(order.each, 'volume', 'us', { unit: 'yd3' }).replace(' ', '\u00a0'),
    )
    expect(without).toContain('yd³')
  })

  it.each(fillKinds.map((kind) => kind.id))('%s: says what holds it down, or that it cannot be verified', async (id) => {
    for (const units of ['us', 'metric'] as const) {
      const said = await shown(id, units)
      const { uplift } = shownResult(pierStore.getState())
      expect(said).not.toMatch(/NaN|undefined|Infinity|\[object|-0 /)
      const main = document.querySelector('.title-main')?.textContent ?? ''
      if (uplift.allowable === null) {
        expect(main).toContain(wordsOf('app').verdicts.unverified)
        expect(main).not.toMatch(/\b0 (lb|kN)|fails/i)
      } else expect(main).toMatch(units === 'us' ? /\d lb/ : /\d k?N/)
    }
  })

  it('speaks of an uphill and a downhill side on a slope alone', async () => {
    const { sides } = wordsOf('app').answers
    await shown('mixed-full-height')
    expect(document.querySelector('.title')?.textContent).toContain(sides.uphill)
    await view?.act(async () => void editField(pierStore, 'site.slope', '0'))
    expect(document.querySelector('.title')?.textContent).toContain(sides.all)
    const page = document.body.textContent ?? ''
    for (const side of [sides.uphill, sides.downhill]) expect(page).not.toContain(side)
    expect(page).toContain(wordsOf('app').answers.depthLevel)
  })

  it('gives no number for what may not be counted', async () => {
    await shown('dry-full-height')
    const { checks } = shownResult(pierStore.getState())
    expect(checks.filter((check) => check.counted === 'not counted').length).toBeGreaterThan(1)
    let seen = 0
    for (const row of document.querySelectorAll('.link')) {
      if (!row.querySelector('.link-head > .mark-unverified')) continue
      seen++
      expect(row.querySelector('.link-number')?.textContent).toBe('')
    }
    expect(seen).toBeGreaterThan(1)
  })

  it('says every issue of the pier, and the cautions always', async () => {
    const said = await shown('dry-bag-at-foot')
    expect(shownResult(pierStore.getState()).issues.length).toBeGreaterThan(0)
    expect(said).toContain("The strength of mix placed dry can't be verified")
    expect(document.querySelector('.strip')?.textContent).toMatch(/engineer/)
  })

  it('quotes the trial of 2003 beside the doubt', async () => {
    expect(await shown('dry-full-height')).toMatch(/trial of 2003.*as strong as mixed concrete/s)
  })

  it('lights the rows of the part that is pointed at, and marks the part of a row', async () => {
    await shown('mixed-full-height')
    await view?.act(async () => pointAt(pierStore, 'bars'))
    expect([...document.querySelectorAll('[data-lit]')].length).toBeGreaterThan(1)
    await view?.act(async () => pointAt(pierStore, null))
    expect(document.querySelector('[data-lit]')).toBeNull()
    const row = document.querySelector('tr.row') as HTMLElement
    await view?.act(async () => row.focus())
    expect(pierStore.getState().view.pointedAt).toBe('concrete')
    await view?.act(async () => row.blur())
    expect(pierStore.getState().view.pointedAt).toBeNull()
  })

  it('follows a draft in the same breath', async () => {
    await shown('mixed-full-height')
    const before = document.querySelector('.title')?.textContent
    await view?.act(async () => void editField(pierStore, 'hole.diameter', '30 in'))
    expect(document.querySelector('.title')?.textContent).not.toBe(before)
  })
})
