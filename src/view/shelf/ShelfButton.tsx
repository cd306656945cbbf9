import { lazy, Suspense, useState } from 'react'
import { createPortal } from 'react-dom'
import { isKept } from '../../state/kept.ts'
import { text } from '../../text/index.ts'
import { usePier } from '../hooks/usePier.ts'

const ShelfDialog = lazy(() => import('./ShelfDialog.tsx').then((module) => ({ default: module.ShelfDialog })))

/** The way to the saved piers; all that keeps them is fetched then. A ring beside the words says that the open pier is not saved. */
export const ShelfButton = () => {
  const [isOpen, setOpen] = useState(false)
  const kept = usePier(isKept)
  return (
    <>
      <button type='button' className='button plain' aria-haspopup='dialog' onClick={() => setOpen(true)}>
        {text.app.actions.shelf}
        {!kept && (
          <span className='unsaved' title={text.app.unsaved}>
            <span className='spoken'>{text.app.unsaved}</span>
          </span>
        )}
      </button>
      {isOpen &&
        createPortal(
          <Suspense>
            <ShelfDialog onClose={() => setOpen(false)} />
          </Suspense>,
          document.body,
        )}
    </>
  )
}
