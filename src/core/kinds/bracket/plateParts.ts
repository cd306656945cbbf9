import { box } from '../../geometry/placed.ts'
import type { BracketPart, BracketSite } from '../../model/kind.ts'
import type { Bracket } from '../../model/spec.ts'
import { toSI } from '../../units/factors.ts'
import { metres } from '../../units/quantity.ts'
import { boltEnds, boltRow, plateHeight } from './boltPattern.ts'
import { bracketSizes } from './bracketFields.ts'

/** Level of the post's end [m], and half the steel along the post's depth [m]. */
export const footOf = (site: BracketSite): number => site.landing + site.standOff
export const halfAlong = (site: BracketSite): number => 0.42 * site.postDepth

/** The plate that the post stands on. */
export const seatPlate = ({ plateThickness: t }: Bracket, site: BracketSite): BracketPart['solids'][number] =>
  box([0, footOf(site) - t / 2, 0], [site.postWidth / 2 + t, t / 2, halfAlong(site)])

/** A plate up each side of the post, and the bolts through both. */
export function sidePlateParts(bracket: Bracket, site: BracketSite): BracketPart[] {
  const t = bracket.plateThickness
  const rise = plateHeight(bracket)
  const outside = site.postWidth / 2 + t
  const plate = (sign: number) => box([sign * (site.postWidth / 2 + t / 2), footOf(site) + rise / 2, 0], [t / 2, rise / 2, halfAlong(site)])
  return [
    { id: 'bracket-plates', label: 'side-plates', role: 'steel', solids: [plate(-1), plate(1)] },
    { id: 'bolts', label: 'bolts', role: 'steel', solids: [...boltRow(bracket, site, outside), ...boltEnds(bracket, site, outside)] },
  ]
}

/** What every bracket of plates starts from, with its own bolts and its own depth in the concrete [in]. */
export const plateBracket = <K extends Bracket['kind']>(
  kind: K,
  { bolt = 0.625, embedment }: Readonly<{ bolt?: number; embedment: number }>,
) => ({
  id: kind,
  fields: bracketSizes,
  defaults: {
    kind,
    plateThickness: metres(toSI(0.25, 'in')),
    boltDiameter: metres(toSI(bolt, 'in')),
    boltCount: 2,
    embedment: metres(toSI(embedment, 'in')),
    rating: null,
  },
})
