import type { Draft } from '../../state/storage/drafts.ts'
import { wordsOf } from '../../words/index.ts'
import { saveTextFile } from '../files/jobFiles.ts'
import { Act } from './PierRow.tsx'
import { ShelfList } from './ShelfList.tsx'
import { Thumbnail } from './Thumbnail.tsx'
import { useShelf, useShelfState, nameWords, whenWords } from './useShelf.ts'
import { Button } from '../kit/Controls.tsx'

const DraftRow = ({ draft, onOpened }: { draft: Draft; onOpened: () => void }) => {
  const words = wordsOf('shelf')
  const shelf = useShelf()
  const name = draft.kind === 'draft' ? nameWords(draft.note.document.name) : words.drafts.damaged
  const isOpen = draft.kind === 'draft' && draft.isOpen
  return (
    <li className='shelf-pier over-fine'>
      <Thumbnail drawing={draft.kind === 'draft' ? draft.thumbnail : null} />
      <div className='stack tight'>
        <h4 className='broken-anywhere'>{name}</h4>
        <p className='quiet'>{isOpen ? words.drafts.elsewhere : words.drafts.left(whenWords(draft.at))}</p>
        <div className='line'>
          {draft.kind === 'draft' ? (
            <Act
              word={words.actions.open}
              name={name}
              onDo={() => {
                void shelf.openDraft(draft.tab)
                onOpened()
              }}
            />
          ) : (
            <Button onClick={() => saveTextFile('note.txt', draft.raw)}>{words.actions.saveFound}</Button>
          )}
          {!isOpen && <Act word={words.actions.discard} name={name} onDo={() => void shelf.dropDraft(draft.tab)} />}
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
    <ShelfList title={words.drafts.title} help={words.drafts.help}>
      <ul>
        {drafts.map((draft) => (
          <DraftRow key={draft.tab} draft={draft} onOpened={onLeave} />
        ))}
      </ul>
    </ShelfList>
  )
}
