import {
  directionality,
  workedElevationFactor,
  workedVelocityCoefficient,
  workedVelocityCoefficientTable,
  workedVelocityPressure,
} from '../../engineering/loads/velocityPressure.ts'
import type { LoadEstimate } from '../../model/spec.ts'
import type { Worked } from '../../model/worked.ts'
import { fromSI } from '../../units/factors.ts'

/** Above this height the printed row is from memory [ft]. */
const readUpTo = 25

/**
 * Velocity pressure at roof height, with its factors. Edition 7-16 reads its table of Kz, as far as one is held, else its formula;
 * 7-22 takes its own formula.
 */
export function velocity(estimate: LoadEstimate): Readonly<{ pressure: Worked; worked: readonly Worked[] }> {
  const { edition, exposure, roofHeight: height, elevation, speed, topographic } = estimate
  const isRemembered = fromSI(height, 'ft') > readUpTo
  const table =
    edition === '7-16' ? workedVelocityCoefficientTable({ exposure, height }, { standings: isRemembered ? ['from memory'] : [] }) : null
  const kz = table ?? workedVelocityCoefficient({ exposure, height, edition })
  const ke = workedElevationFactor({ elevation })
  const pressure = workedVelocityPressure(
    { edition, speed, kz: kz.value, kzt: topographic, kd: directionality, ke: ke.value },
    { standings: [kz.standing, ke.standing] },
  )
  return { pressure, worked: [kz, ke, pressure] }
}
