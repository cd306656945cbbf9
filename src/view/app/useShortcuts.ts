import { useEffect } from 'react'
import { redo, undo } from '../../state/actions/history.ts'
import { seenDocument } from '../../state/derived.ts'
import { pierStore } from '../../state/store.ts'
import { saveJobFile } from '../files/jobFiles.ts'

/** A box with text of its own being typed keeps the browser's own undo. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement && target.type === 'text' && target.value !== target.defaultValue

/** Ctrl+Z and Ctrl+Shift+Z (or Ctrl+Y) step through the pier; Ctrl+S saves the job file. */
export const useShortcuts = (): void =>
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return
      const key = event.key.toLowerCase()
      if (key === 's') {
        event.preventDefault()
        saveJobFile(seenDocument(pierStore.getState()))
      }
      if (isTyping(event.target)) return
      if (key === 'z') {
        event.preventDefault()
        if (event.shiftKey) redo(pierStore)
        else undo(pierStore)
      }
      if (key === 'y') {
        event.preventDefault()
        redo(pierStore)
      }
    }
    window.addEventListener('keydown', onKeyDown)
    return () => window.removeEventListener('keydown', onKeyDown)
  }, [])
