// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest'
import { fillKinds } from '../../src/core/kinds/index.ts'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { openDocument } from '../../src/state/actions/document.ts'
import { editField, pickChoice, switchPart } from '../../src/state/actions/edit.ts'
import { setUnits } from '../../src/state/actions/view.ts'
import { shownResult } from '../../src/state/derived.ts'
import { pierStore } from '../../src/state/store.ts'
import { wordsOf } from '../../src/words/index.ts'
import { AgainstDrawing } from '../../src/view/panels/drawing/AgainstDrawing.tsx'
import { DrawingEditor } from '../../src/view/panels/drawing/DrawingEditor.tsx'
import { draw, leave, setValue } from './page.ts'

const words = wordsOf('drawing')
let view: Awaited<ReturnType<typeof draw>> | null = null
afterEach(async () => {
  await view?.end()
  view = null
  openDocument(pierStore, defaultDocument)
  setUnits(pierStore, 'us')
})

const drawn: readonly (readonly [path: string, value: string])[] = [
  ['callout.diameter', '18 in'],
  ['callout.depth', `4'-0"`],
  ['callout.strength', '3000 psi'],
  ['callout.mixed', 'yes'],
  ['callout.encasement', 'yes'],
  ['callout.barThrough', 'yes'],
  ['callout.barSize', '#5'],
  ['callout.section', '6x6'],
  ['callout.treatment', 'UC4B'],
  ['callout.bracket', 'no'],
  ['callout.uplift', '900 lb'],
  ['callout.frostDepth', '42 in'],
  ['callout.soil', 'sand'],
]
const enter = (): void => {
  switchPart(pierStore, 'callout', true)
  for (const [path, value] of drawn) {
    const isNumber = /\d (in|psi|lb)$|"$/.test(value)
    expect(isNumber ? editField(pierStore, path, value) : pickChoice(pierStore, path, value), path).toBe(true)
  }
}
const said = (): string => document.body.textContent ?? ''

describe('[D8] the check as a person sees it', () => {
  it('asks for the drawing while there is none', async () => {
    view = await draw(<AgainstDrawing />)
    expect(said()).toContain(words.empty)
    expect(document.querySelector('table')).toBeNull()
  })

  it.each(fillKinds.map((kind) => kind.id))('%s: the word for the whole, every item with shape and word, and who decides', async (id) => {
    openDocument(pierStore, defaultDocument)
    enter()
    pickChoice(pierStore, 'fill.kind', id)
    for (const units of ['us', 'metric'] as const) {
      setUnits(pierStore, units)
      view = await draw(<AgainstDrawing />)
      const { callout } = shownResult(pierStore.getState())
      if (!callout) expect.fail('no check')
      expect(said()).not.toMatch(/NaN|undefined|Infinity|\[object/)
      expect(document.querySelector('.large')?.textContent).toBe(words.overall[callout.overall])
      expect(said()).toContain(words.checked(13))
      expect(said()).toContain(words.decides)
      const rows = [...document.querySelectorAll('.drawn .fact')]
      expect(rows.map((row) => row.getAttribute('data-verdict'))).toEqual(callout.items.map((item) => item.verdict))
      for (const [i, item] of callout.items.entries()) {
        expect(rows[i]?.querySelector('.fact-head svg')).not.toBeNull()
        expect(rows[i]?.querySelector('.fact-head .block')?.textContent).toBe(words.verdicts[item.verdict])
        const isTold = item.verdict === 'falls short' || item.verdict === "can't be verified"
        expect(rows[i]?.querySelector('.fact-more')?.hasAttribute('hidden')).toBe(!isTold)
      }
      await view.end()
      view = null
    }
  })

  it('says what a narrower hole costs', async () => {
    enter()
    editField(pierStore, 'bars.length', '10 in')
    editField(pierStore, 'hole.diameter', '16 in')
    view = await draw(<AgainstDrawing />)
    expect(said()).toContain(words.why['hole-narrower'])
    expect(said()).toContain('−21%')
    expect(said()).toContain('−215 lb')
    expect(said()).toContain('−2 in')
  })

  it('takes figures, empties and words', async () => {
    view = await draw(<DrawingEditor path='callout' />)
    await view.act(async () => void switchPart(pierStore, 'callout', true))
    const box = [...document.querySelectorAll<HTMLInputElement>('input.box')].find((one) => one.placeholder === words.inputs.notDrawn)
    if (!box) expect.fail('no box')
    await view.act(async () => {
      setValue(box, '20')
      leave(box)
    })
    expect(pierStore.getState().document.spec.callout?.diameter).toBeCloseTo(20 * 0.0254, 12)
    await view.act(async () => setValue(box, ''))
    await view.act(async () => leave(box))
    expect(pierStore.getState().document.spec.callout?.diameter).toBeNull()
    const notes = document.querySelector('textarea')
    if (!notes) expect.fail('no notes')
    await view.act(async () => {
      notes.value = 'see detail 4'
      leave(notes)
    })
    expect(pierStore.getState().document.spec.callout?.notes).toBe('see detail 4')
  })
})
