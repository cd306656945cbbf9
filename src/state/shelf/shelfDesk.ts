import type { PierDocument } from '../../core/model/spec.ts'
import { markKept } from '../kept.ts'
import { readDrafts } from './drafts.ts'
import { tellOthers } from './elsewhere.ts'
import { answered } from './patience.ts'
import { newShelfState, type Said, type ShelfParts, type ShelfState } from './shelf.ts'
import { type ShelfPort, ShelfTrouble, type Written } from './shelfPort.ts'
import { type ShelfRecord, type Shelved, shelved } from './shelfRecord.ts'
import { keepWitness, readWitness } from './witness.ts'

const newestFirst = (a: Shelved, b: Shelved): number => b.changed - a.changed

/** Where every action on the shelf goes through: it asks the store, with an end to waiting, and keeps the state that views show. */
export const shelfDesk = (parts: ShelfParts) => {
  const { pier, storage, tab } = parts
  let port: ShelfPort = parts.port
  const shelf = newShelfState(port.kind, readWitness(storage))
  const set = (change: Partial<ShelfState>): void => shelf.setState(change)
  const say = (said: Said | null): void => set({ said })

  /** Asks the store, with an end to waiting. Trouble is shown, and gone with the next answer. Null: there was trouble. */
  const ask = async <T>(question: (port: ShelfPort) => Promise<T>, late: (answer: T) => void = () => undefined): Promise<T | null> => {
    try {
      const answer = await answered(
        question(port),
        (found) => {
          set({ trouble: null })
          late(found)
        },
        parts.limit,
      )
      set({ trouble: shelf.getState().trouble === 'newer' ? 'newer' : null })
      return answer
    } catch (error) {
      set({ trouble: error instanceof ShelfTrouble ? error.code : 'unknown' })
      return null
    }
  }

  const take = (found: readonly unknown[]): void => {
    const piers = found.map(shelved).sort(newestFirst)
    const { count } = readWitness(storage)
    const missing = port.kind === 'browser' && piers.length === 0 ? count : 0
    set({ piers, isRead: true, kind: port.kind, missing })
  }
  const counted = (): void => {
    if (port.kind === 'browser') set({ witness: keepWitness(storage, { count: shelf.getState().piers.length }), missing: 0 })
  }

  const readDraftsAgain = async (): Promise<void> => set({ drafts: await readDrafts(storage, tab) })

  /** Reads the shelf again. Where the browser gives no store, piers are kept in memory from now on, and that is said. */
  const refresh = async (): Promise<void> => {
    void readDraftsAgain()
    const found = await ask((one) => one.list(), take)
    if (found) take(found)
    else if (shelf.getState().trouble === 'blocked' && port.kind === 'browser') {
      port = parts.memory()
      set({ isRead: true, kind: 'memory', piers: [] })
    } else set({ isRead: true })
  }

  /** After a writing: the list again, and how many there are. */
  const relist = async (): Promise<void> => {
    const found = await ask((one) => one.list())
    if (found) {
      take(found)
      counted()
    }
  }

  /** Asked once, after the first pier was really saved; a refusal is shown and not asked about again. */
  const persistOnce = async (): Promise<void> => {
    if (port.kind !== 'browser' || parts.persist === null || readWitness(storage).persisted !== null) return
    try {
      const persisted = await parts.persist()
      set({ witness: keepWitness(storage, { persisted }) })
    } catch {
      set({ witness: keepWitness(storage, { persisted: false }) })
    }
  }

  /** Everything that follows when a record lies in the store: only now may anybody say "saved". */
  const settled = async (record: ShelfRecord, kept: Readonly<{ lineage: number; document: PierDocument }> | null): Promise<void> => {
    if (kept) markKept(pier, kept.lineage, { document: kept.document, place: { id: record.id, revision: record.revision } })
    tellOthers({ kind: 'saved', id: record.id, revision: record.revision })
    if (port.kind === 'browser') set({ witness: keepWitness(storage, { unfiled: readWitness(storage).unfiled + 1 }) })
    await relist()
    void persistOnce()
  }

  /** Writes, and reads back what was written: a store that lies is found out. */
  const write = async (record: ShelfRecord, expected: number | null, late: () => void = () => undefined): Promise<Written | null> => {
    const put = async (one: ShelfPort): Promise<Written> => {
      const written = await one.put(record, expected)
      if (written !== 'done') return written
      const back = shelved(await one.get(record.id))
      if (back.kind !== 'pier' || back.record.check !== record.check) throw new ShelfTrouble('unknown', 'not as written')
      return written
    }
    return ask(put, (written) => written === 'done' && late())
  }

  /** One record of the list, as it lies in the store now. */
  const fresh = async (id: string): Promise<Shelved | null> => {
    const raw = await ask((one) => one.get(id))
    if (raw === null) return null
    if (raw === undefined) {
      say({ code: 'not-there' })
      void refresh()
      return null
    }
    return shelved(raw)
  }

  return { parts, state: shelf, set, say, ask, write, settled, relist, refresh, fresh, readDraftsAgain }
}

export type ShelfDesk = ReturnType<typeof shelfDesk>
