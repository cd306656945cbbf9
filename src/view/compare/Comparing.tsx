import { lazy, Suspense, useEffect } from 'react'
import { createPortal } from 'react-dom'
import { closeCompare, compareStore } from '../../state/compare.ts'
import { compareEntry } from '../../text/en/compareEntry.ts'
import { ErrorBoundary } from '../app/ErrorBoundary.tsx'
import { focusCompareButton } from './CompareButton.tsx'

const CompareView = lazy(() => import('./CompareView.tsx').then((module) => ({ default: module.CompareView })))

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
export const Comparing = ({ drawsIn3D }: Readonly<{ drawsIn3D: boolean }>) => {
  useWholePage()
  return createPortal(
    <ErrorBoundary fallback={() => <GivenUp />}>
      <Suspense fallback={<p className='picture-note'>{compareEntry.loading}</p>}>
        <CompareView drawsIn3D={drawsIn3D} />
      </Suspense>
    </ErrorBoundary>,
    document.body,
  )
}
