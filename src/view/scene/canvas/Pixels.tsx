import { AdaptiveDpr } from '@react-three/drei/core/AdaptiveDpr'
import { PerformanceMonitor } from '@react-three/drei/core/PerformanceMonitor'
import { useThree } from '@react-three/fiber'
import { useEffect } from 'react'

/** Share of the screen's own pixels along each side that is drawn while frames come slowly. */
const coarse = 0.6
/** Frames a second: below the first a moving picture is slow. */
const slowBelow = 25
const quickFrom = 60

/** Pixels are given up only while something moves and frames come slowly; at rest all come back. */
export const Pixels = ({ isMoving }: Readonly<{ isMoving: boolean }>) => (
  <>
    <AdaptiveDpr />
    {isMoving && <FewerWhenSlow />}
  </>
)

function FewerWhenSlow() {
  const get = useThree((state) => state.get)
  const draw = (current: number): void => {
    const { performance, set, invalidate } = get()
    if (performance.current === current) return
    set({ performance: { ...performance, current } })
    invalidate()
  }
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when all has come to rest
  useEffect(() => () => draw(1), [])
  return <PerformanceMonitor iterations={2} ms={150} bounds={() => [slowBelow, quickFrom]} onDecline={() => draw(coarse)} />
}
