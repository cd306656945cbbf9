// @vitest-environment jsdom
import fc from 'fast-check'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { fillKinds } from '../../../src/core/kinds/index.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import { setChoice, setField, setPart } from '../../../src/core/spec/edit.ts'
import { openDocument } from '../../../src/state/actions/document.ts'
import { undo } from '../../../src/state/actions/history.ts'
import { openLink, pointAt, setPull } from '../../../src/state/actions/view.ts'
import { shownResult } from '../../../src/state/derived.ts'
import { pierStore } from '../../../src/state/store.ts'
import { wordsOf } from '../../../src/words/index.ts'
import { LoadPath } from '../../../src/view/panels/loadPath/LoadPath.tsx'
import { arbitraryPier } from '../../arbitraryPier.ts'
import { soundDocument } from '../../soundPier.ts'
import { draw, setValue } from '../page.ts'
import { until } from '../../until.ts'

const words = wordsOf('loadPath')
type Edit = (document: PierDocument) => ReturnType<typeof setChoice>
const edited = (...edits: readonly Edit[]): PierDocument =>
  edits.reduce<PierDocument>((now, edit) => {
    const next = edit(now)
    if (!next.ok) throw new Error(JSON.stringify(next.issues))
    return next.value
  }, soundDocument)
const loads: Edit = (d) => {
  const on = setPart(d, 'loads.entered', true)
  return on.ok ? setField(on.value, 'loads.entered.uplift', '800 lb', 'us') : on
}
const asks =
  (uplift: string): Edit =>
  (d) =>
    setField(d, 'loads.entered.uplift', uplift, 'us')
const estimate: Edit = (d) => setPart(d, 'loads.estimate', true)
const bell: Edit = (d) => setPart(d, 'hole.bell', true)
const fill =
  (kind: string): Edit =>
  (d) =>
    setChoice(d, 'fill.kind', kind)

let view: Awaited<ReturnType<typeof draw>>
const shown = async (...edits: readonly Edit[]): Promise<void> => {
  openDocument(pierStore, edited(...edits))
  pierStore.temporal.getState().clear()
  view = await draw(<LoadPath />)
}
beforeEach(() => {
  vi.useFakeTimers()
  openLink(pierStore, null)
  pointAt(pierStore, null)
  setPull(pierStore, null)
})
afterEach(async () => {
  await view.end()
  vi.useRealTimers()
})

const links = () => [...document.querySelectorAll<HTMLElement>('.link')]
const said = (node: Element | null | undefined): string => node?.textContent ?? ''
const link = (name: string): HTMLElement => links().find((one) => said(one.querySelector('.link-name')) === name) ?? expect.fail(name)
const head = (name: string) => link(name).querySelector<HTMLButtonElement>('.link-head') ?? expect.fail(name)
const click = async (node: Element | null | undefined) => {
  if (!(node instanceof HTMLElement)) throw new Error('nothing to click')
  await view.act(async () => node.click())
}
const button = (name: string) =>
  [...document.querySelectorAll('button')].find((one) => said(one) === name || one.getAttribute('aria-label') === name)
const past = () => pierStore.temporal.getState().pastStates.length
/** Lets the page's clock run on [ms]. */
const wait = (ms: number) => view.act(async () => void (await vi.advanceTimersByTimeAsync(ms)))

