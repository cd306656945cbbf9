import type { PierResult } from '../../../core/model/result.ts'
import type { Role } from '../../../core/model/solid.ts'
import type { Check } from '../../../core/model/worked.ts'
import { chainView } from './chainView.ts'

/** What holds by its soil, not by itself. */
const ground: ReadonlySet<Role> = new Set(['topsoil', 'soil', 'soil-lower', 'backfill', 'granular', 'gravel', 'mulch'])
const steel: ReadonlySet<Role> = new Set(['bar', 'steel'])

/**
 * The link that a part of the picture belongs to, by the id of its check: of the links that name the part, the one that names it
 * first, the least of those. Ground belongs to the link into the ground, steel without a link of its own to the connection.
 * Null for a part that is not there.
 */
export function linkOfPart(result: PierResult, part: string): string | null {
  const zone = result.zones.find((one) => one.id === part)
  if (!zone) return null
  const { groups } = chainView(result)
  const needed = (...wanted: readonly Check['group'][]) =>
    groups.filter(({ group }) => wanted.includes(group)).flatMap(({ links }) => links.filter((link) => link.place === 'needed'))
  const least = (links: ReturnType<typeof needed>): string | null =>
    [...links].sort((a, b) => (a.holds ?? Number.POSITIVE_INFINITY) - (b.holds ?? Number.POSITIVE_INFINITY))[0]?.check.id ?? null
  const intoGround = () => least(needed('uplift-soil'))
  if (ground.has(zone.role)) return intoGround()
  const own = needed('uplift-post', 'uplift-connection', 'uplift-concrete').filter(({ check }) => check.where.includes(part))
  const first = own.filter(({ check }) => check.where[0] === part)
  const found = least(first) ?? least(own)
  if (found !== null) return found
  return steel.has(zone.role) ? least(needed('uplift-connection')) : intoGround()
}
