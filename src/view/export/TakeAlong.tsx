import { Suspense, useState } from 'react'
import { wordsOf } from '../../words/index.ts'
import { lazyPage } from '../lazyPage.tsx'
import { Button } from '../kit/Controls.tsx'

const TakeAlongDialog = lazyPage(() => import('./TakeAlongDialog.tsx').then((module) => module.TakeAlongDialog), ['takeAlong'])

/** A button that opens the list of files to take along; the list and all that makes files is loaded then. */
export const TakeAlong = () => {
  const [isOpen, setOpen] = useState(false)
  return (
    <>
      <Button className='button plain' aria-haspopup='dialog' onClick={() => setOpen(true)}>
        {wordsOf('entrances').takeAlong}
      </Button>
      {isOpen && (
        <Suspense>
          <TakeAlongDialog onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  )
}
