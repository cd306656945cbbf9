import { useEffect, useRef } from 'react'

/** A formula set as mathematics. The setter is fetched when the first formula is asked for; until then its source is shown. */
export const Formula = ({ tex, block = false }: { tex: string; block?: boolean }) => {
  const node = useRef<HTMLSpanElement>(null)
  useEffect(() => {
    let dropped = false
    void import('./mathSetter.ts').then(({ setMath }) => {
      if (!dropped && node.current) setMath(tex, node.current, block)
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
