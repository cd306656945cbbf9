import { useCallback, useState } from 'react'
import type { Issue } from '../../core/model/issue.ts'
import { compareStore } from '../../state/compare.ts'
import { bringPiers } from '../../state/compareActions.ts'
import { seenDocument } from '../../state/derived.ts'
import { pierStore } from '../../state/store.ts'
import { useWindow } from '../hooks/useWindow.ts'
import { holdsFile, jobInFile } from '../files/jobFiles.ts'

type FileRefused = Readonly<{ file: string; issues: readonly Issue[] }>

/** Sets the pier of a job file beside the others; the open pier stays as it is. Null when it went well, else why not. */
export async function bringFile(file: File): Promise<FileRefused | null> {
  const read = await jobInFile(file)
  if (!read.ok) return { file: file.name, issues: read.issues }
  bringPiers(compareStore, seenDocument(pierStore.getState()), [read.value])
  return null
}

export type BroughtFiles = Readonly<{ refused: FileRefused | null; bring: (file: File) => void }>

/** Job files set beside the others, opened or dropped. While piers are compared a dropped file never takes the open pier's place. */
export function useBroughtFiles(): BroughtFiles {
  const [refused, setRefused] = useState<FileRefused | null>(null)
  const bring = useCallback((file: File) => {
    bringFile(file).then(setRefused, () => setRefused({ file: file.name, issues: [] }))
  }, [])
  const over = (event: DragEvent) => {
    if (!holdsFile(event)) return
    event.preventDefault()
    event.stopPropagation()
  }
  const drop = (event: DragEvent) => {
    over(event)
    const file = event.dataTransfer?.files[0]
    if (file) bring(file)
  }
  useWindow({ dragover: over, drop }, true)
  return { refused, bring }
}
