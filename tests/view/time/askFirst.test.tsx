// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { buildSteps } from '../../../src/core/derive/build/buildSteps.ts'
import { mistakes } from '../../../src/core/derive/build/mistakes.ts'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { fillKinds } from '../../../src/core/kinds/index.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { withChoice } from '../../../src/core/spec/choose.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { momentAt, setPlaying, showMoment } from '../../../src/state/actions/time.ts'
import { putRight } from '../../../src/state/actions/view.ts'
import { shownSteps } from '../../../src/state/shown.ts'
import { pierStore } from '../../../src/state/store.ts'
import { mixOf } from '../../../src/state/timeDerived.ts'
import { questions } from '../../../src/words/en/questions.ts'
import { time as words } from '../../../src/words/en/time.ts'
import { holds } from '../../../src/core/derive/build/guesses.ts'
import { AskFirst } from '../../../src/view/time/AskFirst.tsx'
import { questionAt } from '../../../src/view/time/questionAt.ts'
import { draw } from '../page.ts'

const all = [questions.years, questions.month, questions.mistakes].flatMap((group) => Object.values(group))
const built = (kind: string): PierSpec => withChoice(defaultSpec, 'fill.kind', kind)
const asked = (kind: string, stretch: 'month' | 'years') => questionAt(momentAt(stretch, 3), [], built(kind))?.key ?? null

describe('[W13] a question before something is shown', () => {
  it('has three options that differ, and something to look for', () => {
    expect(all.length).toBeGreaterThan(6)
    for (const { ask, options, look } of all) {
      expect(ask).toMatch(/\?$/)
      expect(new Set(options).size).toBe(3)
      expect(look).not.toBe('')
    }
  })

  it('is about the pier on show', () => {
    expect(asked('mixed-full-height', 'years')).toBe('years-buried')
    expect(asked('mixed-bracket-pier', 'years')).toBe('years-above')
    expect(asked('mixed-full-height', 'month')).toBe('month-mixed')
    expect(asked('dry-full-height', 'month')).toBe('month-dry')
    for (const { id } of fillKinds) {
      const { concrete } = mixOf(built(id))
      expect(asked(id, 'month')).toBe(concrete && `month-${concrete.as}`)
    }
  })

  it('of a mistake comes at a step at which this pier can be built so', () => {
    const spec = defaultSpec
    const steps = buildSteps(spec, derivePier(spec))
    const found = steps.flatMap((_, step) => questionAt({ stretch: 'build', step }, steps, spec)?.shows ?? [])
    expect(found.length).toBeGreaterThan(2)
    for (const id of found) expect(mistakes.find((one) => one.id === id)?.applies(spec)).toBe(true)
  })
})

describe('[W13] asking first', () => {
  let page: Awaited<ReturnType<typeof draw>> | null = null
  const step = shownSteps(pierStore.getState()).findIndex(({ wrong }) => wrong.includes('undersized-hole'))
  const button = (name: string | RegExp): HTMLButtonElement =>
    [...document.querySelectorAll('button')].find(({ textContent }) =>
      typeof name === 'string' ? textContent === name : name.test(textContent ?? ''),
    ) ?? expect.fail(`no button ${name}`)
  const press = async (name: string | RegExp): Promise<void> => {
    await page?.act(async () => button(name).click())
  }
  beforeEach(async () => {
    page = await draw(
      <AskFirst moment={{ stretch: 'build', step }}>
        <p>what there is to say</p>
      </AskFirst>,
    )
  })
  afterEach(async () => {
    await page?.end()
    page = null
    putRight(pierStore)
    setPlaying(pierStore, false)
    showMoment(pierStore, null)
  })

  it('keeps back the words until somebody has guessed; then says which holds, and makes the mistake to look at', async () => {
    const { ask, options, look } = questions.mistakes['undersized-hole']
    expect(document.body.textContent).toContain(ask)
    expect(document.body.textContent).not.toContain('what there is to say')
    // Danger is never kept back.
    expect(document.body.textContent).toContain(words.build.danger)
    expect(pierStore.getState().view.mistakes).toEqual([])
    await press(options[0])
    expect(document.body.textContent).toContain('what there is to say')
    expect(document.body.textContent).toContain(look)
    expect(button(new RegExp(`^${options[holds.mistakes['undersized-hole']]}`)).textContent).toContain(words.ask.holds)
    expect(button(new RegExp(`^${options[0]}`)).textContent).toContain(words.ask.guessed)
    expect(pierStore.getState().view.mistakes).toEqual(['undersized-hole'])
  })

  it('asks anew with everything as it was', async () => {
    const { options } = questions.mistakes['undersized-hole']
    await press(options[1])
    await press(words.ask.anew)
    expect(document.body.textContent).not.toContain('what there is to say')
    expect(pierStore.getState().view.mistakes).toEqual([])
    expect(button(options[1]).disabled).toBe(false)
  })
})
