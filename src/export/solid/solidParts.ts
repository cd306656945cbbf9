import { cutMeshes } from '../../core/geometry/cutMeshes.ts'
import { type ConvexSolid, placedRings } from '../../core/geometry/placed.ts'
import type { Cut, Role } from '../../core/model/solid.ts'
import type { Zone } from '../../core/model/zone.ts'
import { radians } from '../../core/units/quantity.ts'
import { type PlainMesh, welded } from './plainMesh.ts'

/** What a model of the pier is made of: what was placed in the hole to stay, steel, and wood. Ground and loose stone are no part of it. */
const share: Readonly<Record<Role, 'ground' | 'fill' | 'steel' | 'wood'>> = {
  topsoil: 'ground',
  soil: 'ground',
  'soil-lower': 'ground',
  backfill: 'ground',
  gravel: 'ground',
  mulch: 'ground',
  granular: 'fill',
  'dry-mix': 'fill',
  concrete: 'fill',
  'flowable-fill': 'fill',
  bar: 'steel',
  steel: 'steel',
  wood: 'wood',
}

export type SolidShare = 'fill' | 'steel' | 'wood'
/** One closed body of the pier, in metres, y up. Steel lies inside the others until it is taken off them. */
export type SolidPart = Readonly<{ id: string; role: Role; share: SolidShare; mesh: PlainMesh }>

/** A cylinder of 256 sides lacks 0.01 % of its volume, one of 96 sides 0.07 %. */
const segments = 256
const rodSides = 96
const whole: Cut = { open: radians(0), facing: radians(0) }

/** The pier's bodies, uncut, each closed. Convex parts come one by one. */
export function solidParts(zones: readonly Zone[]): SolidPart[] {
  const standing = zones.flatMap((zone) => {
    const kind = share[zone.role]
    return kind === 'ground' ? [] : [{ zone, kind }]
  })
  const meshes = cutMeshes(
    standing.map(({ zone }) => zone),
    whole,
    { segments, cutPost: true },
  )
  return standing.flatMap(({ zone, kind }): SolidPart[] => {
    const part = { id: zone.id, role: zone.role, share: kind }
    if (zone.build === 'placed') return zone.solids.map((solid) => ({ ...part, mesh: convexMesh(solid) }))
    const mesh = meshes.get(zone.id)
    return mesh ? [{ ...part, mesh: welded(mesh) }] : []
  })
}

/** A rod or box as a closed mesh: its two rings joined, each end a fan. */
function convexMesh(solid: ConvexSolid): PlainMesh {
  const { from, to } = placedRings(solid, rodSides)
  const n = from.length
  const indices: number[] = []
  for (let i = 0; i < n; i++) {
    const j = (i + 1) % n
    indices.push(i, j, n + j, i, n + j, n + i)
    if (i > 1) indices.push(0, i, i - 1, n, n + i - 1, n + i)
  }
  return { positions: Float32Array.from([...from, ...to].flat()), indices: Uint32Array.from(indices) }
}
