import { useEffect, useRef } from 'react'

/** A formula that is wider than its column can be scrolled, so the keyboard must be able to reach it: only then. */
const reachIfWide = (node: HTMLElement): void => {
  if (node.scrollWidth > node.clientWidth + 1) node.tabIndex = 0
  else node.removeAttribute('tabindex')
}

/**
 * A formula set as mathematics. The setter is fetched when the first formula is asked for; until then its source is shown. `as`: a symbol
 * in a line of words, a line of numbers that wraps at its signs, or a formula that stands by itself.
 */
export const Formula = ({ tex, as = 'symbol' }: { tex: string; as?: 'symbol' | 'line' | 'block' }) => {
  const node = useRef<HTMLSpanElement>(null)
  useEffect(() => {
    let dropped = false
    const { current } = node
    const watch = as === 'symbol' || typeof ResizeObserver !== 'function' ? null : new ResizeObserver(() => current && reachIfWide(current))
    if (current) watch?.observe(current)
    void import('./mathSetter.ts').then(({ setMath }) => {
      if (dropped || !current) return
      setMath(tex, current, as === 'block')
      if (as !== 'symbol') reachIfWide(current)
    })
    return () => {
      dropped = true
      watch?.disconnect()
    }
  }, [tex, as])
  return (
    <span ref={node} className={`formula formula-${as}`}>
      {tex}
    </span>
  )
}
