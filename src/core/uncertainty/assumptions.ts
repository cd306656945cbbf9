import type { Standing } from '../model/worked.ts'
import { toSI } from '../units/factors.ts'
import type { Spread } from './distributions.ts'
import type { InputId } from './inputs.ts'

/**
 * What is assumed about one figure: how it spreads, or that it stays as entered. A spread of an input that is added to is in SI; one of an
 * input that is multiplied is a share. All of them are set here, none was measured: 'assumed here', and the reader may change each.
 */
export type Assumption = Readonly<{
  id: InputId
  varies: boolean
  spread: Spread
  /** Key into the text table: why this spread. */
  why: string
  standing: Standing
}>

const inch = (value: number) => toSI(value, 'in')
const degrees = (value: number) => toSI(value, 'deg')

const normal = (middle: number, sd: number, low: number, high: number): Spread => ({ kind: 'normal', middle, sd, low, high })
const lognormal = (cov: number, low: number, high: number): Spread => ({ kind: 'lognormal', middle: 1, cov, low, high })
const triangular = (low: number, peak: number, high: number): Spread => ({ kind: 'triangular', low, peak, high })
const assumed = (id: InputId, spread: Spread): Assumption => ({ id, varies: true, spread, why: id, standing: 'assumed here' })

/** Ranges to start from. Source: assumption, every row. */
export const startingAssumptions: readonly Assumption[] = [
  assumed('friction-angle', normal(0, degrees(3), degrees(-6), degrees(6))),
  assumed('clay-strength', lognormal(0.3, 0.4, 2.2)),
  assumed('user-friction', lognormal(0.25, 0.5, 1.8)),
  assumed('blow-count', lognormal(0.3, 0.4, 2.2)),
  assumed('soil-weight', normal(1, 0.05, 0.88, 1.12)),
  assumed('water-table', triangular(inch(-12), 0, inch(12))),
  assumed('hole-diameter', triangular(inch(-0.5), 0, inch(1))),
  assumed('bell-diameter', triangular(inch(-3), 0, inch(1))),
  assumed('hole-depth', triangular(inch(-3), 0, inch(2))),
  assumed('fill-height', triangular(inch(-2), 0, inch(2))),
  assumed('bar-height', triangular(inch(-1), 0, inch(1))),
  assumed('bar-off-middle', triangular(0, 0, inch(1))),
  assumed('bracket-embedment', triangular(inch(-1), 0, inch(0.5))),
  assumed('concrete-strength', lognormal(0.18, 0.5, 1.6)),
  assumed('concrete-weight', normal(1, 0.02, 0.95, 1.05)),
  assumed('wood-gravity', normal(1, 0.1, 0.75, 1.25)),
]
