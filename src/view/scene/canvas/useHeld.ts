import { useEffect, useRef } from 'react'

/**
 * Something that holds memory of the graphics card. It is made anew when `key` is another, with what was there before to write into or
 * to free, and freed when whoever asked for it goes.
 */
export function useHeld<K, T extends { dispose(): void }>(key: K, make: (before: T | null) => T): T {
  const held = useRef<Readonly<{ key: K; thing: T }> | null>(null)
  if (held.current === null || held.current.key !== key) held.current = { key, thing: make(held.current?.thing ?? null) }
  useEffect(() => () => held.current?.thing.dispose(), [])
  return held.current.thing
}
