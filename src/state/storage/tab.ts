import { newId } from '../document/opened.ts'

/** This tab of the browser, told apart from all others, so that two of them never write into one note. */
export type Tab = Readonly<{
  id: string
  /** Ids of the tabs that are open now; null where the browser can't tell. */
  live: () => Promise<ReadonlySet<string> | null>
}>

const key = 'pierglass.tab'
const lockOf = (id: string): string => `pierglass.tab.${id}`
/** A start never waits longer for the other tabs [ms]. */
const patience = 250

const remembered = (): string | null => {
  try {
    return sessionStorage.getItem(key)
  } catch {
    return null
  }
}
const remember = (id: string): void => {
  try {
    sessionStorage.setItem(key, id)
  } catch {
    // A reload is then a new tab; its note is found all the same.
  }
}

const within = <T>(asked: Promise<T>, otherwise: T): Promise<T> =>
  Promise.race([asked, new Promise<T>((resolve) => setTimeout(resolve, patience, otherwise))]).catch(() => otherwise)

/** Holds the lock of an id for as long as the page lives. False when another tab holds it: this one was duplicated from it. */
const hold = (locks: LockManager, id: string): Promise<boolean> =>
  new Promise((resolve, reject) => {
    locks
      .request(lockOf(id), { ifAvailable: true }, (lock) => {
        resolve(lock !== null)
        return lock === null ? undefined : new Promise<void>(() => undefined)
      })
      .catch(reject)
  })

const liveIn = (locks: LockManager) => async (): Promise<ReadonlySet<string> | null> => {
  const found = await within<LockManagerSnapshot | null>(locks.query(), null)
  if (found === null) return null
  const prefix = lockOf('')
  return new Set((found.held ?? []).flatMap(({ name }) => (name?.startsWith(prefix) ? [name.slice(prefix.length)] : [])))
}

/** The id outlives a reload and a crash of the page, where the browser keeps something for a tab. */
export const browserTab = async (): Promise<Tab> => {
  const locks = globalThis.navigator?.locks as LockManager | undefined
  const before = remembered()
  if (!locks) {
    const id = before ?? newId()
    remember(id)
    return { id, live: async () => null }
  }
  const isMine = before !== null && (await within(hold(locks, before), false))
  const id = isMine ? before : newId()
  if (!isMine) void within(hold(locks, id), false)
  remember(id)
  return { id, live: liveIn(locks) }
}
