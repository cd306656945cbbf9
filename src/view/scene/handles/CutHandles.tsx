import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react'
import { formatText } from '../../../core/units/format.ts'
import { radians } from '../../../core/units/quantity.ts'
import type { Cut } from '../../../core/model/solid.ts'
import { setCut, widestCut } from '../../../state/actions/view.ts'
import { pierStore } from '../../../state/store.ts'
import { wordsOf } from '../../../words/index.ts'
import { usePier } from '../../hooks/usePier.ts'
import type { Pixel } from '../../section/ink.ts'
import type { PictureLayer } from '../overlay/PictureLayer.ts'
import { draggedCut, type HandleId } from './handlePlaces.ts'

const degree = Math.PI / 180
const step = 5 * degree
const page = 30 * degree
const sliders: readonly HandleId[] = ['left', 'turn', 'right']

/** Writes the cut at most once a frame. */
function useCutWriter(): (cut: Cut) => void {
  const waiting = useRef<{ cut: Cut | null; frame: number }>({ cut: null, frame: 0 })
  useEffect(() => () => cancelAnimationFrame(waiting.current.frame), [])
  return (cut) => {
    const { current } = waiting
    const isFirst = current.cut === null
    current.cut = cut
    if (!isFirst) return
    current.frame = requestAnimationFrame(() => {
      const last = current.cut
      current.cut = null
      if (last) setCut(pierStore, last)
    })
  }
}

/** Three handles on the ground: the two sides of the cut, and its middle, which turns it. Each is a slider for the keyboard. */
export function CutHandles({ ground }: Readonly<{ ground: PictureLayer }>) {
  const words = wordsOf('scene')
  const cut = usePier((state) => state.view.cut)
  const write = useCutWriter()
  const drag = useRef<{ begun: Cut; last: Pixel; by: number } | null>(null)
  const at = (event: PointerEvent): Pixel => {
    const box = event.currentTarget.parentElement?.getBoundingClientRect()
    return [event.clientX - (box?.left ?? 0), event.clientY - (box?.top ?? 0)]
  }
  const down = (event: PointerEvent<HTMLElement>): void => {
    if (event.button !== 0) return
    event.currentTarget.setPointerCapture(event.pointerId)
    drag.current = { begun: cut, last: at(event), by: 0 }
    ground.hold(true)
  }
  const move = (event: PointerEvent<HTMLElement>, handle: HandleId): void => {
    const { current } = drag
    if (!current) return
    const here = at(event)
    current.by += ground.angleDragged(current.last, here, cut, handle)
    current.last = here
    write(draggedCut(current.begun, handle, current.by))
  }
  const up = (): void => {
    if (!drag.current) return
    drag.current = null
    ground.hold(false)
  }
  return sliders.map((handle) => {
    const degrees = handle === 'turn' ? cut.facing / degree : cut.open / degree
    return (
      <div
        key={handle}
        ref={(element) => ground.register(handle, element)}
        className='handle'
        role='slider'
        tabIndex={0}
        aria-label={words.handles[handle]}
        aria-valuemin={0}
        aria-valuemax={handle === 'turn' ? 360 : 300}
        aria-valuenow={Math.round(degrees)}
        aria-valuetext={words.handles[handle === 'turn' ? 'facing' : 'opened'](formatText(Math.round(degrees) * degree, 'angle', 'us'))}
        onPointerDown={down}
        onPointerMove={(event) => move(event, handle)}
        onPointerUp={up}
        onPointerCancel={up}
        onKeyDown={(event) => {
          const next = cutByKey(event, cut, handle)
          if (!next) return
          event.preventDefault()
          event.stopPropagation()
          setCut(pierStore, next)
        }}
      >
        <svg viewBox='-16 -16 32 32' aria-hidden='true'>
          <circle r='11' />
          <path d='M-6.5 0H6.5M-3.5 -3L-6.5 0L-3.5 3M3.5 -3L6.5 0L3.5 3' />
        </svg>
      </div>
    )
  })
}

/** Arrows by 5 degrees, with Shift by 1, pages by 30, ends with Home and End. */
function cutByKey({ key, shiftKey }: KeyboardEvent, cut: Cut, handle: HandleId): Cut | null {
  const one = shiftKey ? degree : step
  const steps: Readonly<Record<string, number>> = {
    ArrowRight: one,
    ArrowUp: one,
    ArrowLeft: -one,
    ArrowDown: -one,
    PageUp: page,
    PageDown: -page,
  }
  const by = steps[key]
  if (by !== undefined) return draggedCut(cut, handle, handle === 'right' ? -by : by)
  if (handle === 'turn') return key === 'Home' ? { ...cut, facing: radians(0) } : null
  const end = key === 'Home' ? -cut.open : key === 'End' ? widestCut - cut.open : null
  return end === null ? null : draggedCut(cut, handle, handle === 'right' ? -end : end)
}
