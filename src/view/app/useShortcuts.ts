import { redo, undo } from '../../state/actions/history.ts'
import { seenDocument } from '../../state/derived.ts'
import { pierStore } from '../../state/store.ts'
import { useWindow } from '../hooks/useWindow.ts'
import { saveJobFile } from '../files/jobFiles.ts'

/** A box with text of its own being typed keeps the browser's own undo. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement && target.type === 'text' && target.value !== target.defaultValue

const onKey = (event: KeyboardEvent): void => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return
  const key = event.key.toLowerCase()
  if (key === 's') {
    event.preventDefault()
    saveJobFile(seenDocument(pierStore.getState()))
  }
  if (isTyping(event.target) || (key !== 'z' && key !== 'y')) return
  event.preventDefault()
  if (key === 'y' || event.shiftKey) redo(pierStore)
  else undo(pierStore)
}

/** Ctrl+Z and Ctrl+Shift+Z (or Ctrl+Y) step through the pier; Ctrl+S saves the job file. */
export const useShortcuts = (): void => useWindow({ keydown: onKey })
