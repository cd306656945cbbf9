import { useEffect, useState } from 'react'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { openJobFile } from '../files/jobFiles.ts'

const holdsFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false

/** A job file may be dropped anywhere on the page. */
export const DropZone = () => {
  const [over, setOver] = useState(false)
  useEffect(() => {
    const enter = (event: DragEvent) => {
      if (!holdsFile(event)) return
      event.preventDefault()
      setOver(true)
    }
    const leave = (event: DragEvent) => event.relatedTarget === null && setOver(false)
    const drop = (event: DragEvent) => {
      if (!holdsFile(event)) return
      event.preventDefault()
      setOver(false)
      const file = event.dataTransfer?.files[0]
      if (file) void openJobFile(pierStore, file)
    }
    window.addEventListener('dragover', enter)
    window.addEventListener('dragleave', leave)
    window.addEventListener('drop', drop)
    return () => {
      window.removeEventListener('dragover', enter)
      window.removeEventListener('dragleave', leave)
      window.removeEventListener('drop', drop)
    }
  }, [])
  return over ? <div className='drop centered'>{wordsOf('app').actions.dropHere}</div> : null
}
