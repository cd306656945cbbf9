// @vitest-environment jsdom
import { act, Suspense } from 'react'
import { createRoot } from 'react-dom/client'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { Apart } from '../../src/view/kit/Apart.tsx'
import { lazyPage } from '../../src/view/lazyPage.tsx'
import { wordsOf } from '../../src/words/index.ts'
import { until } from '../until.ts'

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })

const words = wordsOf('app')
let end: (() => Promise<void>) | null = null
afterEach(async () => {
  await end?.()
  end = null
})

/** What breaks is told to nobody: these tests break things on purpose. */
const drawBroken = async (node: React.ReactNode): Promise<HTMLElement> => {
  const holder = document.body.appendChild(document.createElement('div'))
  const root = createRoot(holder, { onCaughtError: () => undefined })
  await act(async () => root.render(node))
  end = async () => {
    await act(async () => root.unmount())
    holder.remove()
  }
  return holder
}
const click = async (holder: HTMLElement, name: string): Promise<void> => {
  const button = [...holder.querySelectorAll('button')].find((one) => one.textContent === name) ?? expect.fail(`no button ${name}`)
  await act(async () => button.click())
}

let isBroken = true
const Fickle = () => {
  if (isBroken) throw new Error('on purpose')
  return <p>well again</p>
}

describe('[R13] one part that breaks takes nothing else of the page with it', () => {
  it('says so in its own place, with what the page reported, and can be tried again', async () => {
    isBroken = true
    const holder = await drawBroken(
      <>
        <Apart className='inputs'>
          <Fickle />
        </Apart>
        <p>the rest</p>
      </>,
    )
    expect(holder.textContent).toContain('the rest')
    expect(holder.querySelector('.inputs.broken[role=alert]')?.textContent).toContain(words.broken.title)
    expect(holder.querySelector('pre')?.textContent).toContain('on purpose')
    await click(holder, words.actions.tryAgain)
    expect(holder.querySelector('.broken')).not.toBeNull()
    isBroken = false
    await click(holder, words.actions.tryAgain)
    expect(holder.textContent).toBe('well againthe rest')
  })

  it('a part that can not be fetched is told, is fetched again when it is asked for, and what lies over the page can be closed', async () => {
    let tries = 0
    const Late = lazyPage<{ onClose: () => void }>(async () => {
      if (++tries < 3) throw new TypeError('Failed to fetch dynamically imported module')
      return () => <p>fetched</p>
    }, [])
    const close = vi.fn()
    const holder = await drawBroken(
      <>
        <Suspense fallback='waiting'>
          <Late onClose={close} />
        </Suspense>
        <p>the rest</p>
      </>,
    )
    await until(() => expect(holder.querySelector('.broken-over')).not.toBeNull())
    expect(holder.textContent).toContain('the rest')
    await click(holder, words.actions.close)
    expect(close).toHaveBeenCalledTimes(1)
    await click(holder, words.actions.tryAgain)
    await until(() => expect(tries).toBe(2))
    await click(holder, words.actions.tryAgain)
    await until(() => expect(holder.textContent).toContain('fetched'))
  })
})
