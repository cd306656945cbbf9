import { createStore } from 'zustand/vanilla'
import type { DocumentKind } from '../../core/documents/documentKind.ts'
import type { Issue } from '../../core/model/issue.ts'
import type { Holder } from '../document/holder.ts'
import type { Opened } from '../document/opened.ts'
import { type Draft, readDrafts, type StoreShows } from './drafts.ts'
import { tellOthers } from './elsewhere.ts'
import type { DocumentNote, NoteStorage } from './note.ts'
import { answered, type ShelfPort, ShelfTrouble, type TroubleCode, type Written } from './port.ts'
import { recordHolds, type Shelved, type ShelfRecord, shelved } from './record.ts'
import type { Tab } from './tab.ts'
import { keepWitness, readWitness, type Witness } from './witness.ts'

/** Something that is said once: what was done, or why it was not. */
export type ShelfSaid = Readonly<{
  code:
    | 'saved'
    | 'in-memory'
    | 'copied'
    | 'words-kept'
    | 'imported'
    | 'import-refused'
    | 'cannot-open'
    | 'newer-record'
    | 'not-there'
    | 'changed-meanwhile'
    | 'set-aside'
  issues?: readonly Issue[]
  added?: number
  same?: number
}>

export type ShelfState = Readonly<{
  isRead: boolean
  kind: ShelfPort['kind']
  /** Newest first. */
  piers: readonly Shelved[]
  drafts: readonly Draft[]
  trouble: TroubleCode | null
  isSaving: boolean
  said: ShelfSaid | null
  /** Taken away in this session, last one first: each can be put back. */
  removed: readonly Readonly<{ raw: unknown; name: string }>[]
  /** The open document was saved or removed elsewhere since this tab saw it; `theirs` is null when it is gone. */
  conflict: Readonly<{ id: string; theirs: Shelved | null }> | null
  /** Piers that were here once and are not any more; 0 for none. */
  missing: number
  witness: Witness
}>

/** What the shelf works with; handed in, so that a test can put trouble in the place of any of it. */
export type ShelfParts = Readonly<{
  /** The document in front: what is saved when somebody saves. */
  holder: Holder
  /** Pages of other kinds that what is opened here may go to. */
  others: readonly Holder[]
  port: ShelfPort
  /** Takes the place of a store that the browser does not give. */
  memory: () => ShelfPort
  storage: NoteStorage | null
  tab: Tab
  now: () => number
  newId: () => string
  /** Asks the browser to keep what is saved; null where it can't be asked. */
  persist: (() => Promise<boolean>) | null
  limit: number
}>

const newestFirst = (a: Shelved, b: Shelved): number => (b.changed ?? 0) - (a.changed ?? 0)

