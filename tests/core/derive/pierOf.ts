import { expect } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import type { PierResult } from '../../../src/core/model/result.ts'
import type { EnteredLoads, PierSpec } from '../../../src/core/model/spec.ts'
import type { Check, Worked } from '../../../src/core/model/worked.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { fromSI, toSI, type UnitId } from '../../../src/core/units/factors.ts'
import { metres, newtons, slope } from '../../../src/core/units/quantity.ts'

export const inch = (value: number) => metres(toSI(value, 'in'))
export const foot = (value: number) => metres(toSI(value, 'ft'))
export const pound = (value: number) => newtons(toSI(value, 'lb'))

/** A 24 in hole in level sand of the table, no topsoil and no frost, filled with mixed concrete: what hand sheets start from. */
export const plainPier: PierSpec = {
  ...defaultSpec,
  site: { ...defaultSpec.site, slope: slope(0), topsoil: metres(0), frostDepth: metres(0) },
  hole: { ...defaultSpec.hole, diameter: inch(24), depth: foot(5) },
}

/** Loads of an open shed of our own, all of them given. */
export const someLoads: EnteredLoads = { uplift: pound(800), gravity: pound(4000), lateral: pound(400), lateralHeight: foot(8) }
export const entered = (loads: Partial<EnteredLoads>): PierSpec['loads'] => ({
  entered: { ...someLoads, ...loads },
  estimate: null,
})

export const checkOf = (result: PierResult, id: string): Check =>
  result.checks.find((check) => check.id === id) ?? expect.fail(`no check "${id}" among ${result.checks.map((one) => one.id).join(', ')}`)

export const stepOf = (check: Check, id: string): Worked =>
  [...check.worked, check.allowable, check.demand].find((one) => one?.id === id) ??
  expect.fail(`no step "${id}" in ${check.id}: ${check.worked.map((one) => one.id).join(', ')}`)

/** A step of a check of a pier, in a unit. */
export const figure = (spec: PierSpec, check: string, step: string, unit: UnitId): number =>
  fromSI(stepOf(checkOf(derivePier(spec), check), step).value, unit)
