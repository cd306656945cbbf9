import { compareStore, openCompare } from '../../state/compare.ts'
import { compareEntry } from '../../text/en/compareEntry.ts'

const id = 'side-by-side'

/** The way into the comparison. */
export const CompareButton = () => (
  <button id={id} type='button' className='button' onClick={() => openCompare(compareStore)}>
    {compareEntry.open}
  </button>
)

/** Back from the comparison the keyboard is where it was. */
export const focusCompareButton = (): void => document.getElementById(id)?.focus()