describe('[P5] the chart of the load path', () => {
  it('lists the links from the post down, each with its number, and marks the one that governs', async () => {
    await shown(loads)
    expect(document.querySelector('ol.chart-groups')?.getAttribute('aria-label')).toBe(words.chart)
    const names = links().map((one) => said(one.querySelector('.link-name')))
    const answers = wordsOf('headlines')
    expect(names.indexOf(answers['post-net-tension'].label)).toBeLessThan(names.indexOf(answers['bar-through-post'].label))
    expect(names.indexOf(answers['bar-through-post'].label)).toBeLessThan(names.indexOf(answers['concrete-breakout'].label))
    expect(names.indexOf(answers['concrete-breakout'].label)).toBeLessThan(names.indexOf(answers['friction-and-weight'].label))
    const governing = links().filter((one) => one.dataset.governs)
    expect(governing).toHaveLength(1)
    expect(said(governing[0])).toContain(wordsOf('app').answers.governs)
    for (const one of links().filter((row) => row.dataset.place === 'needed')) {
      expect(said(one.querySelector('.link-number'))).toMatch(/\d/)
      expect(one.querySelectorAll('.bar-demand')).toHaveLength(1)
      expect(one.querySelector('svg.bar')?.getAttribute('aria-hidden')).toBe('true')
    }
  })

  it.each(fillKinds.filter((kind) => kind.counting.connection.counted === 'not counted').map((kind) => kind.id))(
    '%s: hatched, with its reason and what would verify it, and no ratio anywhere',
    async (id) => {
      await shown(fill(id), loads)
      const uncounted = links().filter((one) => one.querySelector('.link-head > .mark-unverified'))
      expect(uncounted.length).toBe(shownResult(pierStore.getState()).uplift.uncounted.length)
      for (const one of uncounted) {
        expect(one.querySelector('.bar-uncounted')?.getAttribute('width')).toBe('100%')
        expect(said(one.querySelector('.link-number'))).toBe('')
        expect(said(one.querySelector('.link-words > .block')).length).toBeGreaterThan(20)
      }
      expect(said(document.querySelector('.chain-summary'))).toContain(words.unverifiedHelp)
      expect(document.querySelectorAll('.chain-summary li').length).toBeGreaterThan(0)
      for (const check of shownResult(pierStore.getState()).checks.filter((one) => one.group.startsWith('uplift')))
        await view.act(async () => openLink(pierStore, check.id))
      const all = said(document.body)
      expect(all).not.toMatch(/of what it holds|times what it holds/)
      expect(document.querySelector('.pad-ratio')).toBeNull()
      expect(document.querySelector('.bar-load, .bar-pull')).toBeNull()
    },
  )

  it('has words for what would make each reason verifiable', () => {
    const reasons = fillKinds.flatMap((kind) => Object.values(kind.counting).filter((one) => one.counted === 'not counted'))
    const uplift = reasons.map((one) => one.why).filter((why) => !why.endsWith('-press-sideways'))
    expect(uplift.length).toBeGreaterThan(5)
    expect(uplift.filter((why) => !Object.hasOwn(wordsOf('verifiable'), why))).toEqual([])
    const seen = new Set<string>()
    fc.assert(
      fc.property(arbitraryPier(), ({ spec }) => {
        const { checks, uplift: path } = derivePier(spec)
        for (const check of checks) if (path.uncounted.includes(check.id)) seen.add(check.why ?? 'no reason')
      }),
      { numRuns: 200, seed: 5 },
    )
    expect(seen.size).toBeGreaterThan(4)
    expect([...seen].filter((why) => !Object.hasOwn(wordsOf('verifiable'), why))).toEqual([])
  })

  it('a link opens its work, marks its part and asks for a closer look; a part picked elsewhere opens it too', async () => {
    await shown(loads)
    const name = wordsOf('headlines')['bar-through-post'].label
    const before = pierStore.getState().view.viewpoint.at
    await click(head(name))
    expect(head(name).getAttribute('aria-expanded')).toBe('true')
    expect(pierStore.getState().view).toMatchObject({ pointedAt: 'bars', openLink: 'bar-through-post' })
    expect(pierStore.getState().view.viewpoint).toEqual({ name: 'close-up', at: before + 1 })
    await until(async () => expect(said(link(name).querySelector('.pad'))).toContain(wordsOf('answers')['yield-mode-IV'].label))
    const pad = link(name).querySelector('.pad')
    for (const mode of ['Im', 'Is', 'IIIs', 'IV'] as const) expect(said(pad)).toContain(wordsOf('answers')[`yield-mode-${mode}`].label)
    expect(pad?.querySelectorAll('[data-least]')).toHaveLength(1)
    expect(said(pad?.querySelector('[data-least]'))).toContain(words.pad.least)
    expect(said(pad?.querySelector('[data-result]'))).toContain(said(link(name).querySelector('.link-number')))
    expect(said(pad?.querySelector('.pad-ratio'))).toMatch(/= 0\.\d\d$/)
    expect(said(pad?.querySelector('.pad-sources'))).toMatch(/National Design Specification/)
    await click(head(name))
    expect(pierStore.getState().view.openLink).toBeNull()
    await view.act(async () => openLink(pierStore, 'post-net-tension'))
    expect(head(wordsOf('headlines')['post-net-tension'].label).getAttribute('aria-expanded')).toBe('true')
  })

  it('says how much is used, or that it falls short, and whether it is an estimate', async () => {
    await shown(loads)
    expect(said(document.querySelector('.chain-summary'))).toMatch(/^800 lb asked · 8\d% of what it holds$/)
    await view.act(async () => openDocument(pierStore, edited(loads, asks('1300 lb'))))
    expect(said(document.querySelector('.chain-summary'))).toContain('1.4 times what it holds')
    const short = links().filter((one) => one.querySelector('.bar-missing'))
    expect(short.map((one) => said(one.querySelector('.link-words')))).toEqual([
      expect.stringContaining(wordsOf('app').answers.below.entered) as string,
    ])
    await view.act(async () => openDocument(pierStore, edited(estimate)))
    expect(said(document.querySelector('.chain-summary'))).toContain('estimated')
    expect(said(document.querySelector('.axis'))).toContain(words.demand.estimated)
    expect(document.querySelectorAll('[data-chosen]')).toHaveLength(1)
    await view.act(async () => openDocument(pierStore, soundDocument))
    expect(said(document.querySelector('.chain-summary'))).toContain(words.noDemand)
    expect(document.querySelector('.bar-demand')).toBeNull()
  })
})

