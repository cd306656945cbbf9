import type { PostSide, WetStretch } from '../../model/moistureResult.ts'
import { type Metres, metres } from '../../units/quantity.ts'
import type { FacePiece, WoodFace } from './woodFace.ts'

export const postSides = ['uphill', 'axis', 'downhill'] as const satisfies readonly PostSide[]

const stretchOf = (side: PostSide, { from, to, touch, ground, verdict }: FacePiece): WetStretch => ({
  side,
  from: metres(from),
  to: metres(to),
  touch,
  ground: ground.wetness,
  groundReason: ground.reason,
  wetness: verdict.wetness,
  oxygen: verdict.oxygen,
  waterAndAir: verdict.waterAndAir,
  reason: verdict.reason,
  sources: [...new Set([...verdict.sources, ...ground.sources])],
  standing: verdict.standing,
})

const alike = (a: WetStretch, b: WetStretch): boolean =>
  a.touch === b.touch && a.wetness === b.wetness && a.reason === b.reason && a.ground === b.ground && a.groundReason === b.groundReason

/** Stretches of one side, top down; neighbours that are alike in everything are one. */
export function sideProfile(side: PostSide, face: WoodFace): WetStretch[] {
  const stretches: WetStretch[] = []
  for (const piece of [...face.pieces].reverse()) {
    const next = stretchOf(side, piece)
    const last = stretches.at(-1)
    if (last && alike(last, next)) stretches[stretches.length - 1] = { ...last, from: next.from }
    else stretches.push(next)
  }
  return stretches
}

/** Longest stretch without a break, on any side, that has water and air together [m]. */
export function longestWetAndAiry(profile: readonly WetStretch[]): Metres {
  let longest = 0
  let run: WetStretch | null = null
  let top = 0
  for (const stretch of profile) {
    if (!stretch.waterAndAir) run = null
    else {
      if (run === null || run.side !== stretch.side) top = stretch.to
      run = stretch
      longest = Math.max(longest, top - stretch.from)
    }
  }
  return metres(longest)
}
