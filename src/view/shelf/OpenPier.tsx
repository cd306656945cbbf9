import { takeLooked } from '../../state/actions/look.ts'
import { isKept, keptOf } from '../../state/document/opened.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { useIsLooking, usePier } from '../hooks/usePier.ts'
import { useShelf, useShelfState, nameWords } from './useShelf.ts'
import { Button } from '../kit/Controls.tsx'
import { Mark } from '../kit/Mark.tsx'

/** Another tab saved or deleted this pier. Every way on keeps both. */
const Conflict = ({ gone, id }: { gone: boolean; id: string }) => {
  const words = wordsOf('shelf')
  const shelf = useShelf()
  return (
    <div className='framed-part wrong stack wide' role='alert'>
      <h4>
        <Mark name='warning' /> {words.conflict.title}
      </h4>
      <p>{gone ? words.conflict.gone : words.conflict.changed}</p>
      <div className='shelf-choices'>
        <Button onClick={() => void shelf.saveAsNew()}>{words.conflict.mineNew}</Button>
        {!gone && (
          <>
            <Button onClick={() => void shelf.saveOverTheirs()}>{words.conflict.mineOver}</Button>
            <span className='quiet'>{words.conflict.mineOverHelp}</span>
            <Button onClick={() => void shelf.openPier(id)}>{words.conflict.theirs}</Button>
            <span className='quiet'>{words.conflict.theirsHelp}</span>
          </>
        )}
        <Button className='button plain' onClick={shelf.leaveConflict}>
          {words.conflict.later}
        </Button>
      </div>
    </div>
  )
}

/** A pier that is only looked at has no place on the shelf. */
const Looked = () => {
  const looking = wordsOf('looking')
  return (
    <section className='framed-part stack wide' aria-label={wordsOf('shelf').open.title}>
      <p>{looking.notSaved}</p>
      <div className='line'>
        <Button className='button main' onClick={() => takeLooked(pierStore)}>
          {looking.take}
        </Button>
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
    <section className='framed-part stack wide' aria-label={words.open.title}>
      <div>
        <h3 className='broken-anywhere'>{nameWords(name)}</h3>
        <p className='quiet'>{words.open[isSaving ? 'saving' : state]}</p>
      </div>
      <div className='line'>
        {(place === null || !kept) && (
          <Button className='button main' disabled={isSaving || isReadOnly} onClick={() => void shelf.save()}>
            {place === null ? words.open.save : words.open.saveChanges}
          </Button>
        )}
        {place !== null && (
          <Button disabled={isSaving || isReadOnly} onClick={() => void shelf.saveAsNew()}>
            {words.open.saveNew}
          </Button>
        )}
      </div>
      {conflict && <Conflict gone={conflict.theirs === null} id={conflict.id} />}
    </section>
  )
}
