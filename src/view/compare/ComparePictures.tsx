import { Suspense, useCallback, useId, useMemo, useState } from 'react'
import type { ComparedPier } from '../../state/compareSet.ts'
import { wordsOf } from '../../words/index.ts'
import { ErrorBoundary } from '../kit/Apart.tsx'
import { usePier } from '../hooks/usePier.ts'
import { tallyBy } from '../../state/goneBy.ts'
import { Tally } from '../kit/Tally.tsx'
import { CompareSections } from './CompareSections.tsx'
import { useCompare } from './useCompare.ts'
import { lazyPart } from '../lazyPage.tsx'

const CompareCanvas = lazyPart(() => import('../scene/compare/CompareCanvas.tsx').then((module) => module.CompareCanvas), [])

type Props = Readonly<{ shown: readonly ComparedPier[]; drawsIn3D: boolean; tone: string }>

/** All piers in one picture, a column each; the drawn sections until it is there and wherever it can't be. */
export const ComparePictures = ({ shown, drawsIn3D, tone }: Props) => {
  const words = wordsOf('compare')
  const [isLost, setLost] = useState(false)
  const [hasFailed, setFailed] = useState(false)
  const keys = useId()
  // Equal piers give the equal list, so that the picture does not start anew when only words have changed.
  const piers = useMemo(() => shown.map(({ pier }) => pier?.result ?? null), [shown])
  const onError = useCallback(() => setFailed(true), [])
  const theme = usePier((state) => state.view.theme)
  const year = useCompare((state) => state.year)
  const sections = <CompareSections piers={piers} />
  return (
    <section
      className='cmp-picture ring-inside holds'
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is turned with the keyboard
      tabIndex={0}
      aria-label={words.picture}
      aria-describedby={keys}
    >
      <p id={keys} className='spoken'>
        {tone === '' ? words.keys : words.projector.keys}
      </p>
      {drawsIn3D && !hasFailed ? (
        <ErrorBoundary fallback={() => sections} onError={onError}>
          <Suspense fallback={sections}>
            <div className='cmp-canvas fills' data-lost={isLost || undefined}>
              <CompareCanvas piers={piers} year={year} tone={`${theme} ${tone}`} onLost={setLost} />
            </div>
            {isLost && sections}
          </Suspense>
        </ErrorBoundary>
      ) : (
        sections
      )}
      <div className='cmp-columns fills' aria-hidden='true'>
        {shown.map(({ pick, pier }) => (
          <span key={pick}>
            {pier === null && <span className='cmp-cannot panel'>{words.column.cannot}</span>}
            {pier !== null && year !== null && (
              <div className='tally-place'>
                <Tally counts={tallyBy(pier.result.spec, year)} year={year} rows={1} />
              </div>
            )}
          </span>
        ))}
      </div>
    </section>
  )
}
