import { type Metres, type Pascals, metres, radians } from '../../units/quantity.ts'
import { showing } from '../showing.ts'
import { bearingAlongGrain, concreteBearing, tabulatedBearing } from './dowelBearing.ts'
import { type YieldInputs, type YieldResult, yieldValue } from './yieldEquations.ts'

type LengthInputs = Readonly<{ pierDiameter: Metres; postWidth: Metres; cover: Metres; barLength: Metres }>

/**
 * Length of a bar that bears in concrete on each side of a centred post, ends covered.
 * @param pierDiameter diameter of the concrete at the bar [m], positive
 * @param postWidth width of the post along the bar [m], positive
 * @param cover clear cover at the bar's ends [m], non-negative
 * @param barLength length of the bar [m], centred
 * @returns bearing length each side [m]; null when the bar does not reach into covered concrete
 * Formula: ls = min[(D - w)/2 - c, (L - w)/2]
 * Valid: bar through the axis. Outside: no value when nothing is left.
 * Source: computed-here
 * Checked by: tests/external/load-path-example/check.test.ts
 */
export function barBearingLength({ pierDiameter, postWidth, cover, barLength }: LengthInputs): Metres | null {
  const length = Math.min((pierDiameter - postWidth) / 2 - cover, (barLength - postWidth) / 2)
  return length > 1e-9 ? metres(length) : null
}

/** Bearing length of a bar each side of the post, with its work shown. */
export const workedBarBearingLength = showing({
  id: 'bar-bearing-length',
  quantity: 'length',
  formula: String.raw`l_s = \min\!\left[\tfrac{D-w}{2} - c,\ \tfrac{L-w}{2}\right]`,
  terms: { pierDiameter: ['D', 'length'], postWidth: ['w', 'length'], cover: ['c', 'length'], barLength: ['L', 'length'] },
  sources: ['computed-here', 'aci-318-19-20-5-1-3'],
  of: barBearingLength,
})

type DowelInputs = Readonly<{ diameter: Metres; postWidth: Metres; bearingLength: Metres; gravity: number; bendingYield: Pascals }>

/**
 * The yield problem of a bar through a post cast in concrete: post between two concrete sides, load along the grain.
 * @param diameter nominal diameter of the bar [m], 0.00635 to 0.0254
 * @param postWidth width of the post along the bar [m]
 * @param bearingLength of the bar in concrete each side [m]
 * @param gravity specific gravity of the wood [1]
 * @param bendingYield bending yield strength of the bar [Pa]
 * @returns inputs of the yield equations, lengths [m], strengths [Pa]; null outside the range of gravity
 * Formula: lm = post, Fem = 11200 G (nearest 50 psi), ls = bearing length, Fes = 7,500 psi, theta = 0, double shear
 * Valid: concrete of 2,500 psi or more. Outside: the code has no row for this; it is an engineering extension and is shown as one.
 * Source: nds-2018-12-3-1, nds-2018-table-12e, computed-here
 * Checked by: tests/external/nds-2018-12-3-1/check.test.ts
 */
export function barDowelProblem({ diameter, postWidth, bearingLength, gravity, bendingYield }: DowelInputs): YieldInputs | null {
  const along = bearingAlongGrain({ gravity })
  if (along === null) return null
  return {
    diameter,
    main: postWidth,
    side: bearingLength,
    mainBearing: tabulatedBearing(along),
    sideBearing: concreteBearing.value,
    bendingYield,
    angle: radians(0),
    planes: 'double',
  }
}

/**
 * Reference value of one bar through a post cast in concrete.
 * @param diameter nominal diameter of the bar [m], 0.00635 to 0.0254
 * @param postWidth width of the post along the bar [m]
 * @param bearingLength of the bar in concrete each side [m]
 * @param gravity specific gravity of the wood [1]
 * @param bendingYield bending yield strength of the bar [Pa]
 * @returns yield result, values in [N]; null outside the ranges
 * Formula: double-shear yield equations on barDowelProblem
 * Valid: as the two parts. Outside: no value.
 * Source: nds-2018-12-3-1, nds-2018-table-12e, computed-here
 * Checked by: tests/external/nds-2018-12-3-1/check.test.ts
 */
export function barDowelValue(inputs: DowelInputs): YieldResult | null {
  const problem = barDowelProblem(inputs)
  return problem && yieldValue(problem)
}
