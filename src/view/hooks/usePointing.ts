import { type FocusEvent, type PointerEvent, useMemo } from 'react'
import { pointAt } from '../../state/actions/view.ts'
import { pierStore } from '../../state/store.ts'
import { usePier } from './usePier.ts'

/**
 * Ties a row to the part of the picture that it is about first: hovering, focusing or touching the row marks that part, and the
 * row is lit while the part is marked, whoever marked it. `keep`: the part stays marked when the pointer leaves, as long as nothing
 * else is marked.
 */
export const usePointing = (parts: readonly string[], keep = false) => {
  const first = parts[0] ?? null
  const lit = usePier((state) => first !== null && state.view.pointedAt === first)
  const handlers = useMemo(() => {
    const point = () => first !== null && pointAt(pierStore, first)
    const leave = () => {
      if (!keep && first !== null && pierStore.getState().view.pointedAt === first) pointAt(pierStore, null)
    }
    return {
      onPointerEnter: (event: PointerEvent) => event.pointerType === 'mouse' && point(),
      onPointerLeave: (event: PointerEvent) => event.pointerType === 'mouse' && leave(),
      onPointerDown: point,
      onFocus: point,
      onBlur: (event: FocusEvent) => !event.currentTarget.contains(event.relatedTarget) && leave(),
    }
  }, [first, keep])
  return { ...handlers, 'data-lit': lit || undefined }
}
