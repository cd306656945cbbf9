import { type CubicMetres, type Metres, type Radians, type UnitWeight, cubicMetres, metres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Angle from the vertical, and the most that may be put on earth and on concrete. Source: go-95. */
export const coneRule = {
  angle: cited<Radians>(30, 'deg', 'go-95', 'read'),
  earth: cited<UnitWeight>(90, 'pcf', 'go-95', 'read'),
  concrete: cited<UnitWeight>(145, 'pcf', 'go-95', 'read'),
} as const

type RoundInputs = Readonly<{ radius: Metres; height: Metres; angle: Radians }>

/**
 * Inverted frustum of soil over a round ledge.
 * @param radius of the ledge (pad, bell or collar) [m]; without a ledge there is no cone
 * @param height from the ledge to grade, at the downhill edge on a slope [m]
 * @param angle of the cone from the vertical [rad], 0 to 0.79
 * @returns radius at grade [m] and volume, shaft not taken out [m3]
 * Formula: R2 = R1 + h tan theta; V = pi h (R1^2 + R1 R2 + R2^2)/3
 * Valid: weight of the soil alone. Outside: cones of neighbours that overlap share their soil.
 * Source: go-95
 * Checked by: tests/external/go-95/check.test.ts
 */
export function soilCone({ radius, height, angle }: RoundInputs): Readonly<{ topRadius: Metres; volume: CubicMetres }> {
  const top = radius + height * Math.tan(angle)
  return { topRadius: metres(top), volume: cubicMetres((Math.PI * height * (radius ** 2 + radius * top + top ** 2)) / 3) }
}

type ReachInputs = RoundInputs & Readonly<{ reach: Metres }>

/**
 * Inverted frustum of soil over a round ledge beside a neighbour: no wider than half the way to it, so that no soil is lifted twice.
 * @param radius of the ledge [m]
 * @param height from the ledge to grade [m]
 * @param angle of the cone from the vertical [rad], more than 0, to 0.79
 * @param reach half the distance to the nearest neighbour, centre to centre [m], positive
 * @returns volume, shaft not taken out [m3]
 * Formula: a frustum up to where it is `reach` wide, a cylinder from there up
 * Valid: less than what is there, as it is cut all round. Outside: a reach short of the ledge leaves a cylinder.
 * Source: definition, go-95
 * Checked by: tests/external/go-95/check.test.ts
 */
export function soilConeWithin({ radius, height, angle, reach }: ReachInputs): CubicMetres {
  const { rise, narrow } = within({ radius, height, angle, reach })
  const { volume } = soilCone({ radius: metres(narrow), height: metres(rise), angle })
  return cubicMetres(volume + Math.PI * reach ** 2 * (height - rise))
}

/** Height of the part that still widens, and the radius that it starts from [m]. */
const within = ({ radius, height, angle, reach }: ReachInputs) => ({
  rise: Math.min(height, Math.max(0, reach - radius) / Math.tan(angle)),
  narrow: Math.min(radius, reach),
})

type RectangularInputs = Readonly<{ a: Metres; b: Metres; height: Metres; angle: Radians }>

/**
 * Inverted frustum of soil over a rectangular ledge, corners rounded.
 * @param a one side of the ledge [m]
 * @param b the other side [m]
 * @param height from the ledge to grade [m]
 * @param angle from the vertical [rad]
 * @returns volume, post not taken out [m3]
 * Formula: V = a b h + (a + b) h^2 t + pi h^3 t^2 / 3, t = tan theta
 * Valid: weight of the soil alone. Outside: mitred corners would give more, and are not credited.
 * Source: definition, go-95
 * Checked by: tests/external/go-95/check.test.ts
 */
export function soilConeRectangular({ a, b, height, angle }: RectangularInputs): CubicMetres {
  const t = Math.tan(angle)
  return cubicMetres(a * b * height + (a + b) * height ** 2 * t + (Math.PI * height ** 3 * t ** 2) / 3)
}

/** Soil lifted over a round ledge, with its work shown. */
export const workedSoilCone = showing({
  id: 'soil-cone',
  quantity: 'volume',
  formula: String.raw`V = \tfrac{\pi h}{3}(R_1^2 + R_1R_2 + R_2^2),\quad R_2 = R_1 + h\tan\theta`,
  terms: { radius: ['R_1', 'length'], height: ['h', 'length'], angle: [String.raw`\theta`, 'angle'] },
  along: (inputs: RoundInputs) => [{ symbol: 'R_2', name: 'topRadius', value: soilCone(inputs).topRadius, quantity: 'length' }],
  sources: ['go-95'],
  of: (inputs: RoundInputs) => soilCone(inputs).volume,
})

/** Soil lifted over a round ledge beside a neighbour, with its work shown. */
export const workedSoilConeWithin = showing({
  id: 'soil-cone-within',
  quantity: 'volume',
  formula: String.raw`V = \tfrac{\pi h_1}{3}(r_1^2 + r_1 r_2 + r_2^2) + \pi r^2 (h - h_1),\quad r_1 = \min(R_1, r),\quad h_1 = \tfrac{r - R_1}{\tan\theta}`,
  terms: {
    radius: ['R_1', 'length'],
    height: ['h', 'length'],
    angle: [String.raw`\theta`, 'angle'],
    reach: ['r', 'length'],
  },
  along: (inputs: ReachInputs) => {
    const { rise, narrow } = within(inputs)
    return [
      { symbol: 'h_1', name: 'coneHeight', value: rise, quantity: 'length' },
      { symbol: 'r_1', name: 'coneFoot', value: narrow, quantity: 'length' },
      { symbol: 'r_2', name: 'coneTop', value: narrow + rise * Math.tan(inputs.angle), quantity: 'length' },
    ]
  },
  sources: ['go-95', 'definition'],
  of: soilConeWithin,
})

/** Soil lifted over a rectangular ledge, with its work shown. */
export const workedSoilConeRectangular = showing({
  id: 'soil-cone-rectangular',
  quantity: 'volume',
  formula: String.raw`V = abh + (a+b)h^2\tan\theta + \tfrac{\pi}{3}h^3\tan^2\theta`,
  terms: { a: ['a', 'length'], b: ['b', 'length'], height: ['h', 'length'], angle: [String.raw`\theta`, 'angle'] },
  sources: ['go-95', 'definition'],
  of: soilConeRectangular,
})

type WeightInputs = Readonly<{ cone: CubicMetres; shaft: CubicMetres; soil: UnitWeight }>
/** Weight of the soil in the cone, shaft or post taken out, with its work shown. Below water the soil's weight is its buoyant one. */
export const workedConeSoilWeight = showing({
  id: 'cone-soil-weight',
  quantity: 'weight',
  formula: String.raw`W = \gamma\,(V - V_{shaft})`,
  terms: { soil: [String.raw`\gamma`, 'unitWeight'], cone: ['V', 'volume'], shaft: ['V_{shaft}', 'volume'] },
  sources: ['go-95'],
  of: ({ cone, shaft, soil }: WeightInputs) => soil * (cone - shaft),
})
