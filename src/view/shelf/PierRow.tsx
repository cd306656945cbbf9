import { useEffect, useId, useRef, useState } from 'react'
import { documentWords } from '../../core/spec/pier/pier.ts'
import { keptOf } from '../../state/document/opened.ts'
import type { Shelved } from '../../state/storage/record.ts'
import { rawText } from '../../state/storage/stored.ts'
import { wordsOf } from '../../words/index.ts'
import { saveTextFile } from '../files/jobFiles.ts'
import { usePier } from '../hooks/usePier.ts'
import { Mark } from '../kit/Mark.tsx'
import { Button } from '../kit/Controls.tsx'
import { Thumbnail } from './Thumbnail.tsx'
import { useShelf, nameWords, shelfIssue, whenWords } from './useShelf.ts'

/** Other words for a saved pier. */
const WordsForm = ({ pier, onDone }: { pier: Shelved; onDone: () => void }) => {
  const words = wordsOf('shelf')
  const shelf = useShelf()
  const id = useId()
  const [name, setName] = useState(pier.name)
  const [note, setNote] = useState(pier.note)
  const first = useRef<HTMLInputElement>(null)
  // The form stands in the place of the button that was pressed, and takes its focus over.
  useEffect(() => first.current?.focus(), [])
  const keep = async () => {
    await shelf.putWords(pier.id, name.trim(), note)
    onDone()
  }
  return (
    <form
      className='stack tight'
      onSubmit={(event) => {
        event.preventDefault()
        void keep()
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return
        event.preventDefault()
        event.stopPropagation()
        onDone()
      }}
    >
      <label htmlFor={`${id}-name`}>{words.name}</label>
      <input
        id={`${id}-name`}
        className='box broad'
        ref={first}
        maxLength={documentWords.name.most}
        value={name}
        onChange={(event) => setName(event.target.value)}
      />
      <label htmlFor={`${id}-note`}>{words.note}</label>
      <textarea
        id={`${id}-note`}
        className='box broad'
        rows={3}
        maxLength={documentWords.note.most}
        value={note}
        onChange={(event) => setNote(event.target.value)}
      />
      <div className='line'>
        <button type='submit' className='button main'>
          {words.actions.keep}
        </button>
        <Button onClick={onDone}>{words.actions.cancel}</Button>
      </div>
    </form>
  )
}

/** One thing that can be done, named with the pier it is done to. */
export const Act = ({ word, name, onDo }: { word: string; name: string; onDo: () => void }) => (
  <Button aria-label={wordsOf('shelf').about(word, name)} onClick={onDo}>
    {word}
  </Button>
)

const saveFound = (pier: Shelved) => saveTextFile(`record-${pier.id || 'found'}.json`, `${rawText(pier.raw)}\n`, 'application/json')

/** In the place of a row that can't be drawn: what was found, to take along. */
export const FoundRow = ({ pier }: { pier: Shelved }) => {
  const words = wordsOf('shelf')
  return (
    <li className='shelf-pier over-fine' data-kind='damaged'>
      <Thumbnail drawing={null} />
      <div className='stack tight'>
        <h4 className='broken-anywhere'>{nameWords(pier.name)}</h4>
        <p className='problem small'>
          <Mark name='warning' /> <span>{words.damaged}</span>
        </p>
        <div className='line'>
          <Act word={words.actions.saveFound} name={nameWords(pier.name)} onDo={() => saveFound(pier)} />
        </div>
      </div>
    </li>
  )
}

/** Why a record is not like the others, when it is not. */
const State = ({ pier }: { pier: Shelved }) => {
  const words = wordsOf('shelf')
  const system = usePier((state) => state.view.units)
  if (pier.kind === 'whole') return null
  return (
    <p className='problem small'>
      <Mark name='warning' />{' '}
      <span>
        {pier.kind === 'newer' ? words.newer : `${words.damaged} ${pier.issues.map((issue) => shelfIssue(issue, system)).join(' ')}`}
      </span>
    </p>
  )
}

type RowProps = Readonly<{ pier: Shelved; picked: boolean; onPick: (on: boolean) => void; onOpened: () => void }>

/** A saved pier: its picture, its words, and what can be done with it. */
export const PierRow = ({ pier, picked, onPick, onOpened }: RowProps) => {
  const words = wordsOf('shelf')
  const shelf = useShelf()
  const [isNaming, setNaming] = useState(false)
  const isOpen = usePier((state) => {
    const { id, place } = keptOf(state)
    return place !== null && id === pier.id
  })
  const name = nameWords(pier.name)
  const open = async () => {
    if (await shelf.openPier(pier.id)) onOpened()
  }
  return (
    <li className='shelf-pier over-fine' data-kind={pier.kind} data-open={isOpen || undefined}>
      <Thumbnail drawing={pier.thumbnail} />
      <div className='stack tight'>
        <h4 className='broken-anywhere'>{name}</h4>
        <p className='quiet'>
          {words.changed(whenWords(pier.changed))}
          {isOpen && <strong> · {words.isOpen}</strong>}
        </p>
        {pier.note !== '' && !isNaming && <p className='two-lines broken-anywhere'>{pier.note}</p>}
        <State pier={pier} />
        {isNaming ? (
          <WordsForm pier={pier} onDone={() => setNaming(false)} />
        ) : (
          <div className='line'>
            {pier.kind === 'whole' && (
              <>
                <Act word={words.actions.open} name={name} onDo={() => void open()} />
                <Act
                  word={words.actions.copy}
                  name={name}
                  onDo={() => void shelf.duplicate(pier.id, words.copyOf(name).slice(0, documentWords.name.most))}
                />
                <Act word={words.actions.words} name={name} onDo={() => setNaming(true)} />
              </>
            )}
            {pier.kind !== 'whole' && <Act word={words.actions.saveFound} name={name} onDo={() => saveFound(pier)} />}
            {pier.kind !== 'newer' && <Act word={words.actions.remove} name={name} onDo={() => void shelf.remove(pier.id)} />}
            {pier.kind === 'whole' && (
              <label className='tick small'>
                <input
                  type='checkbox'
                  checked={picked}
                  aria-label={words.about(words.actions.compare, name)}
                  onChange={(event) => onPick(event.target.checked)}
                />
                {words.actions.compare}
              </label>
            )}
          </div>
        )}
      </div>
    </li>
  )
}
