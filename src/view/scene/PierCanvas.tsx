import { Canvas, useFrame, useThree } from '@react-three/fiber'
import { useEffect, useMemo, useRef } from 'react'
import { NeutralToneMapping, type WebGLRenderer } from 'three'
import type { ViewSettings } from '../../state/appState.ts'
import { offerParts, offerPull, offerRenderer, type RendererInfo } from '../app/probe.ts'
import { pierStore } from '../../state/store.ts'
import { PictureCamera } from './camera/PictureCamera.ts'
import { Director, prefersStill } from './Director.ts'

type Props = Readonly<{
  quality: ViewSettings['quality']
  onDirector: (director: Director | null) => void
  /** The drawing context is gone for good, or has come back after all. */
  onLost: (isLost: boolean) => void
}>

/** A context that has not come back by then [ms], or was lost this often, is not waited for. */
const patience = 4000
const mostLosses = 3

/** The one canvas. It draws when asked, never when the tab is hidden. */
export function PierCanvas({ quality, onDirector, onLost }: Props) {
  const isFull = quality === 'full'
  const camera = useMemo(() => new PictureCamera(), [])
  return (
    <Canvas
      key={quality}
      frameloop='demand'
      shadows={isFull ? 'percentage' : false}
      dpr={isFull ? [1, 2] : 1}
      gl={{ antialias: isFull, toneMapping: NeutralToneMapping, powerPreference: 'high-performance' }}
      camera={camera}
      resize={{ debounce: 0 }}
    >
      <Direction isFull={isFull} onDirector={onDirector} onLost={onLost} />
    </Canvas>
  )
}

function Direction({ isFull, onDirector, onLost }: Pick<Props, 'onDirector' | 'onLost'> & Readonly<{ isFull: boolean }>) {
  const renderer = useThree((state) => state.gl)
  const scene = useThree((state) => state.scene)
  const camera = useThree((state) => state.camera) as PictureCamera
  const needFrame = useThree((state) => state.invalidate)
  const setDpr = useThree((state) => state.setDpr)
  const width = useThree((state) => state.size.width)
  const height = useThree((state) => state.size.height)
  const director = useRef<Director | null>(null)
  const frames = useRef(0)

  useEffect(() => {
    const sharpest = renderer.getPixelRatio()
    const ground = {
      renderer,
      scene,
      camera,
      element: renderer.domElement,
      needFrame: () => {
        if (!document.hidden) needFrame()
      },
      setSharpness: (share: number) => setDpr(sharpest * share),
    }
    const made = new Director(ground, pierStore)
    made.setMotion(isFull && !prefersStill())
    director.current = made
    offerPull(() => made.readPull())
    offerParts(() => made.stage.targets().map(({ id }) => id))
    onDirector(made)
    const onVisible = () => ground.needFrame()
    document.addEventListener('visibilitychange', onVisible)
    return () => {
      document.removeEventListener('visibilitychange', onVisible)
      offerPull(null)
      offerParts(null)
      onDirector(null)
      director.current = null
      made.dispose()
    }
  }, [renderer, scene, camera, needFrame, setDpr, isFull, onDirector])

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

  useEffect(() => {
    if (width > 0 && height > 0) director.current?.setViewport({ width, height })
  }, [width, height])

  useFrame(() => {
    director.current?.frame()
    frames.current++
    if (frames.current === 2) offerRenderer(() => readRenderer(renderer, frames.current - 1))
  })
  useEffect(() => () => offerRenderer(null), [])
  return null
}

const readRenderer = ({ info }: WebGLRenderer, frames: number): RendererInfo => ({
  geometries: info.memory.geometries,
  textures: info.memory.textures,
  programs: info.programs?.length ?? 0,
  frames,
})
