import { useState } from 'react'
import { compareStore, fewestPiers, mostPiers } from '../../state/compare.ts'
import { comparePiers } from '../../state/compareActions.ts'
import { ready } from '../../core/documents/documentKind.ts'
import { pierKind } from '../../core/documents/pier.ts'
import { openRecord } from '../../state/storage/record.ts'
import { wordsOf } from '../../words/index.ts'
import { ErrorBoundary } from '../kit/Apart.tsx'
import { Button } from '../kit/Controls.tsx'
import { FoundRow, PierRow } from './PierRow.tsx'
import { useShelfState } from './useShelf.ts'

const holds = (text: string, sought: readonly string[]): boolean => sought.every((word) => text.toLowerCase().includes(word))

/** Every saved pier, newest first; by its words when there are many. Two to four of them can be compared. */
export const PierList = ({ onLeave }: { onLeave: () => void }) => {
  const words = wordsOf('shelf')
  const piers = useShelfState((state) => state.piers)
  const isRead = useShelfState((state) => state.isRead)
  const [sought, setSought] = useState('')
  const [picked, setPicked] = useState<readonly string[]>([])
  const asked = sought.toLowerCase().split(/\s+/).filter(Boolean)
  const shown = piers.filter((pier) => holds(`${pier.name} ${pier.note}`, asked))
  const chosen = piers.flatMap((pier) => (pier.kind === 'whole' && pier.of === pierKind && picked.includes(pier.id) ? [pier.record] : []))
  const compare = async () => {
    const kind = await ready(pierKind)
    const read = chosen.map((record) => openRecord(kind, record))
    if (
      comparePiers(
        compareStore,
        read.flatMap((one) => (one.ok ? [one.value] : [])),
      )
    )
      onLeave()
  }
  const canCompare = chosen.length >= fewestPiers && chosen.length <= mostPiers
  return (
    <section className='stack' aria-label={words.list}>
      <div className='line shelf-seek ends'>
        <h3>{piers.length === 0 ? words.list : words.count(piers.length)}</h3>
        {piers.length > 1 && (
          <input
            className='box'
            type='search'
            value={sought}
            placeholder={words.search}
            aria-label={words.search}
            onChange={(event) => setSought(event.target.value)}
          />
        )}
      </div>
      {isRead && piers.length === 0 && <p className='quiet'>{words.none}</p>}
      {piers.length > 0 && shown.length === 0 && <p className='quiet'>{words.noMatch}</p>}
      <ul>
        {shown.map((pier) => (
          <ErrorBoundary key={pier.id} fallback={() => <FoundRow pier={pier} />}>
            <PierRow
              pier={pier}
              picked={picked.includes(pier.id)}
              onPick={(on) => setPicked((was) => (on ? [...was, pier.id] : was.filter((id) => id !== pier.id)))}
              onOpened={onLeave}
            />
          </ErrorBoundary>
        ))}
      </ul>
      {picked.length > 0 && (
        <p className='shelf-compare panel over-heavy'>
          <Button className='button main' disabled={!canCompare} onClick={() => void compare()}>
            {words.actions.compareThese(chosen.length)}
          </Button>{' '}
          {!canCompare && <span className='quiet'>{words.pickToCompare}</span>}
        </p>
      )}
    </section>
  )
}
