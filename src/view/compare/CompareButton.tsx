import type { ViewSettings } from '../../state/appState.ts'
import { compareStore, openCompare } from '../../state/compare.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { Button } from '../kit/Controls.tsx'

const id = 'side-by-side'

/** Whoever looks at wet wood, or at a year, goes on looking at it side by side. */
const yearOf = ({ time, layers }: ViewSettings): number | null => (time?.stretch === 'years' ? time.year : layers.wetness ? 0 : null)

/** The way into the comparison. */
export const CompareButton = () => (
  <Button id={id} onClick={() => openCompare(compareStore, yearOf(pierStore.getState().view))}>
    {wordsOf('entrances').compare.open}
  </Button>
)

/** Back from the comparison the keyboard is where it was. */
export const focusCompareButton = (): void => document.getElementById(id)?.focus()
