import { useCallback, useEffect, useRef, useState } from 'react'
import { pierStore } from '../../state/store.ts'
import type { FileChoices, FileId } from './fileWish.ts'

import { type MadeFile, saveFile } from '../files/handOver.ts'
import { makeFile } from './makeFile.ts'

/** How it stands with the file last asked for. */
export type FileOutcome =
  | Readonly<{ kind: 'making'; id: FileId }>
  | Readonly<{ kind: 'made'; id: FileId; file: MadeFile }>
  | Readonly<{ kind: 'failed'; id: FileId }>

/** Makes files one after another and hands each to the browser. A failure is an outcome, never an exception. */
export const useFileMaker = (choices: FileChoices) => {
  const [outcome, setOutcome] = useState<FileOutcome | null>(null)
  const stands = useRef(true)
  useEffect(() => {
    stands.current = true
    return () => {
      stands.current = false
    }
  }, [])
  const make = useCallback(
    async (id: FileId): Promise<void> => {
      setOutcome({ kind: 'making', id })
      try {
        const file = await makeFile(id, pierStore.getState(), choices)
        saveFile(file)
        if (stands.current) setOutcome({ kind: 'made', id, file })
      } catch {
        if (stands.current) setOutcome({ kind: 'failed', id })
      }
    },
    [choices],
  )
  return { outcome, make }
}
