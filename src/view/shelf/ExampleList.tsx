import { type ExampleFile, exampleFiles } from '../../state/exampleFiles.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { ShelfList } from './ShelfList.tsx'
import { openJob, jobFrom } from '../files/jobFiles.ts'
import { Button } from '../kit/Controls.tsx'

const textOf = async (file: ExampleFile): Promise<string> => {
  const answer = await fetch(new URL(`examples/${file}.json`, document.baseURI))
  if (!answer.ok) throw new Error(`${answer.status}`)
  return answer.text()
}

/** The piers that come with the page; each takes the place of the open one as a file does. */
export const ExampleList = ({ onLeave }: { onLeave: () => void }) => {
  const words = wordsOf('examples')
  return (
    <ShelfList title={words.title} help={words.help}>
      <ul className='line'>
        {exampleFiles.map((file) => (
          <li key={file}>
            <Button
              onClick={() => {
                void openJob(
                  pierStore,
                  words.names[file],
                  jobFrom(() => textOf(file)),
                )
                onLeave()
              }}
            >
              {words.names[file]}
            </Button>
          </li>
        ))}
      </ul>
    </ShelfList>
  )
}
