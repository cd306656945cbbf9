import { useState } from 'react'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { useWindow } from '../hooks/useWindow.ts'
import { holdsFile, openJobFile } from '../files/jobFiles.ts'

/** A job file may be dropped anywhere on the page. */
export const DropZone = () => {
  const [over, setOver] = useState(false)
  useWindow({
    dragover: (event) => {
      if (!holdsFile(event)) return
      event.preventDefault()
      setOver(true)
    },
    dragleave: (event) => event.relatedTarget === null && setOver(false),
    drop: (event) => {
      if (!holdsFile(event)) return
      event.preventDefault()
      setOver(false)
      const file = event.dataTransfer?.files[0]
      if (file) void openJobFile(pierStore, file)
    },
  })
  return over ? <div className='drop centered'>{wordsOf('app').actions.dropHere}</div> : null
}
