import { bags } from '../../engineering/tables/bags.ts'
import type { PierSpec } from '../../model/spec.ts'
import type { BagMass } from '../../model/timeResult.ts'
import { type Newtons, newtons } from '../../units/quantity.ts'

/** A count that is whole to nine digits is not rounded up further. */
const wholeBags = (bagsNeeded: number): number => Math.ceil(bagsNeeded - 1e-9)

/**
 * The mass balance of mix placed dry. Bags that a fill takes by number are all emptied; nothing is ordered beside them.
 * @param spec a valid spec
 * @param placed weight of the mix in one hole as it lies, loose [N]
 */
export function bagMass({ fill, concrete, piers }: PierSpec, placed: Newtons): BagMass {
  const isCounted = 'bags' in fill
  const bagSize = isCounted ? fill.bagSize : concrete.bagSize
  const bag = bags[bagSize].weight.value
  const extra = isCounted ? 0 : placed * concrete.waste
  const needed = (placed + extra) / bag
  const each = isCounted ? fill.bags : wholeBags(needed)
  const ordered = each * bag
  return {
    bagSize,
    bag,
    placed,
    extra: newtons(extra),
    left: newtons(Math.max(0, ordered - placed - extra)),
    ordered: newtons(ordered),
    each,
    job: isCounted ? fill.bags * piers : wholeBags(needed * piers),
  }
}
