import { compareStore } from '../../state/compare.ts'
import { besideOwn } from '../../state/compareActions.ts'
import { openingDocument } from '../../core/spec/openingPier.ts'
import { stopLooking, takeLooked } from '../../state/actions/look.ts'
import { type PierStore, pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'
import './look.css'
import { Button } from '../kit/Controls.tsx'

/** The open pier and the one that is looked at, each in a column of its own. */
const setBeside = () => {
  const { document } = pierStore.getState()
  besideOwn(compareStore, { ...document, name: document.name === '' ? wordsOf('looking').own : document.name })
}

/** The bar goes with what was pressed in it: the keyboard goes on at the inputs. */
const thenInputs = (act: (store: PierStore) => void): void => {
  act(pierStore)
  document.getElementById('inputs')?.focus({ preventScroll: true })
}

/** A pier from a link, to look at: one touch makes it one's own, one goes back to the pier that was open. */
export const LookBar = () => {
  const words = wordsOf('looking')
  const isFresh = usePier((state) => state.document === openingDocument)
  return (
    <div className='look line small' role='status'>
      <p>
        <strong>{words.title}</strong> <span className='look-more'>{isFresh ? words.fresh : words.mine}</span>
      </p>
      <div className='line'>
        <Button onClick={() => thenInputs(takeLooked)}>{words.take}</Button>
        {!isFresh && <Button onClick={setBeside}>{words.beside}</Button>}
        <Button onClick={() => thenInputs(stopLooking)}>{isFresh ? words.leave : words.back}</Button>
      </div>
    </div>
  )
}
