import '../kit/parts.css'
import { useEffect, useId, useRef } from 'react'
import { wordsOf } from '../../words/index.ts'
import { Apart } from '../kit/Apart.tsx'
import { Button } from '../kit/Controls.tsx'
import { DraftList } from './DraftList.tsx'
import { ExampleList } from './ExampleList.tsx'
import { FilePart } from './FilePart.tsx'
import { OpenPier } from './OpenPier.tsx'
import { Removed, Said, Trouble } from './Outcome.tsx'
import { PierList } from './PierList.tsx'
import { ShelfContext } from './useShelf.ts'
import { createShelf, type Shelf } from '../../state/storage/shelf.ts'
import { idbShelf } from '../../state/storage/idbShelf.ts'
import { newId } from '../../state/document/opened.ts'
import { pierHolder } from '../../state/pierHolder.ts'
import { memoryShelf, patience } from '../../state/storage/port.ts'
import { storageOf, tabOf } from '../../state/storage/session.ts'
import { pierStore } from '../../state/store.ts'
import './shelf.css'

let made: Shelf | null = null

/** The one shelf of the running page; made when it is first looked at. */
const pageShelf = (): Shelf => {
  if (made) return made
  const shelf = createShelf({
    holder: pierHolder(pierStore),
    others: [],
    port: idbShelf({ tell: (code) => shelf.heard(code), settled: (code) => shelf.unheard(code) }),
    memory: memoryShelf,
    storage: storageOf(),
    tab: tabOf(pierStore) ?? { id: newId(), live: async () => null },
    now: Date.now,
    newId,
    persist: navigator.storage?.persist ? () => navigator.storage.persist() : null,
    limit: patience,
  })
  made = shelf
  return shelf
}

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
        <div className='shelf-head under-heavy ends'>
          <h2 id={title} className='large'>
            {words.title}
          </h2>
          <Button onClick={leave}>{words.close}</Button>
        </div>
        <div className='shelf-body holds scrolls stack'>
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
        <div className='shelf-foot over-heavy stack'>
          <Said />
          <Removed />
        </div>
      </dialog>
    </ShelfContext>
  )
}
