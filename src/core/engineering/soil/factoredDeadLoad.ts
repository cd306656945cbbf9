import { type Newtons, newtons } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Share of dead load that may resist wind uplift in allowable stress design. Source: ibc-1605-3. */
export const deadLoadShare = cited(0.6, '1', 'ibc-1605-3', 'read')

type Inputs = Readonly<{ weight: Newtons; share: number }>

/**
 * Dead load that may be held against wind uplift in allowable stress design.
 * @param weight effective (buoyant) dead weight [N]
 * @param share load factor [1], 0.6 for the basic combination 0.6 D + 0.6 W
 * @returns resisting weight [N]
 * Formula: R = 0.6 D
 * Valid: basic ASD combinations. Outside: never with a further safety factor on the same weight.
 * Source: ibc-1605-3, asce-7-16-2
 * Checked by: tests/external/statics/check.test.ts
 */
export function factoredDeadLoad({ weight, share }: Inputs): Newtons {
  return newtons(share * weight)
}

/** Resisting dead load, with its work shown. */
export const workedFactoredDeadLoad = showing({
  id: 'factored-dead-load',
  quantity: 'force',
  formula: String.raw`R_D = 0.6\,D`,
  terms: { share: ['0.6', 'ratio'], weight: ['D', 'weight'] },
  sources: ['ibc-1605-3'],
  of: factoredDeadLoad,
})
