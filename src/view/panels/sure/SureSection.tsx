import { Suspense, useState } from 'react'
import { wordsOf } from '../../../words/index.ts'
import { useResult } from '../../hooks/usePier.ts'
import { lazyPage } from '../../lazyPage.tsx'

const SurePanel = lazyPage(() => import('./SurePanel.tsx').then((module) => module.SurePanel), ['answers', 'reasons', 'sure'])

/** The study of ranges as a section of the answers: loaded, and worked out, once it is opened. */
export const SureSection = () => {
  const sureSection = wordsOf('entrances').sure
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
