import { useEffect, useState } from 'react'
import { fileName } from '../../export/fileName.ts'
import { rawRecords } from '../../state/storage/rawRecords.ts'
import { storageOf } from '../../state/storage/session.ts'
import { type StoredText, storedDocuments } from '../../state/storage/storedDocuments.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { errorText } from '../kit/Apart.tsx'
import { Button } from '../kit/Controls.tsx'
import { saveJobFile, saveTextFile } from '../files/jobFiles.ts'

/** Everything that lies in this browser, each as a file: one of them may be what broke the page. */
const Stored = () => {
  const [texts, setTexts] = useState<readonly StoredText[]>([])
  useEffect(() => void storedDocuments(storageOf(), rawRecords).then(setTexts), [])
  if (texts.length === 0) return null
  const words = wordsOf('app')
  return (
    <section aria-label={words.crash.stored}>
      <h2 className='lead'>{words.crash.stored}</h2>
      <ul className='line'>
        {texts.map(({ name, text, isWhole }, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the list is read once
          <li key={at}>
            <Button onClick={() => saveTextFile(isWhole ? fileName(name, 'pier', 'json') : 'found.txt', text, 'application/json')}>
              {isWhole ? name || words.untitled : words.crash.found}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  )
}

/** What is shown when the page itself broke: what happened, two ways on, and everything that is kept, to take along. */
export const Crash = ({ error }: { error: unknown }) => {
  const words = wordsOf('app')
  return (
    <main className='crash panel stack' role='alert'>
      <h1>{words.crash.title}</h1>
      <p>{words.crash.body}</p>
      <div className='line'>
        <Button onClick={() => saveJobFile(pierStore.getState().document)}>{words.actions.save}</Button>
        <Button onClick={() => location.reload()}>{words.actions.reload}</Button>
      </div>
      <Stored />
      <details>
        <summary className='arrowed'>{words.crash.detail}</summary>
        <pre>{errorText(error)}</pre>
      </details>
    </main>
  )
}