describe('[P6] another way to count the ground', () => {
  const cone = () =>
    [...document.querySelectorAll<HTMLInputElement>('.way-choice input')].find((one) =>
      said(one.closest('label')).startsWith(wordsOf('headlines')['cone-over-ledge'].label),
    )
  const box = () => document.querySelector('textarea')
  const write = (value: string) =>
    view.act(async () => {
      const node = box()
      if (!node) throw new Error('no box')
      Object.getOwnPropertyDescriptor(HTMLTextAreaElement.prototype, 'value')?.set?.call(node, value)
      node.dispatchEvent(new Event('input', { bubbles: true }))
    })

  it('asks for a reason, and does nothing without one', async () => {
    await shown(bell)
    expect(box()).toBeNull()
    await click(cone())
    expect(box()).not.toBeNull()
    await click(button(words.soil.use))
    expect(box()?.getAttribute('aria-invalid')).toBe('true')
    expect(said(document.querySelector('.reason'))).toMatch(/at least 10 characters/)
    await write('too short')
    await click(button(words.soil.use))
    expect(past()).toBe(0)
    await click(button(words.soil.cancel))
    expect(box()).toBeNull()
    expect(pierStore.getState().document.spec.judgement).toBeNull()
  })

  it('with one it is used at once, as one undo step, and the reason stands beside the number', async () => {
    await shown(bell)
    const reason = 'The county engineer read boring B-2'
    await click(cone())
    await write(reason)
    await click(button(words.soil.use))
    expect(past()).toBe(1)
    expect(shownResult(pierStore.getState()).uplift.soil).toBe('cone-over-ledge')
    expect(said(document.querySelector('.given-reason'))).toContain(reason)
    expect(said(document.querySelector('.given-reason'))).toContain(words.soil.stays)
    expect(said(link(wordsOf('headlines')['cone-over-ledge'].label))).toContain(words.byJudgement)
    await click(button(words.soil.back))
    expect(pierStore.getState().document.spec.judgement).toBeNull()
    await view.act(async () => undo(pierStore))
    expect(pierStore.getState().document.spec.judgement?.reason).toBe(reason)
    await view.act(async () => undo(pierStore))
    expect(document.querySelector('.given-reason')).toBeNull()
  })
})

