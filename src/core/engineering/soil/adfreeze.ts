import { type Metres, type Newtons, type Pascals, newtons } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

const bond = (kilopascals: number) => cited<Pascals>(kilopascals, 'kPa', 'cfem-2006', 'secondary')
/** Bond of frozen ground, peak values. Source: cfem-2006. */
export const adfreezeBond = {
  'fine-to-concrete-or-wood': bond(65),
  'fine-to-steel': bond(100),
  'saturated-gravel-to-steel': bond(150),
} as const

type Inputs = Readonly<{ bond: Pascals; perimeter: Metres; frozen: Metres }>

/**
 * Upward pull of freezing ground on the side of a pier or post. A warning, never a pass or a fail.
 * @param bond adfreeze bond [Pa], positive
 * @param perimeter of the frozen shaft [m]
 * @param frozen depth of frost in contact [m], not reduced by any ledge above
 * @returns heave force [N]
 * Formula: F = tau p d_f
 * Valid: fine-grained, frost-susceptible soil with water. Outside: clean sand and gravel give far less; no number for that.
 * Source: cfem-2006
 * Checked by: tests/external/cfem-2006/check.test.ts
 */
export function adfreezeForce({ bond: tau, perimeter, frozen }: Inputs): Newtons {
  return newtons(tau * perimeter * frozen)
}

/** Adfreeze force, with its work shown. */
export const workedAdfreezeForce = showing({
  id: 'adfreeze-force',
  quantity: 'force',
  formula: String.raw`F = \tau\,p\,d_f`,
  terms: { bond: [String.raw`\tau`, 'pressure'], perimeter: ['p', 'length'], frozen: ['d_f', 'length'] },
  sources: ['cfem-2006'],
  of: adfreezeForce,
})
