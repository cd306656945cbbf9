import { useCallback, useEffect, useRef, useState } from 'react'
import { setPull } from '../../../state/actions/view.ts'
import { pierStore } from '../../../state/store.ts'

/** From nothing to where it lets go [ms]. */
const wholeRun = 7000

/** Longest time that one frame stands for [ms]: a page that was held up goes on from where it stood, and skips nothing. */
const longestStep = 250

export const wantsStill = (): boolean => typeof matchMedia === 'function' && matchMedia('(prefers-reduced-motion: reduce)').matches

/**
 * Lets the pull run by itself up to `end` [N], from where it stands, at an even pace; from nothing once it has got there. Where motion is
 * not wanted it goes to the end at once.
 */
export const usePulling = (end: number | null) => {
  const [isRunning, setRunning] = useState(false)
  const frame = useRef(0)
  const stop = useCallback(() => {
    cancelAnimationFrame(frame.current)
    setRunning(false)
  }, [])
  // A run belongs to one pier: it stops when what the pier holds has changed, and with the page.
  // biome-ignore lint/correctness/useExhaustiveDependencies: stops exactly when the end moves
  useEffect(() => stop, [stop, end])
  const run = () => {
    if (end === null) return
    if (wantsStill()) {
      setPull(pierStore, end)
      return
    }
    const now = pierStore.getState().view.pull ?? 0
    const from = now >= end ? 0 : now
    let last: number | null = null
    let gone = 0
    setRunning(true)
    const step = (time: number): void => {
      gone += Math.min(longestStep, time - (last ?? time))
      last = time
      const pull = Math.min(end, from + (end * gone) / wholeRun)
      setPull(pierStore, pull)
      if (pull < end) frame.current = requestAnimationFrame(step)
      else setRunning(false)
    }
    frame.current = requestAnimationFrame(step)
  }
  return { isRunning, run, stop }
}
