import { defaultDocument } from '../../src/core/spec/defaults.ts'
import type { PierDocument } from '../../src/core/model/spec.ts'
import { createPierStore, type PierStore } from '../../src/state/store.ts'

/** A store of its own for each test. */
export const freshStore = (document: PierDocument = defaultDocument): PierStore => createPierStore(document)

/** Storage in memory, that can be told to refuse. */
export const memoryStorage = (refuse: { error: Error | null } = { error: null }) => {
  const kept = new Map<string, string>()
  const guard = (): void => {
    if (refuse.error) throw refuse.error
  }
  return {
    kept,
    get length(): number {
      guard()
      return kept.size
    },
    key: (at: number): string | null => [...kept.keys()][at] ?? null,
    getItem: (key: string): string | null => {
      guard()
      return kept.get(key) ?? null
    },
    setItem: (key: string, value: string): void => {
      guard()
      kept.set(key, value)
    },
    removeItem: (key: string): void => {
      guard()
      kept.delete(key)
    },
  }
}

/** The part of a page that a session needs; `go` changes the address as a person does. */
export const fakePage = (hash = '') => {
  const listeners: (() => void)[] = []
  const location = { hash, href: `http://pier.test/app/?quality=light${hash}` }
  return {
    location,
    history: {
      replaceState: (_: unknown, __: string, url?: string | URL | null): void => {
        location.hash = String(url ?? '')
      },
    },
    addEventListener: (_: string, listener: () => void): void => void listeners.push(listener),
    go: (next: string): void => {
      location.hash = next
      for (const listener of listeners) listener()
    },
  }
}

/** A tab of its own; `others` are open beside it. */
export const fakeTab = (id = `tab${++tabs}`, others: readonly string[] = []) =>
  Promise.resolve({ id, live: async () => new Set([id, ...others]) })
let tabs = 0
