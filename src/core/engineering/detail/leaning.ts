import { type Metres, metres, type Newtons, newtons, type Radians } from '../../units/quantity.ts'
import { showing } from '../showing.ts'
import { type pierPlumb, plumbAllowance } from '../tables/pierTolerances.ts'

type Offset = Readonly<{ length: Metres; lean: Radians }>

/**
 * How far a leaning post is out of line over a length of it.
 * @param length along the plumb line [m]
 * @param lean off plumb [rad], under a right angle
 * @returns offset [m]
 * Formula: e = L tan(theta)
 * Source: definition
 * Checked by: tests/core/derive/leaning.test.ts
 */
export const leanOffset = ({ length, lean }: Offset): Metres => metres(length * Math.tan(lean))

export const workedLeanOffset = showing({
  id: 'lean-offset',
  quantity: 'length',
  formula: String.raw`e = L \tan\theta`,
  terms: { length: ['L', 'length'], lean: [String.raw`\theta`, 'angle'] },
  sources: ['definition'],
  of: leanOffset,
})

type Allowance = Readonly<{ pier: Exclude<keyof typeof pierPlumb, 'plainNotHeld'>; length: Metres; perLength: number }>

/** Offset that the tolerance of drilled piers allows over a length of shaft. Formula: e = k L. Source: aci-117m-10. */
export const workedPlumbAllowance = showing({
  id: 'plumb-allowance',
  quantity: 'length',
  formula: 'e = k L',
  terms: { perLength: ['k', 'ratio'], length: ['L', 'length'] },
  sources: ['aci-117m-10'],
  of: ({ pier, length }: Allowance): Metres => plumbAllowance(pier, length, metres(0)),
})

type Push = Readonly<{ plumbPush: Newtons; onPost: Newtons; lean: Radians }>

/**
 * Side load on a post that leans under a load: the load's own share joins what pushes already.
 * @param plumbPush side load on a plumb post [N] @param onPost load on the post, down [N] @param lean off plumb [rad]
 * @returns side load [N]
 * Formula: H = H_0 + P tan(theta)
 * Valid: nothing above holds the post back. Outside: a braced frame takes the share up itself.
 * Source: definition (statics)
 * Checked by: tests/core/derive/leaning.test.ts
 */
export const pushWithLean = ({ plumbPush, onPost, lean }: Push): Newtons => newtons(plumbPush + onPost * Math.tan(lean))

export const workedPushWithLean = showing({
  id: 'demand-lateral',
  quantity: 'force',
  formula: String.raw`H = H_0 + P \tan\theta`,
  terms: { plumbPush: ['H_0', 'force'], onPost: ['P', 'force'], lean: [String.raw`\theta`, 'angle'] },
  sources: ['definition'],
  of: pushWithLean,
})
