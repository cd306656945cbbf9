import { type Metres, type Pascals, metres, radians } from '../../units/quantity.ts'
import { bearingAlongGrain, steelBearing, tabulatedBearing } from './dowelBearing.ts'
import type { YieldInputs } from './yieldEquations.ts'

type Inputs = Readonly<{ diameter: Metres; postWidth: Metres; plate: Metres; gravity: number; bendingYield: Pascals }>

/**
 * The yield problem of a bolt through a post between two steel side plates, load along the grain.
 * @param diameter of the bolt [m], 0.00635 to 0.0254
 * @param postWidth width of the post between the plates [m]
 * @param plate thickness of each plate [m]
 * @param gravity specific gravity of the wood [1]
 * @param bendingYield bending yield strength of the bolt [Pa]
 * @returns inputs of the yield equations, lengths [m], strengths [Pa]; null outside the range of gravity
 * Formula: lm = post, ls = plate, Fes = 87,000 psi (61,850 psi under 1/4 in), double shear
 * Valid: plates on both faces in contact. Outside: plate bearing, welds and bolt shear are steel checks of their own.
 * Source: nds-2018-12-3-1, nds-2018-app-i
 * Checked by: tests/external/nds-2018-12-3-1/check.test.ts
 */
export function sidePlateProblem({ diameter, postWidth, plate, gravity, bendingYield }: Inputs): YieldInputs | null {
  const along = bearingAlongGrain({ gravity })
  if (along === null) return null
  return {
    diameter,
    main: postWidth,
    side: plate,
    mainBearing: tabulatedBearing(along),
    sideBearing: steelBearing(plate),
    bendingYield,
    angle: radians(0),
    planes: 'double',
  }
}

/**
 * The yield problem of a bolt through a post split over one steel plate, load along the grain.
 * @param diameter of the bolt [m], 0.00635 to 0.0254
 * @param postWidth width of the post along the bolt [m], slot included
 * @param plate thickness of the plate [m]
 * @param gravity specific gravity of the wood [1]
 * @param bendingYield bending yield strength of the bolt [Pa]
 * @returns inputs of the yield equations, lengths [m], strengths [Pa]; null outside the range of gravity
 * Formula: lm = plate, ls = (post - plate)/2, double shear
 * Valid: plate on the post's middle. Outside: the code prints no table for this; the equations alone.
 * Source: nds-2018-12-3-1, nds-2018-app-i
 * Checked by: tests/external/nds-2018-12-3-1/check.test.ts
 */
export function knifePlateProblem({ diameter, postWidth, plate, gravity, bendingYield }: Inputs): YieldInputs | null {
  const along = bearingAlongGrain({ gravity })
  if (along === null) return null
  return {
    diameter,
    main: plate,
    side: metres((postWidth - plate) / 2),
    mainBearing: steelBearing(plate),
    sideBearing: tabulatedBearing(along),
    bendingYield,
    angle: radians(0),
    planes: 'double',
  }
}
