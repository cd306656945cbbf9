import { type Metres, type Newtons, type Pascals, newtons } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ allowable: Pascals; perimeter: Metres; length: Metres }>

/**
 * Side friction from an allowable value that the user answers for.
 * @param allowable unit side friction, safety factor already inside [Pa], non-negative
 * @param perimeter of the shaft [m]
 * @param length in contact with undisturbed soil and counted [m]
 * @returns allowable side friction [N]
 * Formula: R = fs p L
 * Valid: as the user's own report says. Outside: no further factor is put on it.
 * Source: user
 * Checked by: tests/core/engineering/soil/friction.test.ts
 */
export function userFriction({ allowable, perimeter, length }: Inputs): Newtons {
  return newtons(allowable * perimeter * length)
}

/** The user's side friction, with its work shown. */
export const workedUserFriction = showing({
  id: 'user-friction',
  quantity: 'force',
  formula: 'R_s = f_s\\,p\\,L',
  terms: { allowable: ['f_s', 'pressure'], perimeter: ['p', 'length'], length: ['L', 'length'] },
  sources: ['user'],
  of: userFriction,
})
