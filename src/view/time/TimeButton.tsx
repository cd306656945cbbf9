import { openStretch, showMoment } from '../../state/actions/time.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'
import { Button } from '../kit/Controls.tsx'

const id = 'over-time'

/** The way into the time strip, and out of it. */
export const TimeButton = ({ className }: Readonly<{ className: string }>) => {
  const timeEntry = wordsOf('entrances').time
  const isOpen = usePier((state) => state.view.time !== null)
  return (
    <Button
      id={id}
      className={className}
      aria-label={timeEntry.open}
      aria-expanded={isOpen}
      onClick={() => (isOpen ? showMoment(pierStore, null) : openStretch(pierStore, 'build'))}
    >
      {timeEntry.short}
    </Button>
  )
}

/** When the strip closes the keyboard is where it was. */
export const focusTimeButton = (): void => document.getElementById(id)?.focus()