/** Where every action on the shelf goes through: it asks the store, with an end to waiting, and keeps the state that views show. */
export const shelfDesk = (parts: ShelfParts) => {
  const { holder, storage, tab } = parts
  const kinds: readonly DocumentKind[] = [holder, ...parts.others].map((one) => one.kind)
  let port: ShelfPort = parts.port
  const shelf = createStore<ShelfState>(() => ({
    isRead: false,
    kind: port.kind,
    piers: [],
    drafts: [],
    trouble: null,
    isSaving: false,
    said: null,
    removed: [],
    conflict: null,
    missing: 0,
    witness: readWitness(storage),
  }))
  const set = (change: Partial<ShelfState>): void => shelf.setState(change)
  const say = (said: ShelfSaid | null): void => set({ said })
  const sorted = (raw: unknown): Shelved => shelved(raw, kinds)

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

  const holdsOpen = async (there: Shelved | undefined, document: Opened['document']): Promise<boolean> =>
    there?.kind === 'whole' && there.of === holder.kind && (await recordHolds(holder.kind, there.record, document))

  /** What is kept of the open documents follows what the store shows: nothing is called saved that does not lie there as it is here. */
  const follow = async (piers: readonly Shelved[]): Promise<void> => {
    for (const [key, kept] of Object.entries(holder.state().kept)) {
      const there = piers.find(({ id }) => id === kept.id)
      const isLost = kept.place?.lasts === true && kept.document !== null && !(await holdsOpen(there, kept.document))
      if (isLost && holder.state().kept[Number(key)] === kept) holder.markKept(Number(key), { ...kept, document: null })
    }
    const { document, lineage, kept } = holder.state()
    const own = kept[lineage]
    const there = piers.find(({ id }) => id === own?.id)
    const isBack = own !== undefined && own.place !== null && own.document !== document && (await holdsOpen(there, document))
    if (isBack && there?.kind === 'whole' && holder.state().kept[lineage] === own)
      holder.markKept(lineage, { id: own.id, document, place: { revision: there.record.revision, lasts: true } })
  }

  const take = async (found: readonly unknown[]): Promise<void> => {
    const piers = found.map(sorted).sort(newestFirst)
    const { count } = readWitness(storage)
    const missing = port.kind === 'browser' && piers.length === 0 ? count : 0
    set({ piers, isRead: true, kind: port.kind, missing })
    if (port.kind === 'browser') await follow(piers)
  }
  const counted = (): void => {
    if (port.kind === 'browser') set({ witness: keepWitness(storage, { count: shelf.getState().piers.length }), missing: 0 })
  }

  /** What is left unsaved, held against what the store has shown; null while it has not answered. */
  const showDrafts = async (piers: readonly Shelved[] | null): Promise<void> => {
    const shows = async (note: DocumentNote): Promise<StoreShows> => {
      if (port.kind !== 'browser') return 'other'
      if (piers === null) return 'unknown'
      const there = piers.find(({ id }) => id === note.id)
      return there?.kind === 'whole' && there.of === note.of && (await recordHolds(note.of, there.record, note.document)) ? 'same' : 'other'
    }
    set({ drafts: await readDrafts(storage, tab, shows, kinds) })
  }
  const readDraftsAgain = (): Promise<void> => showDrafts(shelf.getState().isRead ? shelf.getState().piers : null)

  /** From now on piers are kept in this page alone. What lay in the browser's store can't be shown to lie there. */
  const goOnInMemory = (): void => {
    port = parts.memory()
    set({ isRead: true, kind: 'memory', piers: [] })
    for (const [key, kept] of Object.entries(holder.state().kept))
      if (kept.place !== null) holder.markKept(Number(key), { ...kept, document: null, place: null })
  }

  /** Reads the shelf again. Where the browser gives no store, piers are kept in memory from now on, and that is said. */
  const refresh = async (): Promise<void> => {
    const early = showDrafts(null)
    const found = await ask(
      (one) => one.list(),
      (answer) => void take(answer).then(readDraftsAgain),
    )
    if (found) await take(found)
    else if (shelf.getState().trouble === 'blocked' && port.kind === 'browser') goOnInMemory()
    else set({ isRead: true })
    await early
    if (found || port.kind === 'memory') await readDraftsAgain()
  }

  /** After a writing or an opening: the list again, how many there are, and what is unsaved by it. */
  const relist = async (): Promise<void> => {
    const found = await ask((one) => one.list())
    if (found) {
      await take(found)
      counted()
      await readDraftsAgain()
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

  /** Everything that follows when a record lies in the store: only now may anybody say "saved", and never of one in memory. */
  const settled = async (record: ShelfRecord, open: Pick<Opened, 'lineage' | 'document'> | null): Promise<void> => {
    const { id, revision } = record
    const lasts = port.kind === 'browser'
    if (open) holder.markKept(open.lineage, { id, document: lasts ? open.document : null, place: { revision, lasts } })
    tellOthers({ kind: 'saved', id, revision })
    if (lasts) set({ witness: keepWitness(storage, { unfiled: readWitness(storage).unfiled + 1 }) })
    await relist()
    void persistOnce()
  }

  /** Writes, and reads back what was written: a store that lies is found out. */
  const write = async (record: ShelfRecord, expected: number | null, late: () => void = () => undefined): Promise<Written | null> => {
    const put = async (one: ShelfPort): Promise<Written> => {
      const written = await one.put(record, expected)
      if (written !== 'done') return written
      const back = sorted(await one.get(record.id))
      if (back.kind !== 'whole' || back.record.check !== record.check) throw new ShelfTrouble('unknown', 'not as written')
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
    return sorted(raw)
  }

  return { parts, kinds, state: shelf, set, say, ask, sorted, write, settled, relist, refresh, fresh, readDraftsAgain }
}

export type ShelfDesk = ReturnType<typeof shelfDesk>
