import { Suspense, useEffect } from 'react'
import { createPortal } from 'react-dom'
import { closeCompare, compareStore } from '../../state/compare.ts'
import { wordsOf } from '../../words/index.ts'
import { ErrorBoundary } from '../kit/Apart.tsx'
import { focusCompareButton } from './CompareButton.tsx'
import { lazyPart } from '../lazyPage.tsx'
import type { CompareProps } from './CompareView.tsx'

const CompareView = lazyPart(
  () => import('./CompareView.tsx').then((module) => module.CompareView),
  ['answers', 'compare', 'drawing', 'looking', 'materials', 'moisture', 'reasons', 'time'],
)

/** The page behind is out of reach while piers are compared, and comes back as it was left. */
const useWholePage = (): void =>
  useEffect(() => {
    const page = document.getElementById('root')
    if (!page) return
    page.inert = true
    page.style.visibility = 'hidden'
    return () => {
      page.inert = false
      page.style.visibility = ''
      focusCompareButton()
    }
  }, [])

const GivenUp = () => {
  useEffect(() => closeCompare(compareStore), [])
  return null
}

/** The comparison over the whole page. It stands in place of the picture: there is never more than one canvas. */
export const Comparing = (props: CompareProps) => {
  useWholePage()
  return createPortal(
    <ErrorBoundary fallback={() => <GivenUp />}>
      <Suspense fallback={<p className='picture-note panel small'>{wordsOf('entrances').compare.loading}</p>}>
        <CompareView {...props} />
      </Suspense>
    </ErrorBoundary>,
    document.body,
  )
}
