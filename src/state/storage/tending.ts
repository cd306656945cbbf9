import { ready } from '../../core/documents/documentKind.ts'
import { tellChanges } from '../actions/notices.ts'
import { isKept, keptOf } from '../document/opened.ts'
import type { ShelfDesk } from './desk.ts'
import { tellOthers } from './elsewhere.ts'
import { openRecord, recordOf } from './record.ts'
import { textAt } from './stored.ts'

/** What can be done with a document on the shelf. */
export const tending = ({ parts, state, set, say, ask, sorted, write, settled, relist, fresh }: ShelfDesk) => {
  const { holder, others, now, newId } = parts

  const open = async (id: string): Promise<boolean> => {
    const found = await fresh(id)
    if (!found) return false
    if (found.kind === 'newer') say({ code: 'newer-record' })
    if (found.kind === 'damaged') say({ code: 'cannot-open', issues: found.issues })
    if (found.kind !== 'whole') return false
    const read = openRecord(await ready(found.of), found.record)
    if (!read.ok) {
      say({ code: read.issues.some((issue) => issue.code === 'newer-schema') ? 'newer-record' : 'cannot-open', issues: read.issues })
      return false
    }
    const page = [holder, ...others].find((one) => one.kind === found.of) ?? holder
    const before = page.state()
    const lasts = state.getState().kind === 'browser'
    page.open(read.value, { id, document: lasts ? read.value : null, place: { revision: found.record.revision, lasts } })
    if (!isKept(before)) page.notify({ code: 'pier-set-aside' })
    page.dismiss('changed-elsewhere')
    tellChanges(page, read.issues)
    set({ conflict: null, said: null })
    void relist()
    return true
  }

  /** A document on the shelf with its record; null where it can't be read, which is said. */
  const whole = async (id: string) => {
    const found = await fresh(id)
    if (found?.kind !== 'whole') return null
    const kind = await ready(found.of)
    const read = openRecord(kind, found.record)
    if (!read.ok) say({ code: 'cannot-open', issues: read.issues })
    return read.ok ? { kind, record: found.record, document: read.value } : null
  }

  /** A copy under another name, beside the first. */
  const duplicate = async (id: string, name: string): Promise<boolean> => {
    const found = await whole(id)
    if (!found) return false
    const { kind, document } = found
    const record = recordOf(kind, { ...document, name }, { id: newId(), revision: 1, made: now(), changed: now() })
    if ((await write(record, null)) !== 'done') return false
    await settled(record, null)
    say({ code: 'copied' })
    return true
  }

  /** Other words for a saved document; for the open one too, when it is that one. */
  const putWords = async (id: string, name: string, note: string): Promise<boolean> => {
    const found = await whole(id)
    if (!found) return false
    const { kind, document } = found
    const { revision, made } = found.record
    const record = recordOf(kind, { ...document, name, note }, { id, revision: revision + 1, made, changed: now() })
    const written = await write(record, revision)
    if (written !== 'done') {
      if (written !== null) say({ code: 'changed-meanwhile' })
      return false
    }
    const opened = holder.state()
    const kept = keptOf(opened)
    if (kept.id === id && kept.place?.revision === revision) {
      holder.setWords(name, note)
      const { document } = holder.state()
      holder.markKept(opened.lineage, {
        id,
        document: isKept(opened) ? document : null,
        place: { ...kept.place, revision: record.revision },
      })
    }
    await settled(record, null)
    say({ code: 'words-kept' })
    return true
  }

  /** Takes a document off the shelf. It can be put back for as long as the page lives. */
  const remove = async (id: string): Promise<boolean> => {
    const raw = await ask((one) => one.get(id))
    if (raw === null || raw === undefined) return false
    const written = await ask((one) => one.remove(id, null))
    if (written !== 'done') {
      if (written === 'newer') say({ code: 'newer-record' })
      return false
    }
    const opened = holder.state()
    // The one that is open is another document from now on: the deleted one may be put back beside it.
    if (keptOf(opened).id === id) holder.markKept(opened.lineage, { id: newId(), document: null, place: null })
    set({ removed: [{ raw, name: sorted(raw).name }, ...state.getState().removed], said: null })
    tellOthers({ kind: 'removed', id, revision: 0 })
    await relist()
    return true
  }

  /** Puts back what was taken off last, as it was. */
  const putBack = async (): Promise<boolean> => {
    const [last, ...rest] = state.getState().removed
    if (!last) return false
    const written = await ask((one) => one.put(last.raw as Readonly<{ id: string }>, null))
    if (written !== 'done') return false
    set({ removed: rest })
    tellOthers({ kind: 'saved', id: textAt(last.raw, 'id'), revision: 0 })
    await relist()
    return true
  }

  return { openPier: open, duplicate, putWords, remove, putBack }
}
