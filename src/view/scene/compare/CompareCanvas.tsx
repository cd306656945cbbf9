import { Canvas, useFrame, useThree } from '@react-three/fiber'
import { type RefObject, useEffect, useMemo, useRef } from 'react'
import { NeutralToneMapping, type WebGLRenderer } from 'three'
import type { PierResult } from '../../../core/model/result.ts'
import { pierStore } from '../../../state/store.ts'
import { offerComparedPictures } from '../../app/comparedPictures.ts'
import { offerRenderer, type RendererInfo } from '../../app/probe.ts'
import { usePier } from '../../hooks/usePier.ts'
import { PictureCamera } from '../camera/PictureCamera.ts'
import { prefersStill } from '../Director.ts'
import { readTones } from '../readTones.ts'
import '../scene.css'
import { CompareDirector } from './CompareDirector.ts'
import { CompareInk } from './CompareInk.ts'

type Props = Readonly<{
  /** From left to right, in columns of one width; null for a pier that can't be built. */
  piers: readonly (PierResult | null)[]
  /** Year at which wet wood and the way of rain are shown; null: they are not. */
  year: number | null
  /** Changes with the colours of the page. */
  tone: string
  /** The drawing context is gone for good, or has come back after all. */
  onLost: (isLost: boolean) => void
}>

/** A context that has not come back by then [ms], or was lost this often, is not waited for. */
const patience = 4000
const mostLosses = 3

/** Several piers on one canvas. It draws when asked, never when the tab is hidden. */
export function CompareCanvas(props: Props) {
  const isFull = usePier((state) => state.view.quality === 'full')
  const camera = useMemo(() => new PictureCamera(), [])
  const holder = useRef<HTMLDivElement>(null)
  return (
    <>
      <Canvas
        frameloop='demand'
        shadows={isFull ? 'percentage' : false}
        dpr={isFull ? [1, 2] : 1}
        gl={{ antialias: isFull, toneMapping: NeutralToneMapping, powerPreference: 'high-performance' }}
        camera={camera}
        resize={{ debounce: 0, scroll: false }}
      >
        <Direction isFull={isFull} holder={holder} {...props} />
      </Canvas>
      <div className='overlay' aria-hidden='true' ref={holder} />
    </>
  )
}

function Direction({
  piers,
  year,
  tone,
  onLost,
  isFull,
  holder,
}: Props & Readonly<{ isFull: boolean; holder: RefObject<HTMLDivElement | null> }>) {
  const renderer = useThree((state) => state.gl)
  const camera = useThree((state) => state.camera) as PictureCamera
  const needFrame = useThree((state) => state.invalidate)
  const setDpr = useThree((state) => state.setDpr)
  const width = useThree((state) => state.size.width)
  const height = useThree((state) => state.size.height)
  const director = useRef<CompareDirector | null>(null)
  const frames = useRef(0)

  useEffect(() => {
    const sharpest = renderer.getPixelRatio()
    const draw = () => {
      if (!document.hidden) needFrame()
    }
    const made = new CompareDirector(
      { renderer, camera, element: renderer.domElement, needFrame: draw, setSharpness: (share) => setDpr(sharpest * share) },
      pierStore,
      new CompareInk(holder.current ?? document.createElement('div')),
    )
    made.setMotion(isFull && !prefersStill())
    director.current = made
    offerComparedPictures(() => made.pictures())
    document.addEventListener('visibilitychange', draw)
    return () => {
      document.removeEventListener('visibilitychange', draw)
      director.current = null
      offerComparedPictures(null)
      made.dispose()
    }
  }, [renderer, camera, needFrame, setDpr, isFull, holder])

  useEffect(() => {
    const canvas = renderer.domElement
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
      director.current?.restore()
    }
    canvas.addEventListener('webglcontextlost', lost)
    canvas.addEventListener('webglcontextrestored', restored)
    return () => {
      window.clearTimeout(waiting)
      canvas.removeEventListener('webglcontextlost', lost)
      canvas.removeEventListener('webglcontextrestored', restored)
    }
  }, [renderer, onLost])

  // biome-ignore lint/correctness/useExhaustiveDependencies: a tone names colours that are read off the page
  useEffect(() => director.current?.setTones(readTones()), [tone])
  useEffect(() => director.current?.setPiers(piers), [piers])
  useEffect(() => director.current?.setYear(year), [year])
  useEffect(() => {
    if (width > 0 && height > 0) director.current?.setSize({ width, height })
  }, [width, height])

  useFrame(() => {
    director.current?.frame()
    frames.current++
    if (frames.current === 2) offerRenderer(() => readRenderer(renderer, frames.current - 1))
  }, 1)
  useEffect(() => () => offerRenderer(null), [])
  return null
}

const readRenderer = ({ info }: WebGLRenderer, frames: number): RendererInfo => ({
  geometries: info.memory.geometries,
  textures: info.memory.textures,
  programs: info.programs?.length ?? 0,
  frames,
})
