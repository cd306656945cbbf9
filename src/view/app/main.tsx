import '@fontsource-variable/source-sans-3/wght.css'
import '../styles/tokens.css'
import '../styles/base.css'
import '../styles/shell.css'
import '../styles/roles.css'
import '../styles/inputs.css'
import '../styles/answers.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { setQuality } from '../../state/actions/view.ts'
import { shownResult } from '../../state/derived.ts'
import { startSession } from '../../state/start.ts'
import { pierStore } from '../../state/store.ts'
import { App } from './App.tsx'
import { Crash } from './Crash.tsx'
import { ErrorBoundary } from './ErrorBoundary.tsx'
import { installProbe } from './probe.ts'
import { isReady } from './readiness.ts'

if (new URLSearchParams(location.search).get('quality') === 'light') setQuality(pierStore, 'light')
startSession(pierStore, window)
installProbe({
  ready: isReady,
  document: () => pierStore.getState().document,
  result: () => shownResult(pierStore.getState()),
  cutState: () => pierStore.getState().view.cut,
})

const root = document.getElementById('root')
if (!root) throw new Error('main: the page has no #root')
createRoot(root).render(
  <StrictMode>
    <ErrorBoundary fallback={(error) => <Crash error={error} />}>
      <App />
    </ErrorBoundary>
  </StrictMode>,
)
