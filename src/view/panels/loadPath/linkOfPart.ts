import { pullPath, holdsOf, isNeeded, linksOf } from '../../../core/derive/report/pullPath.ts'
import type { Fact, FactGroup } from '../../../core/model/fact.ts'
import type { PierResult } from '../../../core/model/result.ts'
import type { Role } from '../../../core/model/solid.ts'
import { factsAbout } from '../../../state/derived.ts'

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
  const needed = linksOf(pullPath(factsAbout(result))).filter(isNeeded)
  const of = (group: FactGroup): readonly Fact[] => needed.filter((link) => link.group === group)
  const most = (link: Fact): number => holdsOf(link) ?? Number.POSITIVE_INFINITY
  const least = (links: readonly Fact[]): string | null => [...links].sort((a, b) => most(a) - most(b))[0]?.id ?? null
  const intoGround = () => least(of('uplift-soil'))
  if (ground.has(zone.role)) return intoGround()
  const own = needed.filter(({ group, drawn }) => group !== 'uplift-soil' && drawn.includes(part))
  const found = least(own.filter(({ drawn }) => drawn[0] === part)) ?? least(own)
  if (found !== null) return found
  return steel.has(zone.role) ? least(of('uplift-connection')) : intoGround()
}
