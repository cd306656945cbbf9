import { type CoreVerdict, coreAcceptance } from '../engineering/concrete/cores.ts'
import { structuralMinimum } from '../engineering/tables/concrete.ts'
import { fillKind } from '../kinds/index.ts'
import type { Counting, FillCounting } from '../model/kind.ts'
import type { Role } from '../model/solid.ts'
import type { PierSpec } from '../model/spec.ts'

/** How three cores of the mix stand against the code's limits; null when none were taken. */
export function coresOf({ cores, strength }: PierSpec['concrete']): CoreVerdict | null {
  return cores && coreAcceptance({ cores: [cores.first, cores.second, cores.third], specified: strength })
}

/** What may be counted of a pier's fill: as its kind says, or as it says for a mix whose cores are not below the limits. */
export function countingOf({ fill, concrete }: PierSpec): FillCounting {
  const kind = fillKind(fill.kind)
  return kind.cored && coresOf(concrete)?.meets ? kind.cored : kind.counting
}

/** Whether a role carries as concrete does: mixed concrete, or dry mix that cores speak for. */
export const carriesAsConcrete = (role: Role, spec: PierSpec): boolean =>
  role === 'concrete' || (role === 'dry-mix' && countingOf(spec).strength.counted !== 'not counted')

const order = ['counted', "engineer's judgement", 'not counted'] as const

/** Of two, the one that counts for less; the first of two alike. */
export const lessCounted = (a: Counting, b: Counting): Counting => (order.indexOf(b.counted) > order.indexOf(a.counted) ? b : a)

const belowCode: Counting = { counted: 'not counted', why: 'concrete-below-code', sources: ['aci-318-19-19-2', 'nds-2018-table-12e'] }

/** How a number counts that rests on a method for structural concrete: not at all below the least strength that such methods are made for. */
export const inRangeOfCode = ({ concrete }: PierSpec, counting: Counting): Counting =>
  concrete.strength < structuralMinimum.value * (1 - 1e-9) ? belowCode : counting
