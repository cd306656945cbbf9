import {
  type Metres,
  type NewtonMetres,
  type Newtons,
  type Pascals,
  type Radians,
  type UnitWeight,
  metres,
  radians,
} from '../../units/quantity.ts'
import type { Term } from '../../model/worked.ts'
import { showing } from '../showing.ts'

/** Factors of the manual: on dead and live load, and on soil strength. Source: ufc-3-220-20. */
export const bromsFactors = { dead: 1.5, live: 2, strength: 0.75 } as const

type AngleInputs = Readonly<{ frictionAngle: Radians; share: number }>

/**
 * Friction angle with its tangent reduced.
 * @param frictionAngle of the soil [rad]
 * @param share strength factor [1], 0.75
 * @returns reduced angle [rad]
 * Formula: tan phi* = 0.75 tan phi
 * Valid: drained strength without cohesion. Outside: none.
 * Source: ufc-3-220-20
 * Checked by: tests/external/ufc-3-220-20/check.test.ts
 */
export function reducedFrictionAngle({ frictionAngle, share }: AngleInputs): Radians {
  return radians(Math.atan(share * Math.tan(frictionAngle)))
}

type DrainedInputs = Readonly<{ force: Newtons; moment: NewtonMetres; width: Metres; unitWeight: UnitWeight; frictionAngle: Radians }>

/**
 * Least depth of a short free-headed pile in sand at factored load.
 * @param force factored lateral force Pu [N], non-negative
 * @param moment factored moment at grade Mu [N.m], non-negative
 * @param width of the pile b [m], positive
 * @param unitWeight effective unit weight of the soil [N/m3], positive
 * @param frictionAngle reduced friction angle [rad]
 * @returns least depth [m], depth of greatest moment [m], greatest moment [N.m]
 * Formula: g' b Kp Z^3/2 = Pu Z + Mu; f0 = sqrt(Pu/(1.5 g' b Kp)); Mmax = Mu + Pu f0 - g' b Kp f0^3/2
 * Valid: uniform sand, level ground, short rigid pile. Outside: an independent look, not the code's rule.
 * Source: ufc-3-220-20
 * Checked by: tests/external/ufc-3-220-20/check.test.ts
 */
export function bromsDrained({
  force,
  moment,
  width,
  unitWeight,
  frictionAngle,
}: DrainedInputs): Readonly<{ depth: Metres; momentDepth: Metres; moment: NewtonMetres }> {
  const kp = passive(frictionAngle)
  const k = unitWeight * width * kp
  const f0 = Math.sqrt(force / (1.5 * k))
  return {
    depth: metres(depressedCubicRoot((2 * force) / k, (2 * moment) / k)),
    momentDepth: metres(f0),
    moment: (moment + force * f0 - (k * f0 ** 3) / 2) as NewtonMetres,
  }
}

/** Passive coefficient of level ground [1]. */
const passive = (frictionAngle: Radians): number => Math.tan(Math.PI / 4 + frictionAngle / 2) ** 2

/** Positive root of z^3 - a z - b = 0 for a, b not negative. */
const depressedCubicRoot = (a: number, b: number): number => {
  const discriminant = (b / 2) ** 2 - (a / 3) ** 3
  if (discriminant >= 0) {
    const root = Math.sqrt(discriminant)
    return Math.cbrt(b / 2 + root) + Math.cbrt(b / 2 - root)
  }
  return 2 * Math.sqrt(a / 3) * Math.cos(Math.acos(Math.min(1, ((3 * b) / (2 * a)) * Math.sqrt(3 / a))) / 3)
}

type UndrainedInputs = Readonly<{ force: Newtons; moment: NewtonMetres; width: Metres; strength: Pascals }>

/**
 * Least depth of a short free-headed pile in clay at factored load.
 * @param force factored lateral force Pu [N], non-negative
 * @param moment factored moment at grade Mu [N.m], non-negative
 * @param width of the pile b [m], positive
 * @param strength reduced undrained strength su* = 0.75 su [Pa], positive
 * @returns f [m], g [m] and least depth [m]
 * Formula: f = Pu/(9 su* b); g = sqrt{[Mu + Pu (1.5 b + 0.5 f)]/(2.25 b su*)}; Z = 1.5 b + f + g
 * Valid: uniform clay, level ground, short rigid pile. Outside: an independent look, not the code's rule.
 * Source: ufc-3-220-20
 * Checked by: tests/external/ufc-3-220-20/check.test.ts
 */
