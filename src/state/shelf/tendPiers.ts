import { openDocument } from '../actions/document.ts'
import { dismiss, notify } from '../actions/notices.ts'
import { isKept, keptOf, markKept } from '../kept.ts'
import { tellOthers } from './elsewhere.ts'
import type { ShelfDesk } from './shelfDesk.ts'
import { openRecord, recordOf, shelved } from './shelfRecord.ts'

/** What can be done with a pier on the shelf. */
export const tendPiers = ({ parts, state, set, say, ask, write, settled, relist, fresh }: ShelfDesk) => {
  const { pier, now, newId } = parts

  const openPier = async (id: string): Promise<boolean> => {
    const found = await fresh(id)
    if (!found) return false
    if (found.kind === 'newer') say({ code: 'newer-record' })
    if (found.kind === 'damaged') say({ code: 'cannot-open', issues: found.issues })
    if (found.kind !== 'pier') return false
    const read = openRecord(found.record)
    if (!read.ok) {
      say({ code: read.issues.some((issue) => issue.code === 'newer-schema') ? 'newer-record' : 'cannot-open', issues: read.issues })
      return false
    }
    const before = pier.getState()
    openDocument(pier, read.value, { document: read.value, place: { id, revision: found.record.revision } })
    if (!isKept(before)) notify(pier, { code: 'pier-set-aside' })
    dismiss(pier, 'changed-elsewhere')
    set({ conflict: null, said: null })
    return true
  }

  /** A copy under another name, beside the first. */
  const duplicate = async (id: string, name: string): Promise<boolean> => {
    const found = await fresh(id)
    if (found?.kind !== 'pier') return false
    const read = openRecord(found.record)
    if (!read.ok) {
      say({ code: 'cannot-open', issues: read.issues })
      return false
    }
    const record = recordOf({ ...read.value, name }, { id: newId(), revision: 1, made: now(), changed: now() })
    if ((await write(record, null)) !== 'done') return false
    await settled(record, null)
    say({ code: 'copied' })
    return true
  }

  /** Other words for a saved pier; for the open one too, when it is that pier. */
  const putWords = async (id: string, name: string, note: string): Promise<boolean> => {
    const found = await fresh(id)
    if (found?.kind !== 'pier') return false
    const read = openRecord(found.record)
    if (!read.ok) {
      say({ code: 'cannot-open', issues: read.issues })
      return false
    }
    const { revision, made } = found.record
    const record = recordOf({ ...read.value, name, note }, { id, revision: revision + 1, made, changed: now() })
    const written = await write(record, revision)
    if (written !== 'done') {
      if (written !== null) say({ code: 'changed-meanwhile' })
      return false
    }
    const open = pier.getState()
    const kept = keptOf(open)
    if (kept.place?.id === id && kept.place.revision === revision) {
      const document = Object.freeze({ ...open.document, name, note })
      pier.setState({ document })
      markKept(pier, open.lineage, { document: isKept(open) ? document : null, place: { id, revision: record.revision } })
    }
    await settled(record, null)
    say({ code: 'words-kept' })
    return true
  }

  /** Takes a pier off the shelf. It can be put back for as long as the page lives. */
  const remove = async (id: string): Promise<boolean> => {
    const raw = await ask((one) => one.get(id))
    if (raw === null || raw === undefined) return false
    const written = await ask((one) => one.remove(id, null))
    if (written !== 'done') {
      if (written === 'newer') say({ code: 'newer-record' })
      return false
    }
    const open = pier.getState()
    if (keptOf(open).place?.id === id) markKept(pier, open.lineage, { document: null, place: null })
    const { name } = shelved(raw)
    set({ removed: [{ raw, name }, ...state.getState().removed], said: null })
    tellOthers({ kind: 'removed', id, revision: 0 })
    await relist()
    return true
  }

  /** Puts back what was taken off last, as it was. */
  const putBack = async (): Promise<boolean> => {
    const [last, ...rest] = state.getState().removed
    if (!last) return false
    const { id } = shelved(last.raw)
    const written = await ask((one) => one.put(last.raw as Readonly<{ id: string }>, null))
    if (written !== 'done') return false
    set({ removed: rest })
    tellOthers({ kind: 'saved', id, revision: 0 })
    await relist()
    return true
  }

  return { openPier, duplicate, putWords, remove, putBack }
}
