import { box, type ConvexSolid, rod } from '../../geometry/placed.ts'
import { count, force, length } from '../../fields/makers.ts'
import type { ValuesOf } from '../../fields/node.ts'
import type { BracketPart, BracketSite } from '../../model/kind.ts'

/** Sizes that every bracket of plates has, with its own bolts and its own depth in the concrete to start from. */
export const plateSizes = ({ bolt = '0.625 in', embedment }: Readonly<{ bolt?: string; embedment: string }>) => ({
  plateThickness: length({ from: '0.125 in', to: '0.75 in', step: '0.0625 in', link: 'bp', silent: '0.25 in' }),
  boltDiameter: length({ from: '0.5 in', to: '1 in', step: '0.125 in', link: 'bb', silent: '0.625 in', start: bolt }),
  boltCount: count({ from: 1, to: 4, link: 'bc', silent: 2 }),
  /** Steel below the top of the concrete. */
  embedment: length({ from: '4 in', to: '48 in', link: 'be', silent: '12 in', start: embedment }),
  /** Allowable uplift from the bracket's own evaluation report, as the user enters it; null when there is none. */
  rating: force({ from: '1 lb', to: '40000 lb', link: 'br', silent: null }),
})
export type BracketSizes = ValuesOf<ReturnType<typeof plateSizes>>

/** Level of the post's end [m], and half the steel along the post's depth [m]. */
export const footOf = (site: BracketSite): number => site.landing + site.standOff
export const halfAlong = (site: BracketSite): number => 0.42 * site.postDepth

/**
 * Bolts in one row up the middle of the post, through it along x: the first 7 diameters above the post's end, the others 4
 * diameters apart, the distances for full value. Source: nds-2018-12-5.
 */
export const firstBoltAbove = (bracket: BracketSizes): number => 7 * bracket.boltDiameter
export const boltSpacing = (bracket: BracketSizes): number => 4 * bracket.boltDiameter

/** Height of steel above the post's end that holds the row with 2 diameters to spare [m]. */
export const plateHeight = (bracket: BracketSizes): number =>
  firstBoltAbove(bracket) + (bracket.boltCount - 1) * boltSpacing(bracket) + 2 * bracket.boltDiameter

/** The bolts, each `reach` [m] long to either side of the axis. */
export function boltRow(bracket: BracketSizes, site: BracketSite, reach: number): ConvexSolid[] {
  const foot = footOf(site)
  return Array.from({ length: bracket.boltCount }, (_, i) => {
    const y = foot + firstBoltAbove(bracket) + i * boltSpacing(bracket)
    return rod([-reach, y, 0], [reach, y, 0], bracket.boltDiameter / 2)
  })
}

/** Hexagon heads and nuts are drawn as short thick rods at both ends of each bolt. */
function boltEnds(bracket: BracketSizes, site: BracketSite, face: number): ConvexSolid[] {
  const foot = footOf(site)
  const thick = 0.6 * bracket.boltDiameter
  return Array.from({ length: bracket.boltCount }, (_, i) => {
    const y = foot + firstBoltAbove(bracket) + i * boltSpacing(bracket)
    return [
      rod([face, y, 0], [face + thick, y, 0], 0.85 * bracket.boltDiameter),
      rod([-face - thick, y, 0], [-face, y, 0], 0.85 * bracket.boltDiameter),
    ]
  }).flat()
}

/** The plate that the post stands on. */
export const seatPlate = ({ plateThickness: t }: BracketSizes, site: BracketSite): BracketPart['solids'][number] =>
  box([0, footOf(site) - t / 2, 0], [site.postWidth / 2 + t, t / 2, halfAlong(site)])

/** A plate up each side of the post, and the bolts through both. */
export function sidePlateParts(bracket: BracketSizes, site: BracketSite): BracketPart[] {
  const t = bracket.plateThickness
  const rise = plateHeight(bracket)
  const outside = site.postWidth / 2 + t
  const plate = (sign: number) => box([sign * (site.postWidth / 2 + t / 2), footOf(site) + rise / 2, 0], [t / 2, rise / 2, halfAlong(site)])
  return [
    { id: 'bracket-plates', label: 'side-plates', role: 'steel', solids: [plate(-1), plate(1)] },
    { id: 'bolts', label: 'bolts', role: 'steel', solids: [...boltRow(bracket, site, outside), ...boltEnds(bracket, site, outside)] },
  ]
}