export function bromsUndrained({ force, moment, width, strength }: UndrainedInputs): Readonly<{ f: Metres; g: Metres; depth: Metres }> {
  const f = force / (9 * strength * width)
  const g = Math.sqrt((moment + force * (1.5 * width + 0.5 * f)) / (2.25 * width * strength))
  return { f: metres(f), g: metres(g), depth: metres(1.5 * width + f + g) }
}

/** The moment of a shown calculation is force times arm. */
type Shown<T> = Omit<T, 'moment'> & Readonly<{ force: Newtons; arm: Metres }>

const momentTerm = ({ force, arm }: Readonly<{ force: Newtons; arm: Metres }>): Term => ({
  symbol: 'M_u',
  name: 'moment',
  value: force * arm,
  quantity: 'moment',
})
const withMoment = <T extends Readonly<{ force: Newtons; arm: Metres }>>(inputs: T) => ({
  ...inputs,
  moment: (inputs.force * inputs.arm) as NewtonMetres,
})

/** Least depth in sand by Broms, with its work shown. */
export const workedBromsDrained = showing({
  id: 'broms-drained',
  quantity: 'length',
  formula: String.raw`Z = \left(\frac{2 (P_u Z + M_u)}{\gamma' b K_p}\right)^{1/3},\quad M_u = P_u e,\quad K_p = \tan^2(45^\circ + \varphi^*/2)`,
  terms: {
    force: ['P_u', 'force'],
    arm: ['e', 'length'],
    width: ['b', 'length'],
    unitWeight: [String.raw`\gamma'`, 'unitWeight'],
    frictionAngle: [String.raw`\varphi^*`, 'angle'],
  },
  // The depth stands on both sides: put in, they agree.
  along: (inputs: Shown<DrainedInputs>) => [
    momentTerm(inputs),
    { symbol: 'K_p', name: 'passive', value: passive(inputs.frictionAngle), quantity: 'ratio' },
    { symbol: 'Z', name: 'depthFound', value: bromsDrained(withMoment(inputs)).depth, quantity: 'length' },
  ],
  sources: ['ufc-3-220-20'],
  of: (inputs: Shown<DrainedInputs>) => bromsDrained(withMoment(inputs)).depth,
})

/** Least depth in clay by Broms, with its work shown. */
export const workedBromsUndrained = showing({
  id: 'broms-undrained',
  quantity: 'length',
  formula: String.raw`Z = 1.5b + f + g,\quad f = \tfrac{P_u}{9 s_u^* b},\quad g = \sqrt{\tfrac{M_u + P_u(1.5b + 0.5f)}{2.25\,b\,s_u^*}},\quad M_u = P_u e`,
  terms: { force: ['P_u', 'force'], arm: ['e', 'length'], width: ['b', 'length'], strength: ['s_u^*', 'pressure'] },
  along: (inputs: Shown<UndrainedInputs>) => {
    const { f, g } = bromsUndrained(withMoment(inputs))
    return [
      momentTerm(inputs),
      { symbol: 'f', name: 'bromsF', value: f, quantity: 'length' },
      { symbol: 'g', name: 'bromsG', value: g, quantity: 'length' },
    ]
  },
  sources: ['ufc-3-220-20'],
  of: (inputs: Shown<UndrainedInputs>) => bromsUndrained(withMoment(inputs)).depth,
})

/** Reduced friction angle, with its work shown. */
export const workedReducedFrictionAngle = showing({
  id: 'reduced-friction-angle',
  quantity: 'angle',
  formula: String.raw`\varphi^* = \arctan(r\tan\varphi)`,
  terms: { frictionAngle: [String.raw`\varphi`, 'angle'], share: ['r', 'ratio'] },
  sources: ['ufc-3-220-20'],
  of: reducedFrictionAngle,
})
