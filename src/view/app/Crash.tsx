import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { saveJobFile } from './jobFiles.ts'

/** What is shown when the page itself broke: what happened, and two ways on. The pier is in the note already. */
export const Crash = ({ error }: { error: unknown }) => (
  <main className='crash' role='alert'>
    <h1>{wordsOf('app').crash.title}</h1>
    <p>{wordsOf('app').crash.body}</p>
    <div className='notice-actions'>
      <button type='button' className='button' onClick={() => saveJobFile(pierStore.getState().document)}>
        {wordsOf('app').actions.save}
      </button>
      <button type='button' className='button' onClick={() => location.reload()}>
        {wordsOf('app').actions.reload}
      </button>
    </div>
    <details>
      <summary>{wordsOf('app').crash.detail}</summary>
      <pre>{error instanceof Error ? (error.stack ?? error.message) : String(error)}</pre>
    </details>
  </main>
)
