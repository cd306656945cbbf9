// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { notify } from '../../src/state/actions/notices.ts'
import { mendMissingPart } from '../../src/view/app/missingPart.ts'
import { freshStore } from '../state/freshStore.ts'

const answers = (ok: boolean) => vi.stubGlobal('fetch', () => Promise.resolve({ ok }))
const miss = async (): Promise<void> => {
  window.dispatchEvent(new Event('vite:preloadError'))
  await vi.advanceTimersByTimeAsync(1000)
}
const listeners: [string, EventListener][] = []
const listening = vi.spyOn(window, 'addEventListener')

const watched = (version: string, store = freshStore()) => {
  const reload = vi.fn()
  mendMissingPart(store, version, reload)
  for (const [name, listener] of listening.mock.calls) listeners.push([name, listener as EventListener])
  return reload
}

beforeEach(() => {
  vi.useFakeTimers()
  sessionStorage.clear()
  listening.mockClear()
  answers(true)
})
afterEach(() => {
  for (const [name, listener] of listeners.splice(0)) window.removeEventListener(name, listener)
  vi.unstubAllGlobals()
  vi.useRealTimers()
})

describe('[S8] a part of the page that is gone from its host', () => {
  it('opens the page again, once for each version of it', async () => {
    const reload = watched('one')
    await miss()
    expect(reload).toHaveBeenCalledTimes(1)
    await miss()
    expect(reload).toHaveBeenCalledTimes(1)
    const next = watched('two')
    await miss()
    expect(next).toHaveBeenCalledTimes(1)
  })

  it('never does so while the host is away, nor when the pier is noted nowhere', async () => {
    answers(false)
    const away = watched('one')
    await miss()
    expect(away).not.toHaveBeenCalled()
    answers(true)
    const store = freshStore()
    notify(store, { code: 'storage-blocked' })
    const unnoted = watched('three', store)
    await miss()
    expect(unnoted).not.toHaveBeenCalled()
  })
})
