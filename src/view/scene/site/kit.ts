import { useEffect, useRef } from 'react'
import { Vector3 } from 'three'
import { createSharedUniforms, type SharedUniforms } from '../materials/sharedUniforms.ts'
import { createLineSet, type LineSet } from '../pier/lineSet.ts'

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

/** What all sites of one canvas share: lines, the size of a paper millimetre, the colour of what is pointed at. */
export type CanvasKit = Readonly<{ lines: LineSet; uPaperScale: { value: Vector3 }; dispose(): void }>

export function createCanvasKit(): CanvasKit {
  const lines = createLineSet()
  return {
    lines,
    uPaperScale: { value: new Vector3(0.004, 0.004, 0) },
    dispose: () => lines.dispose(),
  }
}

/** What the materials of one site share. */
export type SiteKit = Readonly<{ shared: SharedUniforms; lines: LineSet; dispose(): void }>

export function createSiteKit({ lines, uPaperScale }: CanvasKit): SiteKit {
  const shared = { ...createSharedUniforms(), uPaperScale }
  return { shared, lines, dispose: () => shared.uScatter.value.dispose() }
}
