import { Suspense, useState } from 'react'
import { createPortal } from 'react-dom'
import { wordsOf } from '../../words/index.ts'
import { useWindow } from '../hooks/useWindow.ts'
import { lazyPage } from '../lazyPage.tsx'
import { Button } from '../kit/Controls.tsx'

const SheetView = lazyPage(
  () => import('./SheetView.tsx').then((module) => module.SheetView),
  ['answers', 'compare', 'drawing', 'looking', 'materials', 'moisture', 'reasons', 'sheet', 'steps', 'takeAlong', 'time'],
)

/** The way to the printed sheet, by hand or by the keys that print a page; all that makes it is fetched then. */
export const SheetButton = ({ className = 'button plain' }: Readonly<{ className?: string }>) => {
  const [isOpen, setOpen] = useState(false)
  useWindow({
    keydown: (event) => {
      const isPrint = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey && event.key.toLowerCase() === 'p'
      // With the sheet open the keys print it.
      if (!isPrint || event.defaultPrevented || document.querySelector('.paperwork')) return
      event.preventDefault()
      setOpen(true)
    },
  })
  return (
    <>
      <Button className={className} onClick={() => setOpen(true)}>
        {wordsOf('entrances').sheet.open}
      </Button>
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
