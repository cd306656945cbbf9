import type { Draft } from '../../state/storage/drafts.ts'
import { wordsOf } from '../../words/index.ts'
import { saveTextFile } from '../files/jobFiles.ts'
import { Thumbnail } from './Thumbnail.tsx'
import { useShelf, useShelfState } from './useShelf.ts'
import { nameWords, whenWords } from './words.ts'

const DraftRow = ({ draft, onOpened }: { draft: Draft; onOpened: () => void }) => {
  const words = wordsOf('shelf')
  const shelf = useShelf()
  const name = draft.kind === 'draft' ? nameWords(draft.note.document.name) : words.drafts.damaged
  const isOpen = draft.kind === 'draft' && draft.isOpen
  return (
    <li className='shelf-pier'>
      <Thumbnail drawing={draft.kind === 'draft' ? draft.thumbnail : null} />
      <div className='shelf-about'>
        <h4>{name}</h4>
        <p className='quiet'>{isOpen ? words.drafts.elsewhere : words.drafts.left(whenWords(draft.at))}</p>
        <div className='shelf-buttons'>
          {draft.kind === 'draft' ? (
            <button
              type='button'
              className='button'
              aria-label={words.about(words.actions.open, name)}
              onClick={() => {
                void shelf.openDraft(draft.tab)
                onOpened()
              }}
            >
              {words.actions.open}
            </button>
          ) : (
            <button type='button' className='button' onClick={() => saveTextFile('note.txt', draft.raw)}>
              {words.actions.saveFound}
            </button>
          )}
          {!isOpen && (
            <button
              type='button'
              className='button'
              aria-label={words.about(words.actions.discard, name)}
              onClick={() => void shelf.dropDraft(draft.tab)}
            >
              {words.actions.discard}
            </button>
          )}
        </div>
      </div>
    </li>
  )
}

/** What was left without saving: here before another pier was opened, or in a tab that is gone. */
export const DraftList = ({ onLeave }: { onLeave: () => void }) => {
  const words = wordsOf('shelf')
  const drafts = useShelfState((state) => state.drafts)
  if (drafts.length === 0) return null
  return (
    <section className='shelf-list' aria-label={words.drafts.title}>
      <h3>{words.drafts.title}</h3>
      <p className='quiet'>{words.drafts.help}</p>
      <ul>
        {drafts.map((draft) => (
          <DraftRow key={draft.tab} draft={draft} onOpened={onLeave} />
        ))}
      </ul>
    </section>
  )
}
