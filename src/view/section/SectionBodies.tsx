import { type RefObject, useLayoutEffect, useState } from 'react'
import type { SectionDrawing } from './drawSection.ts'
import { patternId } from './HatchPatterns.tsx'

type Props = Readonly<{ drawing: SectionDrawing; prefix: string; lit?: string | null; onEnter?: (zone: string) => void }>

/** What stands in the ground and the lines of the ground, without words. `prefix` is that of its hatch patterns. */
export const SectionBodies = ({ drawing, prefix, lit = null, onEnter }: Props) => (
  <>
    {drawing.bodies.map((body) => (
      <g key={body.key}>
        <path
          className={`section-zone role-${body.role}`}
          d={body.path}
          data-lit={body.zone === lit || undefined}
          onPointerEnter={onEnter && (() => onEnter(body.zone))}
        />
        {body.hatch !== 'none' && <path className='section-hatch' d={body.path} fill={`url(#${patternId(prefix, body.hatch)})`} />}
        <path className={`section-outline ${body.cut ? '' : 'outline-uncut'}`} d={body.outline} />
      </g>
    ))}
    {drawing.lines.map(({ style, path }) => (
      <path key={style} className={`section-outline outline-${style}`} d={path} />
    ))}
  </>
)

export type Size = Readonly<{ width: number; height: number }>

/** How large an element is [px], now and whenever that changes; null before it stands. */
export const useSize = (element: RefObject<HTMLElement | null>): Size | null => {
  const [size, setSize] = useState<Size | null>(null)
  useLayoutEffect(() => {
    const { current } = element
    if (!current) return
    const measure = () => setSize({ width: current.clientWidth, height: current.clientHeight })
    measure()
    const observer = new ResizeObserver(measure)
    observer.observe(current)
    return () => observer.disconnect()
  }, [element])
  return size
}