describe('[P7] what changes the number most', () => {
  it('is ranked, says what governs then, and each change is one undo step', async () => {
    await shown(loads)
    await wait(2000)
    const rows = [...document.querySelectorAll('.change:not(.change-ask)')]
    expect(rows.length).toBeGreaterThan(1)
    expect(
      rows.map((row) =>
        Number(
          said(row.querySelector('.number'))
            .replace(/[^\d.−]/g, '')
            .replace('−', '-'),
        ),
      ),
    ).toEqual(
      [
        ...rows.map((row) =>
          Number(
            said(row.querySelector('.number'))
              .replace(/[^\d.−]/g, '')
              .replace('−', '-'),
          ),
        ),
      ].sort((a, b) => b - a),
    )
    expect(said(document.querySelector('.change-ask'))).toMatch(/engineer/i)
    const before = shownResult(pierStore.getState()).uplift.allowable ?? 0
    await click(rows[0]?.querySelector('button'))
    expect(past()).toBe(1)
    expect(shownResult(pierStore.getState()).uplift.allowable).toBeGreaterThan(before)
    await view.act(async () => undo(pierStore))
    expect(shownResult(pierStore.getState()).uplift.allowable).toBe(before)
  })

  it('has nothing to compare while a link can not be verified', async () => {
    await shown(fill('dry-full-height'))
    await wait(2000)
    expect(document.querySelector('.change')).toBeNull()
    expect(said(document.body)).toContain(words.changes.nothing)
  })
})

describe('[P8] raise the uplift', () => {
  const slider = () => document.querySelector<HTMLInputElement>('.path-raise input') ?? expect.fail('no slider')
  const pull = () => pierStore.getState().view.pull
  const fills = () => [...document.querySelectorAll('.bar-load')].map((rect) => Number.parseFloat(rect.getAttribute('width') ?? '0'))

  it('fills every bar with the pull, and says how the path lets go where its weakest link is full', async () => {
    await shown()
    expect(fills().every((width) => width === 0)).toBe(true)
    await view.act(async () => setValue(slider(), '60'))
    const half = fills()
    expect(half.every((width) => width > 0)).toBe(true)
    expect(said(document.querySelector('[role=status]'))).toBe('')
    await view.act(async () => setValue(slider(), '200'))
    fills().forEach((width, i) => void expect(width).toBeGreaterThan(half[i] ?? Number.POSITIVE_INFINITY))
    const told = said(document.querySelector('.lets-go'))
    expect(told).toContain(wordsOf('loadPath').lettingGo['pier-slides'])
    expect(told).toContain(words.raise.illustrative)
    expect(pierStore.getState().document.spec).toEqual(soundDocument.spec)
    await click(button(words.raise.off))
    expect(pull()).toBeNull()
  })

  it('runs by itself to where it lets go, and pauses', async () => {
    // A slow screen, to draw the chart no more often than the test needs.
    vi.stubGlobal('requestAnimationFrame', (draw: FrameRequestCallback) => setTimeout(() => draw(performance.now()), 200))
    vi.stubGlobal('cancelAnimationFrame', clearTimeout)
    await shown()
    const holds = shownResult(pierStore.getState()).uplift.allowable ?? Number.NaN
    await click(button(words.raise.play))
    await wait(1000)
    await click(button(words.raise.pause))
    const paused = pull() ?? Number.NaN
    expect(paused).toBeGreaterThan(0)
    expect(paused).toBeLessThan(holds)
    await wait(1000)
    expect(pull()).toBe(paused)
    await click(button(words.raise.play))
    await wait(10_000)
    expect(pull()).toBe(holds)
    vi.unstubAllGlobals()
  })

  it('goes to the end at once where motion is not wanted', async () => {
    vi.stubGlobal('matchMedia', (query: string) => ({ matches: query.includes('reduced-motion') }))
    await shown()
    await click(button(words.raise.end))
    expect(pull()).toBe(shownResult(pierStore.getState()).uplift.allowable)
    expect(said(document.querySelector('.lets-go'))).toContain(words.raise.illustrative)
    vi.unstubAllGlobals()
  })

  it('is not there for a path without a number, and stops when the path loses its own', async () => {
    await shown()
    await view.act(async () => setValue(slider(), '100'))
    await view.act(async () => openDocument(pierStore, edited(fill('dry-bag-at-foot'))))
    expect(pull()).toBeNull()
    expect(document.querySelector('.path-raise input')).toBeNull()
    expect(said(document.querySelector('.path-raise'))).toContain(words.raise.none)
  })
})
