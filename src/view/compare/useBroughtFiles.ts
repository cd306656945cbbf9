import { useCallback, useEffect, useState } from 'react'
import { bringFile, type FileRefused } from './bringFile.ts'

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
