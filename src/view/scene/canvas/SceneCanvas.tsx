import { createRoot, extend, type ReconcilerRoot, type ThreeElement } from '@react-three/fiber'
import { type ReactNode, useEffect, useLayoutEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react'
import { Color, Fog, Group, Mesh, NeutralToneMapping } from 'three'
import { LineSegments2 } from 'three/examples/jsm/lines/LineSegments2.js'
import { ErrorBoundary } from '../../kit/Apart.tsx'
import { PictureCamera } from '../camera/PictureCamera.ts'

declare module '@react-three/fiber' {
  interface ThreeElements {
    lineSegments2: ThreeElement<typeof LineSegments2>
  }
}

// What the scene is written with, and no more of three.
extend({ Color, Fog, Group, LineSegments2, Mesh })

type Size = Readonly<{ width: number; height: number }>
type Props = Readonly<{
  isFull: boolean
  /** The drawing context is gone for good, or has come back after all. */
  onLost: (isLost: boolean) => void
  /** What is drawn on a canvas of this size [px]; `lives` counts the drawing contexts it has had. */
  children: (size: Size, lives: number) => ReactNode
}>

const hearVisibility = (changed: () => void): (() => void) => {
  document.addEventListener('visibilitychange', changed)
  return () => document.removeEventListener('visibilitychange', changed)
}

/** The one canvas. It draws when asked, never when the tab is hidden. */
export function SceneCanvas({ isFull, onLost, children }: Props) {
  const holder = useRef<HTMLDivElement>(null)
  const canvas = useRef<HTMLCanvasElement>(null)
  const root = useRef<ReconcilerRoot<HTMLCanvasElement> | null>(null)
  const camera = useMemo(() => new PictureCamera(), [])
  const size = useSize(holder)
  const lives = useLives(canvas, onLost)
  const isHidden = useSyncExternalStore(hearVisibility, () => document.hidden)
  const [failure, setFailure] = useState<Readonly<{ error: unknown }> | null>(null)
  if (failure) throw failure.error

  useLayoutEffect(() => {
    if (!canvas.current || !size) return
    root.current ??= createRoot(canvas.current)
    root.current.configure({
      gl: { antialias: isFull, toneMapping: NeutralToneMapping, powerPreference: 'high-performance' },
      shadows: isFull ? 'percentage' : false,
      dpr: isFull ? [1, 2] : 1,
      camera,
      frameloop: isHidden ? 'never' : 'demand',
      size: { ...size, top: 0, left: 0 },
    })
  }, [size, isHidden, isFull, camera])
  useLayoutEffect(() => {
    if (!size) return
    root.current?.render(
      <ErrorBoundary fallback={() => null} onError={(error) => setFailure({ error })}>
        {children(size, lives)}
      </ErrorBoundary>,
    )
  })
  useEffect(() => () => root.current?.unmount(), [])
  return (
    <div ref={holder} className='scene-canvas fills'>
      <canvas ref={canvas} />
    </div>
  )
}

/** Size of an element [px] as it changes; null before it is laid out. */
function useSize(element: Readonly<{ current: HTMLElement | null }>): Size | null {
  const [size, setSize] = useState<Size | null>(null)
  useLayoutEffect(() => {
    const { current } = element
    if (!current) return
    const read = (): void => {
      const { width, height } = current.getBoundingClientRect()
      if (width > 0 && height > 0) setSize((before) => (before?.width === width && before.height === height ? before : { width, height }))
    }
    read()
    const observer = new ResizeObserver(read)
    observer.observe(current)
    return () => observer.disconnect()
  }, [element])
  return size
}

/** A context that has not come back by then [ms], or was lost this often, is not waited for. */
const patience = 4000
const mostLosses = 3

/** How many drawing contexts the canvas has had. What lived only on one of them is made anew for the next. */
function useLives(element: Readonly<{ current: HTMLCanvasElement | null }>, onLost: (isLost: boolean) => void): number {
  const [lives, setLives] = useState(1)
  useEffect(() => {
    const { current } = element
    if (!current) return
    let losses = 0
    let waiting = 0
    const lost = (event: Event): void => {
      event.preventDefault()
      losses++
      waiting = window.setTimeout(() => onLost(true), losses >= mostLosses ? 0 : patience)
    }
    const restored = (): void => {
      window.clearTimeout(waiting)
      onLost(false)
      setLives((before) => before + 1)
    }
    current.addEventListener('webglcontextlost', lost)
    current.addEventListener('webglcontextrestored', restored)
    return () => {
      window.clearTimeout(waiting)
      current.removeEventListener('webglcontextlost', lost)
      current.removeEventListener('webglcontextrestored', restored)
    }
  }, [element, onLost])
  return lives
}
