// @vitest-environment jsdom
import { act } from 'react'
import { createRoot } from 'react-dom/client'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { App } from '../../src/view/app/App.tsx'
import { picture } from '../../src/view/live/opening.ts'
import { wordsOf } from '../../src/words/index.ts'
import { until } from '../until.ts'

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })

const broken = vi.hoisted(() => ({ name: '' }))
/** A panel that breaks when it is told to, and is its own name otherwise. */
const panel = vi.hoisted(() => (name: string) => ({
  [name]: () => {
    if (broken.name === name) throw new Error(`${name} on purpose`)
    return <p>{name} is well</p>
  },
}))
vi.mock('../../src/view/app/Head.tsx', () => panel('Head'))
vi.mock('../../src/view/app/Picture.tsx', () => panel('Picture'))
vi.mock('../../src/view/app/Notices.tsx', () => panel('Notices'))
vi.mock('../../src/view/panels/answers/AnswersPanel.tsx', () => panel('AnswersPanel'))
vi.mock('../../src/view/panels/answers/CautionStrip.tsx', () => panel('CautionStrip'))
vi.mock('../../src/view/panels/answers/TitleBlock.tsx', () => panel('TitleBlock'))
vi.mock('../../src/view/panels/inputs/InputsPanel.tsx', () => panel('InputsPanel'))

const panels = ['Head', 'Picture', 'TitleBlock', 'InputsPanel', 'AnswersPanel', 'CautionStrip', 'Notices'] as const
let end: () => Promise<void> = async () => undefined
afterEach(() => end())

describe('[R13] one part that breaks takes nothing else of the page with it', () => {
  it.each(panels)('%s breaks, and every other panel stays', async (name) => {
    broken.name = name
    const holder = document.body.appendChild(document.createElement('div'))
    const root = createRoot(holder, { onCaughtError: () => undefined })
    end = async () => {
      await act(async () => root.unmount())
      holder.remove()
    }
    await act(async () => root.render(<App />))
    // The picture's own stand-in says nothing of how it stands.
    picture.pass()
    await until(async () => {
      await act(async () => undefined)
      for (const other of panels) if (other !== name) expect(holder.textContent).toContain(`${other} is well`)
    })
    expect(holder.textContent).toContain(wordsOf('app').broken.title)
    expect(holder.textContent).toContain(`${name} on purpose`)
  })
})
