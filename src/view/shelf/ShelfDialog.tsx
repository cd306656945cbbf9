import { useEffect, useId, useRef } from 'react'
import { wordsOf } from '../../words/index.ts'
import { Apart } from '../kit/Apart.tsx'
import { DraftList } from './DraftList.tsx'
import { ExampleList } from './ExampleList.tsx'
import { FilePart } from './FilePart.tsx'
import { OpenPier } from './OpenPier.tsx'
import { Removed, Said, Trouble } from './Outcome.tsx'
import { pageShelf } from './pageShelf.ts'
import { PierList } from './PierList.tsx'
import './shelf.css'
import { ShelfContext } from './useShelf.ts'

/** Saved piers, as a sheet at the side of the page. */
export const ShelfDialog = ({ onClose }: { onClose: () => void }) => {
  const words = wordsOf('shelf')
  const dialog = useRef<HTMLDialogElement>(null)
  const title = useId()
  const shelf = pageShelf()
  useEffect(() => {
    // Removing the element closes it; closing it here would tell the page that somebody did.
    if (!dialog.current?.open) dialog.current?.showModal()
    shelf.forget()
    void shelf.refresh()
  }, [shelf])
  const leave = () => dialog.current?.close()
  return (
    <ShelfContext value={shelf}>
      <dialog ref={dialog} className='shelf' aria-labelledby={title} onClose={onClose}>
        <div className='shelf-head'>
          <h2 id={title}>{words.title}</h2>
          <button type='button' className='button' onClick={leave}>
            {words.close}
          </button>
        </div>
        <div className='shelf-body'>
          <p className='quiet'>{words.lead}</p>
          <Trouble />
          <Apart>
            <OpenPier />
          </Apart>
          <Apart>
            <PierList onLeave={leave} />
          </Apart>
          <Apart>
            <DraftList onLeave={leave} />
          </Apart>
          <Apart>
            <ExampleList onLeave={leave} />
          </Apart>
          <Apart>
            <FilePart />
          </Apart>
        </div>
        <div className='shelf-foot'>
          <Said />
          <Removed />
        </div>
      </dialog>
    </ShelfContext>
  )
}
