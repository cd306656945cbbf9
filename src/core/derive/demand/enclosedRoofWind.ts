import { edgeZoneCoefficient, enclosedRoofCoefficients } from '../../engineering/loads/enclosedRoof.ts'
import { directionality, rigidGust, workedEnclosedRoofPressure } from '../../engineering/loads/velocityPressure.ts'
import { internalPressure } from '../../engineering/tables/windRoof.ts'
import type { LoadEstimate } from '../../model/spec.ts'
import type { Term, Worked } from '../../model/worked.ts'
import { pascals } from '../../units/quantity.ts'
import { given } from '../given.ts'
import type { RoofWind } from './roofWind.ts'

/** Coefficients of one figure: windward and leeward half, how they are shown, and where each is read in its table. */
type Halves = Readonly<{
  windward: number
  leeward: number
  formula: string
  at: Readonly<{ windward: readonly Term[]; leeward: readonly Term[] }>
}>

const slopes = String.raw`C_p(\theta,\ h/L)`
const zones = String.raw`C_p(x/h,\ h/L)`
const overLength = (value: number): Term => ({ symbol: 'h/L', name: 'heightOverLength', value, quantity: 'ratio' })
const zoneAt = (value: number, heightOverLength: number): readonly Term[] => [
  { symbol: 'x/h', name: 'distanceOverHeight', value, quantity: 'ratio' },
  overLength(heightOverLength),
]

/** From 10 degrees on the slopes have values of their own; flatter roofs go by zones from the edge that the wind meets. */
function acrossRidge({ roofAngle: angle, roofHeight, span, overhang }: LoadEstimate): readonly [least: Halves, most: Halves] | null {
  const length = span + 2 * overhang
  const heightOverLength = roofHeight / length
  const sloped = enclosedRoofCoefficients({ angle, heightOverLength })
  if (sloped) {
    const { windward, leeward } = sloped
    const inputs: readonly Term[] = [
      { symbol: String.raw`\theta`, name: 'angle', value: angle, quantity: 'angle' },
      overLength(heightOverLength),
    ]
    const at = { windward: inputs, leeward: inputs }
    return [
      { windward: windward[0], leeward, formula: slopes, at },
      { windward: windward[1], leeward, formula: slopes, at },
    ]
  }
  if (angle > flattest) return null
  // Each half takes the zone that it begins in, the more lifting one.
  const near = edgeZoneCoefficient({ distanceOverHeight: 0, heightOverLength })
  const far = edgeZoneCoefficient({ distanceOverHeight: length / 2 / roofHeight, heightOverLength })
  const at = { windward: zoneAt(0, heightOverLength), leeward: zoneAt(length / 2 / roofHeight, heightOverLength) }
  return [
    { windward: near[0], leeward: far[0], formula: zones, at },
    { windward: near[1], leeward: far[1], formula: zones, at },
  ]
}

/** 10 degrees [rad], where the zones give way to the slopes. Source: asce-7-16-27-3. */
const flattest = (10 * Math.PI) / 180

/** Wind along the ridge, in the bay that it meets first; the building is taken to be at least as long as it is wide. */
function alongRidge({ roofHeight, span, overhang }: LoadEstimate): readonly [least: Halves, most: Halves] {
  const heightOverLength = roofHeight / (span + 2 * overhang)
  const [least, most] = edgeZoneCoefficient({ distanceOverHeight: 0, heightOverLength })
  const edge = zoneAt(0, heightOverLength)
  const at = { windward: edge, leeward: edge }
  return [
    { windward: least, leeward: least, formula: zones, at },
    { windward: most, leeward: most, formula: zones, at },
  ]
}

/** Every case of an enclosed or partially enclosed roof: across and along, both roof values, with air inside pushing out and drawing in. */
export function enclosedRoofWind(
  estimate: LoadEstimate,
  enclosure: 'enclosed' | 'partially-enclosed',
  velocityPressure: Worked,
): readonly RoofWind[] {
  const across = acrossRidge(estimate)
  if (!across) return []
  const { edition } = estimate
  const coefficient = (id: string, value: number, formula: string, inputs: readonly Term[]): Worked =>
    given(id, value, 'ratio', { formula, inputs, sources: ['asce-7-16-27-3'], standing: 'secondary' })
  const inside = internalPressure[enclosure]
  const caseOf = (wind: 'across' | 'along', figure: 'least' | 'most', halves: Halves, sense: 'out' | 'in'): RoofWind => {
    const pressure = (id: string, value: number) =>
      workedEnclosedRoofPressure(
        {
          edition,
          pressure: pascals(velocityPressure.value),
          gust: rigidGust,
          kd: directionality,
          coefficient: value,
          internal: sense === 'out' ? inside : -inside,
        },
        { id, standings: [velocityPressure.standing] },
      )
    const windward = pressure('windward-pressure', halves.windward)
    const cp = coefficient('enclosed-windward', halves.windward, halves.formula, halves.at.windward)
    const base = { wind, figure, inside: sense, windward }
    if (wind === 'along') return { ...base, leeward: windward, worked: [cp] }
    const leeward = pressure('leeward-pressure', halves.leeward)
    return { ...base, leeward, worked: [cp, coefficient('enclosed-leeward', halves.leeward, halves.formula, halves.at.leeward)] }
  }
  const both = [
    ['across', across],
    ['along', alongRidge(estimate)],
  ] as const
  return both.flatMap(([wind, [least, most]]) =>
    (['out', 'in'] as const).flatMap((sense) => [caseOf(wind, 'least', least, sense), caseOf(wind, 'most', most, sense)]),
  )
}
