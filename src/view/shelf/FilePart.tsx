import { version } from '../../../package.json'
import { largestShelf } from '../../state/storage/shelfFile.ts'
import { wordsOf } from '../../words/index.ts'
import { saveTextFile, textIn } from '../files/jobFiles.ts'
import { useShelf, useShelfState } from './useShelf.ts'
import { Button, FileButton } from '../kit/Controls.tsx'

/** Savings after which a copy is asked for. */
const overdue = 10
/** A file of more bytes is not even read. */
const largestFile = 4 * largestShelf

/** All saved piers as one file, and back; and what the browser has said about keeping them. */
export const FilePart = () => {
  const words = wordsOf('shelf')
  const shelf = useShelf()
  const kind = useShelfState((state) => state.kind)
  const count = useShelfState((state) => state.piers.length)
  const { unfiled, persisted } = useShelfState((state) => state.witness)
  const take = async (file: File) => shelf.importText(file.size > largestFile ? '' : await textIn(file).catch(() => null))
  return (
    <section className='shelf-files over-fine stack' aria-label={words.files.title}>
      {unfiled >= overdue && count > 0 && <p className='strong'>{words.files.overdue(unfiled)}</p>}
      <div className='line'>
        <Button disabled={count === 0} onClick={() => saveTextFile(words.files.fileName, shelf.exportText(), 'application/json')}>
          {words.files.takeAll}
        </Button>
        <FileButton kind='shelf' onFile={(file) => void take(file)}>
          {words.files.bring}
        </FileButton>
      </div>
      <p className='quiet'>{words.version(version)}</p>
      {kind === 'memory' && <p className='quiet'>{words.files.memory}</p>}
      {kind === 'browser' && persisted !== null && <p className='quiet'>{persisted ? words.files.persisted : words.files.notPersisted}</p>}
    </section>
  )
}
