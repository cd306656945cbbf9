import { wordsOf } from '../../words/index.ts'
import { pierStore } from '../../state/store.ts'
import { saveJobFile } from '../files/jobFiles.ts'
import { usePier } from '../hooks/usePier.ts'
import { Mark } from '../kit/Mark.tsx'
import { Button } from '../kit/Controls.tsx'
import { Bullets } from '../kit/Lists.tsx'
import { useShelf, useShelfState, nameWords, shelfIssue } from './useShelf.ts'

const mostIssues = 20

/** What was done last, or why not; always in the same place, and spoken. */
export const Said = () => {
  const words = wordsOf('shelf')
  const said = useShelfState((state) => state.said)
  const system = usePier((state) => state.view.units)
  const issues = said?.issues ?? []
  return (
    <div className='shelf-said' role='status' aria-live='polite'>
      {said && (
        <p className='strong'>
          {words.said[said.code]} {said.code === 'imported' && words.imported(said.added ?? 0, said.same ?? 0)}
        </p>
      )}
      {issues.length > 0 && (
        <Bullets className='small broken-anywhere' of={issues.slice(0, mostIssues).map((issue) => shelfIssue(issue, system))} />
      )}
    </div>
  )
}

/** What is wrong with the store, and a way to keep the work in spite of it. */
export const Trouble = () => {
  const words = wordsOf('shelf')
  const shelf = useShelf()
  const trouble = useShelfState((state) => state.trouble)
  const missing = useShelfState((state) => state.missing)
  if (trouble === null && missing === 0) return null
  return (
    <div className='framed-part wrong stack wide' role='alert'>
      {missing > 0 && (
        <p>
          <Mark name='warning' /> {words.missing(missing)}
        </p>
      )}
      {trouble !== null && (
        <>
          <p>
            <Mark name='warning' /> {words.trouble[trouble]}
          </p>
          <div className='line'>
            <Button onClick={() => saveJobFile(pierStore.getState().document)}>{words.files.thisPier}</Button>
            {trouble === 'newer' || trouble === 'lost' ? (
              <Button onClick={() => location.reload()}>{words.reload}</Button>
            ) : (
              <Button onClick={() => void shelf.refresh()}>{words.tryAgain}</Button>
            )}
          </div>
        </>
      )}
    </div>
  )
}

/** What was deleted last, and the way back. */
export const Removed = () => {
  const words = wordsOf('shelf')
  const shelf = useShelf()
  const last = useShelfState((state) => state.removed[0])
  if (!last) return null
  return (
    <p className='line wide' role='status'>
      {words.removed(nameWords(last.name))} <Button onClick={() => void shelf.putBack()}>{words.actions.putBack}</Button>
    </p>
  )
}
