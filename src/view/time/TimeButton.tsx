import { openStretch, showMoment } from '../../state/actions/time.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'

const id = 'over-time'

/** The way into the time strip, and out of it. */
export const TimeButton = ({ className }: Readonly<{ className: string }>) => {
  const timeEntry = wordsOf('entrances').time
  const isOpen = usePier((state) => state.view.time !== null)
  return (
    <button
      id={id}
      type='button'
      className={className}
      aria-label={timeEntry.open}
      aria-expanded={isOpen}
      onClick={() => (isOpen ? showMoment(pierStore, null) : openStretch(pierStore, 'build'))}
    >
      {timeEntry.short}
    </button>
  )
}

/** When the strip closes the keyboard is where it was. */
export const focusTimeButton = (): void => document.getElementById(id)?.focus()
