import { useRef } from 'react'
import { version } from '../../../package.json'
import { largestShelf } from '../../state/storage/shelfFile.ts'
import { wordsOf } from '../../words/index.ts'
import { saveTextFile, textIn } from '../files/jobFiles.ts'
import { useShelf, useShelfState } from './useShelf.ts'

/** Savings after which a copy is asked for. */
const overdue = 10
/** A file of more bytes is not even read. */
const largestFile = 4 * largestShelf

/** All saved piers as one file, and back; and what the browser has said about keeping them. */
export const FilePart = () => {
  const words = wordsOf('shelf')
  const shelf = useShelf()
  const input = useRef<HTMLInputElement>(null)
  const kind = useShelfState((state) => state.kind)
  const count = useShelfState((state) => state.piers.length)
  const { unfiled, persisted } = useShelfState((state) => state.witness)
  const take = async (file: File) => shelf.importText(file.size > largestFile ? '' : await textIn(file).catch(() => null))
  return (
    <section className='shelf-files' aria-label={words.files.title}>
      {unfiled >= overdue && count > 0 && <p className='shelf-due'>{words.files.overdue(unfiled)}</p>}
      <div className='shelf-buttons'>
        <button
          type='button'
          className='button'
          disabled={count === 0}
          onClick={() => saveTextFile(words.files.fileName, shelf.exportText(), 'application/json')}
        >
          {words.files.takeAll}
        </button>
        <button type='button' className='button' onClick={() => input.current?.click()}>
          {words.files.bring}
        </button>
        <input
          ref={input}
          className='spoken'
          type='file'
          accept='.json,application/json'
          tabIndex={-1}
          aria-hidden='true'
          data-file='shelf'
          onChange={(event) => {
            const file = event.target.files?.[0]
            event.target.value = ''
            if (file) void take(file)
          }}
        />
      </div>
      <p className='quiet'>{words.version(version)}</p>
      {kind === 'memory' && <p className='quiet'>{words.files.memory}</p>}
      {kind === 'browser' && persisted !== null && <p className='quiet'>{persisted ? words.files.persisted : words.files.notPersisted}</p>}
    </section>
  )
}
