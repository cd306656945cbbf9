import { useEffect, useRef } from 'react'

/** A formula set as mathematics. The setter is fetched when the first formula is asked for; until then its source is shown. */
export const Formula = ({ tex, block }: { tex: string; block?: boolean }) => {
  const node = useRef<HTMLSpanElement>(null)
  useEffect(() => {
    let dropped = false
    void import('katex').then(({ default: katex }) => {
      if (!dropped && node.current) katex.render(tex, node.current, { output: 'mathml', throwOnError: false, displayMode: block === true })
    })
    return () => {
      dropped = true
    }
  }, [tex, block])
  return (
    <span ref={node} className={block ? 'formula formula-block' : 'formula'}>
      {tex}
    </span>
  )
}
