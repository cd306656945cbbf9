import { type MouseEvent, type PointerEvent, Suspense, useEffect, useRef, useState } from 'react'
import { dismiss, notify } from '../../state/actions/notices.ts'
import { openLink } from '../../state/actions/view.ts'
import { shownResult } from '../../state/derived.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'
import { useIsComparing } from '../compare/useIsComparing.ts'
import { linkOfPart } from '../panels/loadPath/linkOfPart.ts'
import { ErrorBoundary } from '../kit/Apart.tsx'
import { Comparison } from './Comparison.tsx'
import { markReady } from './readiness.ts'
import { lazyPage, lazyPart } from '../lazyPage.tsx'
import { afterNumbers, afterPicture, numbers, picture } from '../live/opening.ts'
import { SectionView } from '../section/SectionView.tsx'
import { TimeButton } from '../time/TimeButton.tsx'

/** Nothing until a moment is looked at. */
const TimeBar = lazyPage(() => import('../time/TimeBar.tsx').then((module) => module.TimeBar), ['steps', 'time'], afterPicture)
const YearsTally = lazyPage(() => import('../time/YearsTally.tsx').then((module) => module.YearsTally), ['time'])
const CutawayView = lazyPart(() => import('../scene/CutawayView.tsx').then((module) => module.CutawayView), ['moisture'], afterNumbers, [])

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

let hasTold = false

/** The drawn section in place of the 3D picture, for good. */
const InPlace = ({ why }: { why: 'no-webgl' | 'scene-failed' }) => {
  useEffect(() => {
    if (why === 'no-webgl') {
      // For the whole page, so told once: not again after each look at something else.
      if (!hasTold) notify(pierStore, { code: why })
      hasTold = true
      return
    }
    notify(pierStore, { code: why })
    return () => dismiss(pierStore, why)
  }, [why])
  useEffect(markReady, [])
  return <DrawnSection />
}

/** All else of the page is fetched after it. */
const DrawnSection = () => {
  useEffect(numbers.pass, [])
  return <SectionView />
}

/** The first picture of a visit: it stands where the 3D one will stand, and goes when that one has been drawn. */
const FirstPicture = () => {
  const [isPassed, setPassed] = useState(picture.isPassed)
  useEffect(() => void picture.passed.then(() => setPassed(true)), [])
  if (isPassed) return null
  return (
    <div className='picture-first'>
      <DrawnSection />
      <p className='picture-note panel small' role='status'>
        {wordsOf('app').picture.loading}
      </p>
    </div>
  )
}

/** A press that moves further turns the picture and picks nothing [px]. */
const tapSlack = 6

/** A part that is picked in the picture opens its link of the load path. The picture has marked the part by then. */
const usePicking = () => {
  const pressed = useRef<readonly [number, number] | null>(null)
  return {
    onPointerDownCapture: ({ clientX, clientY }: PointerEvent) => {
      pressed.current = [clientX, clientY]
    },
    onClick: ({ clientX, clientY, detail, target }: MouseEvent) => {
      const from = pressed.current
      pressed.current = null
      // A click of the keyboard has no place, and only the list of parts is meant by it.
      const isKeyed = detail === 0 && target instanceof Element && target.closest('.part-list') !== null
      const isTap = from !== null && Math.hypot(clientX - from[0], clientY - from[1]) <= tapSlack
      if (!isKeyed && !(isTap && target instanceof Element && target.closest('button, input, label, .time') === null)) return
      const state = pierStore.getState()
      const { pointedAt } = state.view
      const link = pointedAt === null ? null : linkOfPart(shownResult(state), pointedAt)
      if (link !== null) openLink(pierStore, link)
    },
  }
}

/** The cutaway of the one pier, or while piers are compared the comparison in its place: one canvas at a time. */
export const Picture = () => (useIsComparing() ? <Comparison drawsIn3D={drawsIn3D} /> : <OnePicture />)

/** The cutaway, or the section until it is there and wherever it can't be. */
const OnePicture = () => {
  const stretch = usePier((state) => state.view.time?.stretch)
  const isInYears = stretch === 'years'
  return (
    <main
      className='picture holds'
      aria-label={wordsOf('app').panels.picture}
      data-time={stretch !== undefined || undefined}
      {...usePicking()}
    >
      <div className='picture-fill fills'>
        {drawsIn3D ? (
          <ErrorBoundary fallback={() => <InPlace why='scene-failed' />}>
            <Suspense>
              <CutawayView>
                <TimeButton className='tab left-fine view-time' />
              </CutawayView>
            </Suspense>
            <FirstPicture />
          </ErrorBoundary>
        ) : (
          <InPlace why='no-webgl' />
        )}
        <Suspense>{isInYears && <YearsTally />}</Suspense>
      </div>
      <Suspense>
        <TimeBar withButton={!drawsIn3D} />
      </Suspense>
    </main>
  )
}
