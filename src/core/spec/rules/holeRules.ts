import type { PierSpec } from '../../model/spec.ts'
import { type Dimensions, leastLeft } from '../dimensions.ts'
import { error, exceeds, fallsShort, lengths, type Rule, warning, when } from './rule.ts'

const bellRules = ({ hole }: PierSpec, d: Dimensions) => {
  if (hole.bell === null) return []
  const { diameter, height } = hole.bell
  const room = hole.depth - leastLeft
  const belowGrade = hole.depth + d.gradeAt(d.radius) - leastLeft
  return [
    ...when(!exceeds(diameter, hole.diameter), () => error('bell-not-wider', 'hole.bell.diameter', lengths(diameter, hole.diameter))),
    ...when(exceeds(height, room), () => error('bell-too-high', 'hole.bell.height', lengths(height, room))),
    ...when(!exceeds(height, room) && exceeds(height, belowGrade), () =>
      error('grade-meets-bell', 'hole.bell.height', lengths(height, belowGrade)),
    ),
  ]
}

/**
 * The wider mouth must end above the bell, begin below grade, and stand at least three times as steep as the ground, or its edge
 * uphill would run far out of the hole.
 */
const flareRules = ({ hole, site }: PierSpec, d: Dimensions) => {
  if (hole.flare === null) return []
  const { diameter, depth } = hole.flare
  const deepest = hole.depth - (hole.bell?.height ?? 0) - leastLeft
  const shallowest = Math.max(-d.gradeAt(d.radius) + leastLeft, (3 * site.slope * (diameter - hole.diameter)) / 2)
  return [
    ...when(!exceeds(diameter, hole.diameter), () => error('flare-not-wider', 'hole.flare.diameter', lengths(diameter, hole.diameter))),
    ...when(exceeds(depth, deepest), () => error('flare-too-deep', 'hole.flare.depth', lengths(depth, deepest))),
    ...when(fallsShort(depth, shallowest), () => error('grade-meets-flare', 'hole.flare.depth', lengths(depth, shallowest))),
  ]
}

const baseRules = ({ hole }: PierSpec, d: Dimensions) => {
  const thickness = hole.base?.thickness ?? 0
  const most = hole.depth - leastLeft
  const least = thickness - d.gradeAt(d.wallAt(d.baseTop)) + leastLeft
  return [
    ...when(exceeds(thickness, most), () => error('base-too-thick', 'hole.base.thickness', lengths(thickness, most))),
    ...when(!exceeds(thickness, most) && fallsShort(hole.depth, least), () =>
      error('grade-meets-base', 'hole.depth', lengths(hole.depth, least)),
    ),
  ]
}

/** Bearing surface, the underside of concrete or pad, below grade at its own downhill edge against the frost depth. Source: ibc-1809-5. */
const frostRule = ({ hole, site }: PierSpec, d: Dimensions) => {
  const under = hole.base && hole.base.material !== 'concrete' ? hole.base.thickness : 0
  const bearing = hole.depth - under + d.gradeAt(d.wallAt(d.bottom + under))
  return when(fallsShort(bearing, site.frostDepth), () =>
    warning('frost-below-bearing', 'hole.depth', lengths(bearing, site.frostDepth, ['ibc-1809-5'])),
  )
}

export const holeRules: Rule = (spec, d) => [...bellRules(spec, d), ...flareRules(spec, d), ...baseRules(spec, d), ...frostRule(spec, d)]

/** Slopes from which the downhill depths matter, and from which slope rules of the code begin (1V:3H). */
const gentle = 0.1
const steep = 1 / 3

/** Widest place of a hole: two like it can't stand closer than that, centre to centre. */
const widest = ({ diameter, bell, flare }: PierSpec['hole']): number => Math.max(diameter, bell?.diameter ?? 0, flare?.diameter ?? 0)

export const siteRules: Rule = ({ site, hole, spacing }) => [
  ...when(spacing !== null && fallsShort(spacing, widest(hole)), () =>
    error('holes-run-together', 'spacing', lengths(spacing ?? 0, widest(hole))),
  ),
  ...when(site.lower !== null && !exceeds(site.lower.from, site.topsoil), () =>
    error('layers-out-of-order', 'site.lower.from', lengths(site.lower?.from ?? 0, site.topsoil)),
  ),
  ...when(!fallsShort(site.topsoil, hole.depth), () => warning('topsoil-to-the-bottom', 'site.topsoil', lengths(site.topsoil, hole.depth))),
  ...when(exceeds(site.slope, gentle) && !exceeds(site.slope, steep), () =>
    warning('slope-uses-downhill-depth', 'site.slope', { got: site.slope, limit: gentle, quantity: 'slope', sources: ['ep486-scope'] }),
  ),
  ...when(exceeds(site.slope, steep), () =>
    warning('slope-needs-engineer', 'site.slope', { got: site.slope, limit: steep, quantity: 'slope', sources: ['ibc-1808-7'] }),
  ),
]
