import { type Metres, type Newtons, type Pascals, newtons } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Bond of concrete to an encased post, quoted at second hand; in neither wood nor concrete code, not credited. Source: hoyle-woeste-1989. */
export const concreteToWoodBond = cited<Pascals>(30, 'psi', 'hoyle-woeste-1989', 'secondary')

type Inputs = Readonly<{ bond: Pascals; perimeter: Metres; length: Metres }>

/**
 * Bond of concrete to the sides of an encased post. Shown for reference; never credited, since wood shrinks away.
 * @param bond unit bond [Pa]
 * @param perimeter of the post [m]
 * @param length of contact with mixed concrete [m]
 * @returns bond force [N]
 * Formula: B = u p L
 * Valid: as quoted. Outside: no standard speaks of it.
 * Source: hoyle-woeste-1989
 * Checked by: tests/external/hoyle-woeste-1989/check.test.ts
 */
export function concreteBond({ bond, perimeter, length }: Inputs): Newtons {
  return newtons(bond * perimeter * length)
}

/** Bond of concrete to wood, with its work shown. */
export const workedConcreteBond = showing({
  id: 'concrete-bond',
  quantity: 'force',
  formula: 'B = u\\,p\\,L',
  terms: { bond: ['u', 'strength'], perimeter: ['p', 'length'], length: ['L', 'length'] },
  sources: ['hoyle-woeste-1989'],
  of: concreteBond,
})
