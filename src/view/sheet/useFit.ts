import { useEffect, useState } from 'react'

/** The wider paper, and what stands on both sides of it [px]. */
const paper = (215.9 * 96) / 25.4
const beside = 34

const shareNow = (): number => Math.min(1, Math.max(0.1, (document.documentElement.clientWidth - beside) / paper))

/** How much smaller a page has to be drawn to be seen over its whole width, and whether it is. */
export const useFit = () => {
  const [share, setShare] = useState(shareNow)
  const [isFitted, setFitted] = useState(true)
  useEffect(() => {
    const onResize = () => setShare(shareNow())
    window.addEventListener('resize', onResize)
    return () => window.removeEventListener('resize', onResize)
  }, [])
  return { share, isNarrow: share < 1, isFitted: isFitted && share < 1, toggle: () => setFitted((fitted) => !fitted) }
}
