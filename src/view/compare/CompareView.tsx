import '../kit/parts.css'
import { type ReactNode, useEffect, useMemo, useRef, useState, useSyncExternalStore, useLayoutEffect } from 'react'
import { compareStore } from '../../state/compare.ts'
import { fixedOrder, showColumn, project } from '../../state/compareActions.ts'
import { differingFirst, rowsFor } from '../../state/compareRows.ts'
import { wordsOf } from '../../words/index.ts'
import { useIsLooking, usePier } from '../hooks/usePier.ts'
import { ChoosePanel } from './ChoosePanel.tsx'
import { CompareHead } from './CompareHead.tsx'
import { ComparePictures } from './ComparePictures.tsx'
import { CompareTable, type ShownPier } from './CompareTable.tsx'
import { isProjected, Projected } from './Projected.tsx'
import { pierTitle } from '../cells/pierName.ts'
import { Plates } from './Plates.tsx'
import { useBroughtFiles } from './useBroughtFiles.ts'
import { useCompare, useComparedPiers } from './useCompare.ts'
import { useCompareKeys } from './useCompareKeys.ts'
import { Button } from '../kit/Controls.tsx'
import type { Theme } from '../../state/appState.ts'
import './compare.css'

/** While piers are projected the page is dark, whatever its own colours; leaving full screen ends it, and the other way round. */
function useProjection(isOn: boolean, theme: Theme): void {
  useLayoutEffect(() => {
    document.documentElement.dataset.theme = isOn ? 'dark' : theme
    return () => {
      document.documentElement.dataset.theme = theme
    }
  }, [isOn, theme])

  useEffect(() => {
    if (!isOn) return
    const onChange = () => {
      if (!document.fullscreenElement) project(compareStore, null)
    }
    document.addEventListener('fullscreenchange', onChange)
    return () => {
      document.removeEventListener('fullscreenchange', onChange)
      if (document.fullscreenElement) document.exitFullscreen().catch(() => undefined)
    }
  }, [isOn])
}

/** Whether the page answers to a media query, now and later. */
const useMedia = (query: string): boolean =>
  useSyncExternalStore(
    (changed) => {
      const list = matchMedia(query)
      list.addEventListener('change', changed)
      return () => list.removeEventListener('change', changed)
    },
    () => matchMedia(query).matches,
  )

/** Below this a screen shows one pier at a time. */
const phone = '(max-width: 719px)'

/** One pier at a time on a narrow screen: which one. */
const Switcher = ({ all, at }: Readonly<{ all: readonly ShownPier[]; at: number }>) => (
  <nav className='cmp-switcher panel under-fine' aria-label={wordsOf('compare').column.which}>
    {all.map(({ compared, place }) => (
      <button
        key={compared.pick}
        type='button'
        className='tab small strong'
        aria-pressed={place === at}
        onClick={() => showColumn(compareStore, place)}
      >
        {pierTitle(compared)}
      </button>
    ))}
  </nav>
)

/** What the piers share, and that their order says nothing. */
const Shared = ({ isOneSite, isMoved, first }: Readonly<{ isOneSite: boolean; isMoved: boolean; first: string }>) => {
  const words = wordsOf('compare')
  return (
    <p className='cmp-rail panel quiet light'>
      {isOneSite ? words.same : words.mixed} {isMoved ? words.order.moved : first}{' '}
      {isMoved && (
        <Button className='cmp-back underlined strong' onClick={() => fixedOrder(compareStore)}>
          {words.order.back}
        </Button>
      )}
    </p>
  )
}

export type CompareProps = Readonly<{
  drawsIn3D: boolean
  /** Ends the row of what can be done with the comparison as a whole. */
  tools: ReactNode
  /** Stands unseen beside it. */
  children: ReactNode
}>

/** Piers side by side: pictures in step above, a row a question below. */
export const CompareView = ({ drawsIn3D, tools, children }: CompareProps) => {
  const words = wordsOf('compare')
  const piers = useComparedPiers()
  const projected = useCompare((state) => state.projected)
  const column = useCompare((state) => state.column)
  const isMoved = useCompare((state) => state.isMoved)
  const hidden = useCompare((state) => state.hiddenRows)
  const order = useCompare((state) => state.rowOrder)
  const theme = usePier((state) => state.view.theme)
  const isLooking = useIsLooking()
  const isPhone = useMedia(phone)
  const [isDark, setDark] = useState(false)
  const leave = useRef<HTMLButtonElement>(null)
  const isOn = projected !== null
  useProjection(isOn, theme)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the keyboard starts at the way back, at first and after full screen
  useEffect(() => leave.current?.focus({ preventScroll: true }), [isOn])

  const { rows, all, projectable } = useMemo(() => {
    const results = piers.flatMap(({ pier }) => pier?.result ?? [])
    const fixed = rowsFor(results)
    const ordered = order === 'fixed' ? fixed : differingFirst(fixed, results)
    const shown = ordered.filter(({ id }) => !hidden.includes(id))
    return { all: fixed, rows: shown, projectable: shown.filter(isProjected) }
  }, [piers, hidden, order])
  const keys = useMemo(() => ({ count: projectable.length, toggleDark: () => setDark((dark) => !dark) }), [projectable.length])
  useCompareKeys(keys)
  const files = useBroughtFiles()

  const everyone: readonly ShownPier[] = useMemo(() => piers.map((compared, place) => ({ compared, place })), [piers])
  const at = Math.min(column, piers.length - 1)
  const shown = useMemo(() => (isPhone ? everyone.filter(({ place }) => place === at) : everyone), [everyone, isPhone, at])
  const isOneSite = piers.every(({ pick }) => !pick.startsWith('brought:'))
  const pictured = useMemo(() => shown.map(({ compared }) => compared), [shown])

  return (
    <main
      className='cmp'
      data-projected={isOn || undefined}
      data-count={shown.length}
      style={{ '--count': shown.length } as React.CSSProperties}
    >
      {!isOn && <CompareHead rows={all} leave={leave} tools={tools} />}
      {!isOn && isPhone && <Switcher all={everyone} at={at} />}
      <div className='cmp-scroll holds'>
        {!isOn && (
          <div className='cmp-plates panel under-fine'>
            <Shared isOneSite={isOneSite} isMoved={isMoved} first={isLooking ? wordsOf('looking').order : words.order.first} />
            <Plates all={piers} shown={shown} />
          </div>
        )}
        <div className='cmp-pictures under-heavy'>
          {!isOn && !isPhone && (
            <section className='cmp-rail panel' aria-label={words.choose.title}>
              <ChoosePanel files={files} />
            </section>
          )}
          <ComparePictures shown={pictured} drawsIn3D={drawsIn3D} tone={isOn ? 'projected' : ''} />
        </div>
        {isOn ? (
          <Projected all={piers} shown={shown} rows={projectable} at={projected} />
        ) : (
          <>
            {isPhone && (
              <details className='cmp-fold panel under-fine'>
                <summary className='opens'>{words.choose.title}</summary>
                <ChoosePanel files={files} />
              </details>
            )}
            <CompareTable all={piers} shown={shown} rows={rows} />
            <p className='cmp-foot quiet light'>{words.leftOut}</p>
          </>
        )}
      </div>
      {children}
      {!isOn && <p className='cmp-standing panel over-heavy small'>{wordsOf('app').strip.standing}</p>}
      {isOn && isDark && <button type='button' className='blackout' aria-label={words.projector.dark} onClick={() => setDark(false)} />}
    </main>
  )
}
