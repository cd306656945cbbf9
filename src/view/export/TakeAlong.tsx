import { lazy, Suspense, useState } from 'react'
import { takeAlong } from '../../text/en/takeAlong.ts'

const TakeAlongDialog = lazy(() => import('./TakeAlongDialog.tsx').then((module) => ({ default: module.TakeAlongDialog })))

/** A button that opens the list of files to take along; the list and all that makes files is loaded then. */
export const TakeAlong = () => {
  const [isOpen, setOpen] = useState(false)
  return (
    <>
      <button type='button' className='button plain' aria-haspopup='dialog' onClick={() => setOpen(true)}>
        {takeAlong}
      </button>
      {isOpen && (
        <Suspense>
          <TakeAlongDialog onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  )
}
