import { commitDraft } from '../actions/drag.ts'
import { dismiss } from '../actions/notices.ts'
import { keptOf } from '../kept.ts'
import { setAside } from '../sessionNote.ts'
import type { ShelfDesk } from './shelfDesk.ts'
import { openRecord, recordOf, shelved } from './shelfRecord.ts'

/** Saving the open pier. */
export const savePier = ({ parts, state, set, say, ask, write, settled, readDraftsAgain }: ShelfDesk) => {
  const { pier, storage, now, newId } = parts

  const conflictWith = async (id: string): Promise<void> => {
    const raw = await ask((one) => one.get(id))
    set({ conflict: { id, theirs: raw === undefined || raw === null ? null : shelved(raw) } })
  }

  const saveAs = async (place: Readonly<{ id: string; revision: number }> | null, made: number): Promise<boolean> => {
    commitDraft(pier)
    const { document, lineage } = pier.getState()
    const record = recordOf(document, { id: place?.id ?? newId(), revision: (place?.revision ?? 0) + 1, made, changed: now() })
    set({ isSaving: true, said: null, conflict: null })
    const done = async (): Promise<void> => {
      await settled(record, { lineage, document })
      dismiss(pier, 'changed-elsewhere')
      set({ isSaving: false })
      say({ code: 'saved' })
    }
    const written = await write(record, place?.revision ?? null, () => void done())
    if (written === 'done') {
      await done()
      return true
    }
    set({ isSaving: false })
    if (written === 'newer') say({ code: 'newer-record' })
    if (written === 'changed' || written === 'gone') await conflictWith(record.id)
    return false
  }

  const madeOf = (id: string): number => {
    const known = state.getState().piers.find((one) => one.id === id)
    return known?.kind === 'pier' ? known.record.made : now()
  }

  /** Saves the open pier: over its own record when it has one that nobody else has changed, else as a new one. */
  const save = (): Promise<boolean> => {
    const { place } = keptOf(pier.getState())
    return saveAs(place, place ? madeOf(place.id) : now())
  }
  const saveAsNew = (): Promise<boolean> => saveAs(null, now())

  /** Saves over what another tab has saved; that one is set aside first, so that it can be had back. */
  const saveOverTheirs = async (): Promise<boolean> => {
    const { conflict } = state.getState()
    if (conflict?.theirs?.kind !== 'pier') return saveAsNew()
    const { record } = conflict.theirs
    const read = openRecord(record)
    if (read.ok) setAside(storage, { document: read.value, lineage: 0, kept: {} })
    const done = await saveAs({ id: record.id, revision: record.revision }, record.made)
    void readDraftsAgain()
    return done
  }

  return { save, saveAsNew, saveOverTheirs, leaveConflict: () => set({ conflict: null }) }
}
