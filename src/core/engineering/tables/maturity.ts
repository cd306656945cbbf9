import type { Celsius } from '../../units/quantity.ts'
import { type Cited, cited } from '../cited.ts'

/** Temperature at which one day counts as one day. Source: memory. */
export const maturityReference = cited<Celsius>(20, 'degC', 'memory', 'from memory')

/** Ways to turn time at a temperature into age at the reference: a straight line from a datum, or an exponential. */
export type MaturityVariant =
  | Readonly<{ id: 'datum-0' | 'datum-minus-10'; datum: Cited<Celsius> }>
  | Readonly<{ id: 'activation-5000' | 'activation-33500'; kelvin: Cited }>

/** Gas constant [J/(mol K)], exact to the digits that matter. Source: definition. */
const gasConstant = 8.314462618

/**
 * The variants in use. Their spread is the uncertainty: the working datum and the older one, and two activation
 * energies, 5000 K and 33500 J/mol, between which no source decides. Source: astm-c1074, memory, maturity-activation.
 */
export const maturityVariants: readonly MaturityVariant[] = [
  { id: 'datum-0', datum: cited<Celsius>(0, 'degC', 'astm-c1074', 'secondary') },
  { id: 'datum-minus-10', datum: cited<Celsius>(-10, 'degC', 'memory', 'secondary') },
  { id: 'activation-5000', kelvin: cited(5000, '1', 'memory', 'from memory') },
  { id: 'activation-33500', kelvin: cited(33500 / gasConstant, '1', 'maturity-activation', 'secondary') },
]

/** Concrete temperatures between which the variants are used; outside them there is no value. Source: astm-c1074. */
export const maturityLimits = {
  low: cited<Celsius>(0, 'degC', 'astm-c1074', 'secondary'),
  high: cited<Celsius>(40, 'degC', 'astm-c1074', 'secondary'),
} as const
