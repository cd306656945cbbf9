import { type ExampleFile, exampleFiles } from '../../state/exampleFiles.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { openJob } from '../files/jobFiles.ts'

const textOf = async (file: ExampleFile): Promise<string> => {
  const answer = await fetch(new URL(`examples/${file}.json`, document.baseURI))
  if (!answer.ok) throw new Error(`${answer.status}`)
  return answer.text()
}

/** The piers that come with the page; each takes the place of the open one as a file does. */
export const ExampleList = ({ onLeave }: { onLeave: () => void }) => {
  const words = wordsOf('examples')
  return (
    <section className='shelf-list' aria-label={words.title}>
      <h3>{words.title}</h3>
      <p className='quiet'>{words.help}</p>
      <ul className='shelf-buttons'>
        {exampleFiles.map((file) => (
          <li key={file}>
            <button
              type='button'
              className='button'
              onClick={() => {
                void openJob(pierStore, words.names[file], () => textOf(file))
                onLeave()
              }}
            >
              {words.names[file]}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
