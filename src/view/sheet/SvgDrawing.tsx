import { useLayoutEffect, useRef } from 'react'

/** A drawing that comes as the text of an SVG, as part of the page so that its words can be selected. */
export const SvgDrawing = ({ svg, className }: Readonly<{ svg: string; className?: string }>) => {
  const holder = useRef<HTMLDivElement>(null)
  useLayoutEffect(() => {
    const made = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement
    holder.current?.replaceChildren(document.importNode(made, true))
  }, [svg])
  return <div ref={holder} className={className} />
}
