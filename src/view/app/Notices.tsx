import { Suspense } from 'react'
import type { Notice } from '../../state/appState.ts'
import { dismiss } from '../../state/actions/notices.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'
import { saveTextFile } from '../files/jobFiles.ts'
import { lazyPage } from '../lazyPage.tsx'
import { Button } from '../kit/Controls.tsx'

const MistakesNotice = lazyPage(() => import('./MistakesNotice.tsx').then((module) => module.MistakesNotice), ['build'])
const MovedList = lazyPage(() => import('./MovedList.tsx').then((module) => module.MovedList), ['moved'])
const IssueLines = lazyPage(() => import('../panels/IssueLines.tsx').then((module) => module.IssueLines), [])
const mostIssues = 40

const Actions = ({ notice }: { notice: Notice }) => (
  <div className='line'>
    {notice.code === 'newer-page' && (
      <Button onClick={() => void import('./keepOffline.ts').then((module) => module.openNewerPage())}>
        {wordsOf('app').actions.useNewer}
      </Button>
    )}
    {notice.code === 'note-damaged' && notice.detail !== undefined && (
      <Button onClick={() => saveTextFile('damaged-note.txt', notice.detail ?? '')}>{wordsOf('app').actions.saveDamagedNote}</Button>
    )}
    <Button onClick={() => dismiss(pierStore, notice.code)}>{wordsOf('app').actions.dismiss}</Button>
  </div>
)

const OneNotice = ({ notice }: { notice: Notice }) => {
  const issues = notice.issues ?? []
  const name = notice.code === 'file-refused' || notice.code === 'file-opened' ? notice.detail : undefined
  return (
    <div className='notice panel'>
      <p>
        {wordsOf('app').notices[notice.code]}
        {name !== undefined && <span> {name}</span>}
      </p>
      <Actions notice={notice} />
      <Suspense>
        {notice.code === 'numbers-moved' && <MovedList of={issues} />}
        {notice.code !== 'numbers-moved' && issues.length > 0 && (
          <IssueLines issues={issues} most={mostIssues} className='whole-row stack tight small broken-anywhere' />
        )}
      </Suspense>
    </div>
  )
}

/** What the shell has to say, and what is shown as done wrong where the strip of building does not say so, over the foot of the picture, until it is dismissed. */
export const Notices = () => {
  const notices = usePier((state) => state.notices)
  const isWrong = usePier(({ view }) => view.mistakes.length > 0 && view.time?.stretch !== 'build')
  return (
    <div className='notices holds stack' role='status' aria-live='polite'>
      {isWrong && (
        <Suspense>
          <MistakesNotice />
        </Suspense>
      )}
      {notices.map((notice) => (
        <OneNotice key={notice.code} notice={notice} />
      ))}
    </div>
  )
}
