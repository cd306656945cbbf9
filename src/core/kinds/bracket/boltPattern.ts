import { rod } from '../../geometry/placed.ts'
import type { ConvexSolid } from '../../geometry/placed.ts'
import type { Bracket } from '../../model/spec.ts'
import type { BracketSite } from '../../model/kind.ts'

/**
 * Bolts in one row up the middle of the post, through it along x: the first 7 diameters above the post's end, the others 4
 * diameters apart, the distances for full value. Source: nds-2018-12-5.
 */
export const firstBoltAbove = (bracket: Bracket): number => 7 * bracket.boltDiameter
export const boltSpacing = (bracket: Bracket): number => 4 * bracket.boltDiameter

/** Height of steel above the post's end that holds the row with 2 diameters to spare [m]. */
export const plateHeight = (bracket: Bracket): number =>
  firstBoltAbove(bracket) + (bracket.boltCount - 1) * boltSpacing(bracket) + 2 * bracket.boltDiameter

/** The bolts, each `reach` [m] long to either side of the axis. */
export function boltRow(bracket: Bracket, site: BracketSite, reach: number): ConvexSolid[] {
  const foot = site.landing + site.standOff
  return Array.from({ length: bracket.boltCount }, (_, i) => {
    const y = foot + firstBoltAbove(bracket) + i * boltSpacing(bracket)
    return rod([-reach, y, 0], [reach, y, 0], bracket.boltDiameter / 2)
  })
}

/** Hexagon heads and nuts are drawn as short thick rods at both ends of each bolt. */
export function boltEnds(bracket: Bracket, site: BracketSite, face: number): ConvexSolid[] {
  const foot = site.landing + site.standOff
  const thick = 0.6 * bracket.boltDiameter
  return Array.from({ length: bracket.boltCount }, (_, i) => {
    const y = foot + firstBoltAbove(bracket) + i * boltSpacing(bracket)
    return [
      rod([face, y, 0], [face + thick, y, 0], 0.85 * bracket.boltDiameter),
      rod([-face - thick, y, 0], [-face, y, 0], 0.85 * bracket.boltDiameter),
    ]
  }).flat()
}
