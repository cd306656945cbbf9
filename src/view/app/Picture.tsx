import { lazy, Suspense, useEffect } from 'react'
import { dismiss, notify } from '../../state/actions/notices.ts'
import { pierStore } from '../../state/store.ts'
import { text } from '../../text/index.ts'
import { ErrorBoundary } from './ErrorBoundary.tsx'
import { markReady } from './readiness.ts'

/** Small, and there long before the 3D picture. */
const SectionView = lazy(() => import('../section/SectionView.tsx').then((module) => ({ default: module.SectionView })))
const CutawayView = lazy(() => import('../scene/CutawayView.tsx').then((module) => ({ default: module.CutawayView })))

/** Asked once: a context is dear. */
const drawsIn3D = ((): boolean => {
  try {
    const context = document.createElement('canvas').getContext('webgl2')
    context?.getExtension('WEBGL_lose_context')?.loseContext()
    return context !== null
  } catch {
    return false
  }
})()

/** The drawn section in place of the 3D picture, for good. */
const InPlace = ({ why }: { why: 'no-webgl' | 'scene-failed' }) => {
  useEffect(() => {
    notify(pierStore, { code: why })
    return () => dismiss(pierStore, why)
  }, [why])
  return (
    <Suspense>
      <SectionView />
      <Stands />
    </Suspense>
  )
}

/** Tells that what stands beside it has been drawn. */
const Stands = () => {
  useEffect(markReady, [])
  return null
}

const WhileLoading = () => (
  <>
    <Suspense>
      <SectionView />
    </Suspense>
    <p className='picture-note' role='status'>
      {text.app.picture.loading}
    </p>
  </>
)

/** The cutaway, or the section until it is there and wherever it can't be. */
export const Picture = () => (
  <main className='picture' aria-label={text.app.panels.picture}>
    <div className='picture-fill'>
      {drawsIn3D ? (
        <ErrorBoundary fallback={() => <InPlace why='scene-failed' />}>
          <Suspense fallback={<WhileLoading />}>
            <CutawayView />
          </Suspense>
        </ErrorBoundary>
      ) : (
        <InPlace why='no-webgl' />
      )}
    </div>
  </main>
)
