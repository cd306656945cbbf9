import { lazy, Suspense, useState } from 'react'
import { createPortal } from 'react-dom'
import { sheetEntry } from '../../text/en/sheetEntry.ts'

const SheetView = lazy(() => import('./SheetView.tsx').then((module) => ({ default: module.SheetView })))

/** The way to the printed sheet; all that makes it is fetched then. */
export const SheetButton = ({ className = 'button plain' }: Readonly<{ className?: string }>) => {
  const [isOpen, setOpen] = useState(false)
  return (
    <>
      <button type='button' className={className} onClick={() => setOpen(true)}>
        {sheetEntry.open}
      </button>
      {isOpen &&
        createPortal(
          <Suspense>
            <SheetView onClose={() => setOpen(false)} />
          </Suspense>,
          document.body,
        )}
    </>
  )
}
