import { useCallback, useEffect, useState } from 'react'
import type { Issue } from '../../core/model/issue.ts'
import { compareStore } from '../../state/compare.ts'
import { bringPiers } from '../../state/compareActions.ts'
import { seenDocument } from '../../state/derived.ts'
import { pierStore } from '../../state/store.ts'
import { jobInFile } from '../files/jobFiles.ts'

type FileRefused = Readonly<{ file: string; issues: readonly Issue[] }>

/** Sets the pier of a job file beside the others; the open pier stays as it is. Null when it went well, else why not. */
export async function bringFile(file: File): Promise<FileRefused | null> {
  const read = await jobInFile(file)
  if (!read.ok) return { file: file.name, issues: read.issues }
  bringPiers(compareStore, seenDocument(pierStore.getState()), [read.value])
  return null
}

export type BroughtFiles = Readonly<{ refused: FileRefused | null; bring: (file: File) => void }>

const holdsFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false

/** Job files set beside the others, opened or dropped. While piers are compared a dropped file never takes the open pier's place. */
export function useBroughtFiles(): BroughtFiles {
  const [refused, setRefused] = useState<FileRefused | null>(null)
  const bring = useCallback((file: File) => {
    bringFile(file).then(setRefused, () => setRefused({ file: file.name, issues: [] }))
  }, [])
  useEffect(() => {
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
    const early = { capture: true }
    window.addEventListener('dragover', over, early)
    window.addEventListener('drop', drop, early)
    return () => {
      window.removeEventListener('dragover', over, early)
      window.removeEventListener('drop', drop, early)
    }
  }, [bring])
  return { refused, bring }
}
