import { placedMesh } from '../../../core/geometry/placedMesh.ts'
import { rod } from '../../../core/geometry/placed.ts'
import type { Mesh } from '../../../core/model/solid.ts'
import type { PlacedZone, Zone } from '../../../core/model/zone.ts'

/** A mesh of which each vertex goes up by its `share` (0..1) of the lift. */
export type Bent = Readonly<{ mesh: Mesh; share: Float32Array }>

const pieces = 28

/** Where plates hold the bolts, along x [m]: middles of upright plates; none for a bar in concrete. */
const heldBy = (zones: readonly Zone[]): number[] =>
  zones.flatMap((zone) =>
    zone.id === 'bracket-plates' && zone.build === 'placed'
      ? zone.solids.flatMap((solid) => (solid.kind === 'box' ? [solid.centre[0]] : []))
      : [],
  )

/**
 * Rods through the post along x, in short pieces. In the post they rise with it; where concrete or a plate holds them they stay; in
 * between they slant. `postHalf` [m]: from the axis to the post's faces.
 */
export function bentRods(zone: PlacedZone, zones: readonly Zone[], postHalf: number): Bent {
  const plates = zone.id === 'bolts' ? heldBy(zones) : []
  const slices = zone.solids.flatMap((solid) => {
    if (solid.kind !== 'rod') return [solid]
    const { from, to, radius } = solid
    const at = (i: number) => {
      const t = i / pieces
      return [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t, from[2] + (to[2] - from[2]) * t] as const
    }
    return Array.from({ length: pieces }, (_, i) => rod(at(i), at(i + 1), radius))
  })
  const mesh = placedMesh(slices)
  const radius = Math.max(...zone.solids.map((solid) => (solid.kind === 'rod' ? solid.radius : 0)))
  const shareAt = (x: number): number => {
    const away = Math.abs(x)
    const slant =
      plates.length > 0
        ? Math.min(...plates.map((plate) => Math.abs(x - plate))) / (0.5 * postHalf)
        : (postHalf + 9 * radius - away) / (10 * radius)
    return Math.min(1, Math.max(0, slant))
  }
  const share = new Float32Array(mesh.positions.length / 3)
  for (let i = 0; i < share.length; i++)
    share[i] = plates.length > 0 && Math.abs(mesh.positions[3 * i] ?? 0) > postHalf ? 0 : shareAt(mesh.positions[3 * i] ?? 0)
  return { mesh, share }
}
