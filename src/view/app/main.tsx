import '@fontsource-variable/source-sans-3/wght.css'
import '../styles/letters.css'
import '../styles/tokens.css'
import '../styles/base.css'
import '../kit/words.css'
import '../kit/lay.css'
import '../kit/controls.css'
import '../kit/fields.css'
import '../styles/shell.css'
import '../styles/roles.css'
import '../styles/inputs.css'
import '../styles/title.css'
import { type ReactNode, StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { setQuality } from '../../state/actions/view.ts'
import { seenDocument, shownResult } from '../../state/derived.ts'
import { startSession } from '../../state/storage/session.ts'
import { pierStore } from '../../state/store.ts'
import { App } from './App.tsx'
import { Crash } from './Crash.tsx'
import { ErrorBoundary } from '../kit/Apart.tsx'
import { afterNumbers } from '../live/opening.ts'
import { installProbe } from '../live/probe.ts'
import { mendMissingPart } from './missingPart.ts'
import { startSpeaking, useLanguage } from './speaking.ts'
import { settleOnLeave } from './leavePage.ts'
import { isReady } from './readiness.ts'

if (new URLSearchParams(location.search).get('quality') === 'light') setQuality(pierStore, 'light')
installProbe({
  ready: isReady,
  document: () => seenDocument(pierStore.getState()),
  result: () => shownResult(pierStore.getState()),
  cutState: () => pierStore.getState().view.cut,
})

settleOnLeave(pierStore)
mendMissingPart(pierStore, import.meta.url)
if (import.meta.env.PROD)
  void afterNumbers(() => import('./keepOffline.ts')).then(({ keepOffline }) => keepOffline(pierStore, import.meta.url))

const holder = document.getElementById('root')
if (!holder) throw new Error('main: the page has no #root')
const root = createRoot(holder)
const show = (page: ReactNode): void => root.render(<StrictMode>{page}</StrictMode>)
const crashed = (error: unknown) => <Crash error={error} />

const Page = () => <App key={useLanguage()} />

startSession(pierStore, window)
  .then(() => startSpeaking(pierStore, new URL(location.href)))
  .then(
    () =>
      show(
        <ErrorBoundary fallback={crashed}>
          <Page />
        </ErrorBoundary>,
      ),
    (error: unknown) => show(crashed(error)),
  )
