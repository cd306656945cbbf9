import { ready } from '../../core/documents/documentKind.ts'
import { keptOf, type ShelfPlace } from '../document/opened.ts'
import { setAside } from './note.ts'
import type { ShelfDesk } from './desk.ts'
import { openRecord, recordOf } from './record.ts'

/** Saving the open document. */
export const saving = ({ parts, state, set, say, ask, sorted, write, settled, readDraftsAgain }: ShelfDesk) => {
  const { holder, storage, now, newId } = parts
  const kind = ready(holder.kind)

  const conflictWith = async (id: string): Promise<void> => {
    const raw = await ask((one) => one.get(id))
    set({ conflict: { id, theirs: raw === undefined || raw === null ? null : sorted(raw) } })
  }

  const saveAs = async (id: string, place: ShelfPlace | null, made: number): Promise<boolean> => {
    set({ isSaving: true, said: null, conflict: null })
    holder.settle()
    const { document, lineage } = holder.state()
    const record = recordOf(await kind, document, { id, revision: (place?.revision ?? 0) + 1, made, changed: now() })
    const done = async (): Promise<void> => {
      await settled(record, { lineage, document })
      holder.dismiss('changed-elsewhere')
      set({ isSaving: false })
      say({ code: state.getState().kind === 'memory' ? 'in-memory' : 'saved' })
    }
    const written = await write(record, place?.revision ?? null, () => void done())
    if (written === 'done') {
      await done()
      return true
    }
    // Never saved from here, and its id is taken: this is another document by now.
    if (written === 'changed' && place === null) return saveAs(newId(), null, made)
    set({ isSaving: false })
    if (written === 'newer') say({ code: 'newer-record' })
    if (written === 'changed' || written === 'gone') await conflictWith(record.id)
    return false
  }

  const madeOf = (id: string): number => {
    const known = state.getState().piers.find((one) => one.id === id)
    return known?.kind === 'whole' ? known.record.made : now()
  }

  /** Saves the open document: over its own record when it has one that nobody else has changed, else as a new one. */
  const save = (): Promise<boolean> => {
    const { id, place } = keptOf(holder.state())
    return saveAs(id || newId(), place, place ? madeOf(id) : now())
  }
  const saveAsNew = (): Promise<boolean> => saveAs(newId(), null, now())

  /** Saves over what another tab has saved; that one is set aside first, so that it can be had back. */
  const saveOverTheirs = async (): Promise<boolean> => {
    const { conflict } = state.getState()
    if (conflict?.theirs?.kind !== 'whole') return saveAsNew()
    const { record, of } = conflict.theirs
    const read = openRecord(await ready(of), record)
    if (read.ok) setAside(storage, of, { document: read.value, kept: { id: newId(), document: null, place: null } })
    const done = await saveAs(record.id, { revision: record.revision, lasts: true }, record.made)
    void readDraftsAgain()
    return done
  }

  return { save, saveAsNew, saveOverTheirs, leaveConflict: () => set({ conflict: null }) }
}
