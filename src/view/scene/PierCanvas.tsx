import { Canvas, useFrame, useThree } from '@react-three/fiber'
import { useEffect, useRef } from 'react'
import { NeutralToneMapping, type PerspectiveCamera, type WebGLRenderer } from 'three'
import type { ViewSettings } from '../../state/appState.ts'
import { offerRenderer, type RendererInfo } from '../app/probe.ts'
import { pierStore } from '../../state/store.ts'
import { fieldOfView } from './camera/lens.ts'
import { Director } from './Director.ts'

type Props = Readonly<{ quality: ViewSettings['quality']; onDirector: (director: Director | null) => void }>

/** The one canvas. It draws when asked, never when the tab is hidden. */
export function PierCanvas({ quality, onDirector }: Props) {
  const isFull = quality === 'full'
  return (
    <Canvas
      key={quality}
      frameloop='demand'
      shadows={isFull ? 'percentage' : false}
      dpr={isFull ? [1, 2] : 1}
      gl={{ antialias: isFull, toneMapping: NeutralToneMapping, powerPreference: 'high-performance' }}
      camera={{ fov: (fieldOfView * 180) / Math.PI, near: 0.05, far: 60, position: [0, 0, 8] }}
      resize={{ debounce: 0 }}
    >
      <Direction onDirector={onDirector} />
    </Canvas>
  )
}

function Direction({ onDirector }: Pick<Props, 'onDirector'>) {
  const renderer = useThree((state) => state.gl)
  const scene = useThree((state) => state.scene)
  const camera = useThree((state) => state.camera) as PerspectiveCamera
  const needFrame = useThree((state) => state.invalidate)
  const width = useThree((state) => state.size.width)
  const height = useThree((state) => state.size.height)
  const director = useRef<Director | null>(null)
  const frames = useRef(0)

  useEffect(() => {
    const made = new Director({ renderer, scene, camera, element: renderer.domElement, needFrame: () => needFrame() }, pierStore)
    director.current = made
    onDirector(made)
    return () => {
      onDirector(null)
      director.current = null
      made.dispose()
    }
  }, [renderer, scene, camera, needFrame, onDirector])

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
