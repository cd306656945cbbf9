import { Suspense, useLayoutEffect } from 'react'
import { showPanel } from '../../state/actions/view.ts'
import type { ViewSettings } from '../../state/appState.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { useIsLooking, usePier } from '../hooks/usePier.ts'
import { CautionStrip } from '../panels/answers/CautionStrip.tsx'
import { TitleBlock } from '../panels/answers/TitleBlock.tsx'
import { Apart } from '../kit/Apart.tsx'
import { Button } from '../kit/Controls.tsx'
import { DropZone } from './DropZone.tsx'
import { Head } from './Head.tsx'
import { Notices } from './Notices.tsx'
import { PageSwitches } from './PageSwitches.tsx'
import { Picture } from './Picture.tsx'
import { useShortcuts } from './useShortcuts.ts'
import { lazyPage, lazyPart } from '../lazyPage.tsx'
import { afterPicture, picture } from '../live/opening.ts'

const InputsPanel = lazyPart(() => import('../panels/inputs/InputsPanel.tsx').then((module) => module.InputsPanel), [], afterPicture)

/** The main answers stand in the title block; these are fetched while it is read. */
const AnswersPanel = lazyPart(
  () => import('../panels/answers/AnswersPanel.tsx').then((module) => module.AnswersPanel),
  ['answers', 'drawing', 'glossary', 'loadPath', 'loads', 'materials', 'moisture', 'reasons', 'steps', 'verifiable'],
  afterPicture,
)

const LookBar = lazyPage(() => import('./LookBar.tsx').then((module) => module.LookBar), ['looking'])

const PrintPage = lazyPage(() => import('./PrintPage.tsx').then((module) => module.PrintPage), [], afterPicture)

/** Where there is no room for both panels, one of them stands beside or under the picture. */
const PanelTabs = ({ panel }: { panel: ViewSettings['panel'] }) => (
  <nav className='tabs' aria-label={wordsOf('app').panels.which}>
    {(['inputs', 'answers'] as const).map((one) => (
      <Button key={one} className='tab' aria-pressed={panel === one} onClick={() => showPanel(pierStore, one)}>
        {wordsOf('app').panels[`${one}Short`]}
      </Button>
    ))}
  </nav>
)

export const App = () => {
  const panel = usePier((state) => state.view.panel)
  const theme = usePier((state) => state.view.theme)
  const isLooking = useIsLooking()
  useShortcuts()
  // Before anything that reads the page's colours.
  useLayoutEffect(() => {
    document.documentElement.dataset.theme = theme
  }, [theme])
  return (
    <div className='sheet' data-panel={panel}>
      <Apart className='head panel under-heavy'>
        <Head />
      </Apart>
      <Suspense>{isLooking && <LookBar />}</Suspense>
      <Apart className='picture holds' onBreak={picture.pass}>
        <Picture />
      </Apart>
      <Suspense>
        <PrintPage />
      </Suspense>
      <Apart className='title panel under-heavy'>
        <TitleBlock />
      </Apart>
      <PanelTabs panel={panel} />
      <Apart className='inputs scrolls'>
        <Suspense
          fallback={
            <section className='inputs scrolls' id='inputs' aria-label={wordsOf('app').panels.inputs} aria-busy='true' tabIndex={-1} />
          }
        >
          <InputsPanel switches={<PageSwitches />} />
        </Suspense>
      </Apart>
      <Apart className='answers scrolls'>
        <Suspense fallback={<section className='answers scrolls' aria-label={wordsOf('app').panels.answers} aria-busy='true' />}>
          <AnswersPanel />
        </Suspense>
      </Apart>
      <Apart className='strip panel'>
        <CautionStrip />
      </Apart>
      <Apart className='notices holds stack'>
        <Notices />
      </Apart>
      <DropZone />
    </div>
  )
}
