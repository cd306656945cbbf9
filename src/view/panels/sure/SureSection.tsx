import { lazy, Suspense, useState } from 'react'
import { sureSection } from '../../../text/en/sureSection.ts'
import { useResult } from '../../hooks/usePier.ts'

const SurePanel = lazy(() => import('./SurePanel.tsx').then((module) => ({ default: module.SurePanel })))

/** The study of ranges as a section of the answers: loaded, and worked out, once it is opened. */
export const SureSection = () => {
  const [isOpen, setIsOpen] = useState(false)
  const { uplift } = useResult().demand
  return (
    <details className='answer answer-folded' onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary className='fold'>
        <h3>{sureSection.title}</h3>
        <p className='answer-help'>{sureSection.help}</p>
      </summary>
      {isOpen && (
        <Suspense fallback={<p className='quiet'>{sureSection.loading}</p>}>
          <SurePanel demand={uplift && uplift.value > 0 ? uplift.value : null} />
        </Suspense>
      )}
    </details>
  )
}
