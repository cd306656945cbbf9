import type { Cut } from '../model/solid.ts'

/** Plan angles that all zones of one picture share, with their directions. `closed` when nothing is cut out. */
export type PlanAngles = Readonly<{ theta: Float64Array; cos: Float64Array; sin: Float64Array; closed: boolean; widestStep: number }>

const turn = 2 * Math.PI
const mergeWithin = 1e-7
/** Below this an opening counts as none [rad]. */
const smallestOpening = 1e-6

export const isOpen = (cut: Cut): boolean => cut.open > smallestOpening

/**
 * Uniform angles at `segments` to the turn, plus every angle in `special` (post and block corners, angles where surfaces
 * change order), plus the two sides of the cut. Angles within 1e-7 rad are one; a special angle outlasts a uniform one.
 * Runs from the far side of the opening round to its near side; from 0 to a full turn when nothing is cut out.
 */
export function planAngles(special: readonly number[], cut: Cut, segments: number): PlanAngles {
  const opened = isOpen(cut)
  const start = opened ? cut.facing + cut.open / 2 : 0
  const kept = opened ? turn - cut.open : turn
  const offset = (angle: number) => {
    const t = (angle - start) % turn
    return t < 0 ? t + turn : t
  }
  const marks = special.map(offset).filter((t) => t > mergeWithin && t < kept - mergeWithin)
  marks.push(0, kept)
  marks.sort((p, q) => p - q)
  const step = turn / segments
  const first = Math.ceil(start / step)
  const uniform: number[] = []
  for (let k = first; k * step < start + kept; k++) uniform.push(k * step - start)
  const merged: number[] = []
  let u = 0
  for (const mark of marks) {
    while (u < uniform.length && (uniform[u] ?? 0) < mark - mergeWithin) {
      const t = uniform[u] ?? 0
      if (merged.length === 0 || t - (merged[merged.length - 1] ?? 0) > mergeWithin) merged.push(t)
      u++
    }
    if (merged.length === 0 || mark - (merged[merged.length - 1] ?? 0) > mergeWithin) merged.push(mark)
  }
  const theta = Float64Array.from(merged, (t) => start + t)
  const cos = theta.map(Math.cos)
  const sin = theta.map(Math.sin)
  if (!opened) {
    cos[cos.length - 1] = cos[0] ?? 1
    sin[sin.length - 1] = sin[0] ?? 0
  }
  let widestStep = 0
  for (let i = 1; i < merged.length; i++) widestStep = Math.max(widestStep, (merged[i] ?? 0) - (merged[i - 1] ?? 0))
  return { theta, cos, sin, closed: !opened, widestStep }
}
