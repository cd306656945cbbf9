import type { PierSpec } from '../../model/spec.ts'
import { exceeds, error, fallsShort, lengths, type Rule, warning, when } from './rule.ts'

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
