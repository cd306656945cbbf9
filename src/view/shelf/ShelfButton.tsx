import { Suspense, useState } from 'react'
import { createPortal } from 'react-dom'
import { isKept } from '../../state/document/opened.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'
import { lazyPage } from '../lazyPage.tsx'
import { Button } from '../kit/Controls.tsx'

const ShelfDialog = lazyPage(() => import('./ShelfDialog.tsx').then((module) => module.ShelfDialog), ['examples', 'looking', 'shelf'])

/** The way to the saved piers; all that keeps them is fetched then. A ring beside the words says that the open pier is not saved. */
export const ShelfButton = () => {
  const [isOpen, setOpen] = useState(false)
  const kept = usePier(isKept)
  return (
    <>
      <Button className='button plain' aria-haspopup='dialog' onClick={() => setOpen(true)}>
        {wordsOf('app').actions.shelf}
        {!kept && (
          <span className='unsaved' title={wordsOf('app').unsaved}>
            <span className='spoken'>{wordsOf('app').unsaved}</span>
          </span>
        )}
      </Button>
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
