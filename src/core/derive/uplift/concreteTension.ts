import { level } from '../../geometry/surface.ts'
import { volumeBelow } from '../../geometry/volumeBelow.ts'
import type { Worked } from '../../model/worked.ts'
import type { Zone } from '../../model/zone.ts'
import { given } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { liftAt } from '../placedZones.ts'
import { weighing } from '../unitWeights.ts'
import { type ChainLink, chainLink } from './chainLink.ts'
import { barsAcross } from './barsAcross.ts'

/**
 * The pull through the mix just below the connection: all that hangs below that plane. Carried by vertical bars that are developed on both
 * sides of it, or by nothing that counts. Null where nothing is there to part.
 * @param zones of the pier, asked for only when the work is shown
 */
export function concreteTension(frame: PierFrame, plane: number, zones: () => readonly Zone[]): ChainLink | null {
  return across('concrete-tension', frame, plane, zones)
}

/** Level of the neck of a bell [m], signed; null without one below what pulls on the concrete. */
function neckLevel({ spec, profile, fillBottom }: PierFrame, pull: number): number | null {
  const top = spec.hole.bell && profile.bottom + spec.hole.bell.height
  return top !== null && top > fillBottom && top < pull - 1e-9 ? top : null
}

/** The same at the neck of a bell, where it would tear off: needed where the ground that it lifts is what is counted. */
export function bellNeck(frame: PierFrame, pull: number, zones: () => readonly Zone[]): ChainLink | null {
  const neck = neckLevel(frame, pull)
  return neck === null ? null : across('bell-neck', frame, neck, zones)
}

function across(id: 'concrete-tension' | 'bell-neck', frame: PierFrame, plane: number, zones: () => readonly Zone[]): ChainLink | null {
  const host = liftAt(frame, plane - 1e-9)
  if (host === null) return null
  const { counting, allowable, worked } = barsAcross(frame, plane)
  return chainLink({
    id,
    group: 'uplift-concrete',
    counting,
    allowable,
    show: () => ({
      where: [host, ...(worked.length > 0 ? ['vertical-bars'] : [])],
      worked: [given('parting-level', -plane, 'length', { formula: 'z_p' }), weightBelow(frame, zones(), host, plane), ...worked],
    }),
  })
}

/** Weight of the mix that hangs below the plane, at its full value. */
function weightBelow({ spec }: PierFrame, zones: readonly Zone[], id: string, plane: number): Worked {
  const host = zones.find((zone) => zone.id === id)
  if (host?.build !== 'swept') throw new Error(`weightBelow: no body "${id}"`)
  const volume = volumeBelow(host.corners, level(plane), host.breaks)
  const weight = weighing(host.role, spec)
  return {
    id: 'weight-below-plane',
    value: weight.moist * volume,
    quantity: 'weight',
    formula: String.raw`W_{below} = \gamma\,V_{below}`,
    inputs: [
      { symbol: String.raw`\gamma`, name: 'unitWeight', value: weight.moist, quantity: 'unitWeight' },
      { symbol: 'V_{below}', name: 'volume', value: volume, quantity: 'volume' },
    ],
    sources: [weight.source],
    standing: weight.standing,
  }
}
