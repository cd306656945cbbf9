import type { CountedLength } from './countedLength.ts'
import { type SoilColumn, layerDepths } from './soilColumn.ts'
import { type Use, weakest, worked } from '../../engineering/showing.ts'
import { sideFrictionByBeta, workedSideFrictionByBeta } from '../../engineering/soil/sideFriction.ts'
import { upliftFactors, workedAllowableUplift } from '../../engineering/soil/upliftFactor.ts'
import { waterUnitWeight } from '../../engineering/tables/materials.ts'
import type { Worked } from '../../model/worked.ts'
import { type Metres, metres, newtons, pascals } from '../../units/quantity.ts'

/** `shown` and `allowableId`: how the ultimate friction is told, and what the allowable one is called. */
type Method = Readonly<{ beta: (depth: number) => number; breaks?: readonly Metres[]; shown: Use; allowableId: string }>

/** Ultimate side friction [N] by a beta of depth over the counted length. */
const frictionOver = (column: SoilColumn, length: CountedLength, beta: (depth: number) => number, breaks: readonly Metres[] = []): number =>
  sideFrictionByBeta({
    beta,
    layers: column.layers,
    waterTable: column.waterTable,
    water: waterUnitWeight.value,
    perimeter: length.perimeter,
    from: length.from,
    to: length.to,
    breaks: [...layerDepths(column), ...breaks],
  })

/** Side friction by a beta of depth over the counted length: ultimate, and allowable under wind. The beta shown is the mean over the length. */
export function betaFriction(
  column: SoilColumn,
  length: CountedLength,
  { beta, breaks, shown, allowableId }: Method,
): Readonly<{ ultimate: Worked; allowable: Worked }> {
  const friction = newtons(frictionOver(column, length, beta, breaks))
  const { perimeter } = length
  const inputs = () => {
    const span = metres(length.to - length.from)
    const meanStress = pascals(frictionOver(column, length, () => 1, breaks) / (perimeter * span))
    return { beta: friction / (meanStress * perimeter * span), meanStress, perimeter, length: span }
  }
  const ultimate = workedSideFrictionByBeta.at(friction, inputs, shown)
  const allowable = workedAllowableUplift(
    { ultimate: friction, factor: upliftFactors.analysis.wind.value },
    { id: allowableId, standings: [ultimate], sources: [ultimate] },
  )
  return { ultimate, allowable }
}

/** Side friction with its factor inside, plus 0.6 of the weight: one factor on each, never two on one. */
export const frictionPlusWeight = (friction: Worked, factored: Worked): Worked =>
  worked('allowable-soil-uplift', friction.value + factored.value, 'force', () => ({
    formula: String.raw`T_a = R + 0.6\,D`,
    inputs: [
      { symbol: 'R', name: 'friction', value: friction.value, quantity: 'force' },
      { symbol: String.raw`0.6\,D`, name: 'weight', value: factored.value, quantity: 'force' },
    ],
    sources: [...new Set([...friction.sources, ...factored.sources])],
    standing: weakest(friction.standing, factored.standing),
  }))
