import { type Metres, type Newtons, newtons, type Pascals, type Radians } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Least wind on an open building, on the upright outline of its roof, strength level. Source: asce-7-16-27-1. */
export const leastOpenPressure = cited<Pascals>(16, 'psf', 'asce-7-16-27-1', 'secondary')

/** How the slopes of a roof lie: `two` halves that fall or rise both ways, or `one` slope all across. */
export type Slopes = 'two' | 'one'
type Inputs = Readonly<{ span: Metres; bay: Metres; overhang: Metres; angle: Radians; slopes: Slopes; windward: Pascals; leeward: Pascals }>

/**
 * Sideways push of wind on the roof of one frame.
 * @param span between post lines [m], positive
 * @param bay spacing of frames [m]
 * @param overhang of the roof past each post line, on plan [m], non-negative
 * @param angle of the roof [rad], non-negative
 * @param slopes two halves, or one slope all across [1]
 * @param windward pressure square to the windward half [Pa], either sign
 * @param leeward pressure square to the leeward half [Pa], either sign
 * @returns push across the ridge [N], without its direction
 * Formula: H = s (L/2 + a) tan(theta) |pW - pL|, one slope: |pW + pL|
 * Valid: the roof alone. Outside: wind on posts, walls, bracing and goods is not in it.
 * Source: statics
 * Checked by: tests/external/statics/push.test.ts
 */
export function roofPush({ span, bay, overhang, angle, slopes, windward, leeward }: Inputs): Newtons {
  return newtons(bay * (span / 2 + overhang) * Math.tan(angle) * Math.abs(slopes === 'two' ? windward - leeward : windward + leeward))
}

type LeastInputs = Readonly<{ span: Metres; bay: Metres; overhang: Metres; angle: Radians; slopes: Slopes; pressure: Pascals }>

/**
 * Least sideways push on the roof of one frame of an open building.
 * @param span between post lines [m], positive
 * @param bay spacing of frames [m]
 * @param overhang of the roof past each post line, on plan [m], non-negative
 * @param angle of the roof [rad], non-negative
 * @param slopes two halves, or one slope all across [1]
 * @param pressure least pressure on the upright outline [Pa]
 * @returns least push [N], strength level
 * Formula: H = p s r, rise r = (L/2 + a) tan(theta), one slope: (L + 2a) tan(theta)
 * Valid: the roof's own outline. Outside: fascia, posts and goods add to it.
 * Source: asce-7-16-27-1
 * Checked by: tests/external/statics/push.test.ts
 */
export function leastRoofPush({ span, bay, overhang, angle, slopes, pressure }: LeastInputs): Newtons {
  return newtons(pressure * bay * (slopes === 'two' ? 1 : 2) * (span / 2 + overhang) * Math.tan(angle))
}

/** Sideways push on the roof, with its work shown. */
export const workedRoofPush = showing({
  id: 'roof-push',
  quantity: 'force',
  formula: ({ slopes }: Inputs) => String.raw`H = s\,(L/2 + a)\tan\theta\,|p_W ${slopes === 'two' ? '-' : '+'} p_L|`,
  terms: {
    bay: ['s', 'length'],
    span: ['L', 'length'],
    overhang: ['a', 'length'],
    angle: [String.raw`\theta`, 'angle'],
    windward: ['p_W', 'pressure'],
    leeward: ['p_L', 'pressure'],
  },
  sources: ['statics'],
  of: roofPush,
})

/** Least sideways push on the roof, with its work shown. */
export const workedLeastRoofPush = showing({
  id: 'least-roof-push',
  quantity: 'force',
  formula: ({ slopes }: LeastInputs) => String.raw`H = p\,s\,${slopes === 'two' ? '(L/2 + a)' : '(L + 2a)'}\tan\theta`,
  terms: {
    pressure: ['p', 'pressure'],
    bay: ['s', 'length'],
    span: ['L', 'length'],
    overhang: ['a', 'length'],
    angle: [String.raw`\theta`, 'angle'],
  },
  sources: ['asce-7-16-27-1'],
  of: leastRoofPush,
})
