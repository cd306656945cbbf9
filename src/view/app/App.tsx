import { useLayoutEffect, useState } from 'react'
import { text } from '../../text/index.ts'
import { usePier } from '../hooks/usePier.ts'
import { AnswersPanel } from '../panels/answers/AnswersPanel.tsx'
import { CautionStrip } from '../panels/answers/CautionStrip.tsx'
import { TitleBlock } from '../panels/answers/TitleBlock.tsx'
import { InputsPanel } from '../panels/inputs/InputsPanel.tsx'
import { DropZone } from './DropZone.tsx'
import { Head } from './Head.tsx'
import { Notices } from './Notices.tsx'
import { Picture } from './Picture.tsx'
import { useShortcuts } from './useShortcuts.ts'

type Panel = 'inputs' | 'answers'

/** Where there is no room for both panels, one of them stands beside or under the picture. */
const PanelTabs = ({ panel, onPick }: { panel: Panel; onPick: (panel: Panel) => void }) => (
  <nav className='tabs' aria-label={text.app.panels.which}>
    {(['inputs', 'answers'] as const).map((one) => (
      <button key={one} type='button' className='tab' aria-pressed={panel === one} onClick={() => onPick(one)}>
        {text.app.panels[`${one}Short`]}
      </button>
    ))}
  </nav>
)

export const App = () => {
  const [panel, setPanel] = useState<Panel>('inputs')
  const theme = usePier((state) => state.view.theme)
  useShortcuts()
  // Before anything that reads the page's colours.
  useLayoutEffect(() => {
    document.documentElement.dataset.theme = theme
  }, [theme])
  return (
    <div className='sheet' data-panel={panel}>
      <Head />
      <Picture />
      <TitleBlock />
      <PanelTabs panel={panel} onPick={setPanel} />
      <InputsPanel />
      <AnswersPanel />
      <CautionStrip />
      <Notices />
      <DropZone />
    </div>
  )
}
