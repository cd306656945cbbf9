import type { Cut, Mesh } from '../model/solid.ts'
import type { Zone } from '../model/zone.ts'
import { breakAngles } from './measure.ts'
import { placedMesh } from './placedMesh.ts'
import { type PlanAngles, planAngles } from './planAngles.ts'
import { sweptMesh } from './sweptMesh.ts'

export type MeshOptions = Readonly<{
  /** Uniform segments to the full turn. */
  segments: number
  /** False: the post stays whole where the cut runs through it. */
  cutPost: boolean
}>

const whole: Cut = { open: 0 as Cut['open'], facing: 0 as Cut['facing'] }

/** Angles at which any zone turns sharply or its surfaces change order; every zone gets them all, so that neighbours leave no crack. */
export const specialAngles = (zones: readonly Zone[]): number[] =>
  zones.flatMap((zone) => (zone.build === 'swept' ? breakAngles(zone.corners, zone.breaks) : []))

/**
 * One mesh a zone, by zone id, cut open by `cut`. Placed parts stay whole; so does wood unless `cutPost`.
 * Time grows linearly with `segments`.
 */
export function cutMeshes(zones: readonly Zone[], cut: Cut, options: MeshOptions): ReadonlyMap<string, Mesh> {
  const special = specialAngles(zones)
  const opened = planAngles(special, cut, options.segments)
  let uncut: PlanAngles | null = null
  const meshes = new Map<string, Mesh>()
  for (const zone of zones) {
    if (zone.build === 'placed') {
      meshes.set(zone.id, placedMesh(zone.solids))
      continue
    }
    const staysWhole = zone.role === 'wood' && !options.cutPost
    if (staysWhole) uncut ??= planAngles([...special, cut.facing + cut.open / 2, cut.facing - cut.open / 2], whole, options.segments)
    meshes.set(zone.id, sweptMesh(zone.corners, staysWhole && uncut ? uncut : opened))
  }
  return meshes
}
