import { type Corner, corner, type Edge } from './corner.ts'
import { circle, type Radial, radiusRange } from './radial.ts'
import type { Surface } from './surface.ts'

/** Where a corner stands against a surface as it turns: never above it, never below it, or now one and now the other. */
type Side = 'below' | 'above' | 'turning'

function sideOf(at: Radial, y: Surface, surface: Surface): Side {
  const range = radiusRange(at)
  if (range === null) return 'turning'
  const [near, far] = range
  const gx = Math.abs(y.gx - surface.gx)
  const gz = Math.abs(y.gz - surface.gz)
  const swing = at.kind === 'rectangle' ? gx * at.hx + gz * at.hz : gx === 0 && gz === 0 ? 0 : far * Math.hypot(gx, gz)
  const rise = y.a - surface.a
  const [one, other] = [rise + (y.m - surface.m) * near, rise + (y.m - surface.m) * far]
  if (Math.max(one, other) + swing <= 0) return 'below'
  return Math.min(one, other) - swing >= 0 ? 'above' : 'turning'
}

const isLevel = (s: Surface): boolean => s.m === 0 && s.gx === 0 && s.gz === 0

/** The corner at which an edge that starts at `from` passes the surface; null where that is at no one radius. */
function passing(from: Corner, surface: Surface): Readonly<{ at: Radial; y: Surface }> | null {
  if (!('at' in from) || from.next === 'straight') return null
  if (from.next === 'upright') return { at: from.at, y: surface }
  const { a, m, gx, gz } = from.next
  if (m === 0 || gx !== 0 || gz !== 0 || !isLevel(surface)) return null
  return { at: circle((surface.a - a) / m), y: surface }
}

/**
 * The part of a swept body below a surface, as corners of its own: exact, and null where no corners can say it, because one
 * of them passes through the surface as it turns or an edge does so at a radius that changes. Empty when nothing is below.
 * @param corners [n], anticlockwise, as for `sweptVolume`
 */
export function cornersBelow(corners: readonly Corner[], surface: Surface): Corner[] | null {
  if (surface.flatWithin !== undefined) return null
  const sides: Side[] = []
  for (const one of corners) {
    if (!('at' in one)) return null
    const side = sideOf(one.at, one.y, surface)
    if (side === 'turning') return null
    sides.push(side)
  }
  if (!sides.includes('above')) return [...corners]
  if (!sides.includes('below')) return []
  const kept: Corner[] = []
  for (let i = 0; i < corners.length; i++) {
    const from = corners[i]
    if (!from || !('at' in from)) return null
    const isBelow = sides[i] === 'below'
    const changes = sides[(i + 1) % corners.length] !== sides[i]
    if (isBelow) kept.push(from)
    if (!changes) continue
    const at = passing(from, surface)
    if (!at) return null
    const next: Edge = isBelow ? surface : from.next
    kept.push(corner(at.at, at.y, next))
  }
  return kept
}
