import { useEffect, useRef } from 'react'

type Hears = Readonly<{ [Kind in keyof WindowEventMap]?: (event: WindowEventMap[Kind]) => void }>

/**
 * Hears the window for as long as the part that asks stands.
 * @param hears what is done at each kind of event; the kinds stay the same
 * @param isFirst before whatever else hears it
 */
export const useWindow = (hears: Hears, isFirst = false): void => {
  const latest = useRef(hears)
  latest.current = hears
  useEffect(() => {
    const hear = (event: Event): void =>
      (latest.current[event.type as keyof WindowEventMap] as ((event: Event) => void) | undefined)?.(event)
    const kinds = Object.keys(latest.current)
    for (const kind of kinds) window.addEventListener(kind, hear, { capture: isFirst })
    return () => {
      for (const kind of kinds) window.removeEventListener(kind, hear, { capture: isFirst })
    }
  }, [isFirst])
}
