import { takeLooked } from '../../state/actions/look.ts'
import { isKept, keptOf } from '../../state/document/opened.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { useIsLooking, usePier } from '../hooks/usePier.ts'
import { Conflict } from './Conflict.tsx'
import { useShelf, useShelfState } from './useShelf.ts'
import { nameWords } from './words.ts'

/** A pier that is only looked at has no place on the shelf. */
const Looked = () => {
  const looking = wordsOf('looking')
  return (
    <section className='shelf-open' aria-label={wordsOf('shelf').open.title}>
      <p>{looking.notSaved}</p>
      <div className='shelf-buttons'>
        <button type='button' className='button shelf-main' onClick={() => takeLooked(pierStore)}>
          {looking.take}
        </button>
      </div>
    </section>
  )
}

/** The pier on the page: is it saved, and the way to save it. */
export const OpenPier = () => (useIsLooking() ? <Looked /> : <OwnPier />)

const OwnPier = () => {
  const words = wordsOf('shelf')
  const shelf = useShelf()
  const name = usePier((state) => state.document.name)
  const { id, place } = usePier(keptOf)
  const kept = usePier(isKept)
  const isSaving = useShelfState((state) => state.isSaving)
  const isReadOnly = useShelfState((state) => state.trouble === 'newer')
  const conflict = useShelfState((state) => state.conflict)
  const isThere = useShelfState(({ isRead, piers }) => !isRead || piers.some((pier) => pier.id === id))
  const state = place === null ? 'never' : !place.lasts ? 'memory' : kept ? 'kept' : isThere ? 'changed' : 'gone'
  return (
    <section className='shelf-open' aria-label={words.open.title}>
      <div>
        <h3>{nameWords(name)}</h3>
        <p className='quiet'>{words.open[isSaving ? 'saving' : state]}</p>
      </div>
      <div className='shelf-buttons'>
        {(place === null || !kept) && (
          <button type='button' className='button shelf-main' disabled={isSaving || isReadOnly} onClick={() => void shelf.save()}>
            {place === null ? words.open.save : words.open.saveChanges}
          </button>
        )}
        {place !== null && (
          <button type='button' className='button' disabled={isSaving || isReadOnly} onClick={() => void shelf.saveAsNew()}>
            {words.open.saveNew}
          </button>
        )}
      </div>
      {conflict && <Conflict gone={conflict.theirs === null} id={conflict.id} />}
    </section>
  )
}
