import { sideFrictionByBeta, workedSideFrictionByBeta } from '../../engineering/soil/sideFriction.ts'
import { allowableUplift, upliftFactors, workedAllowableUplift } from '../../engineering/soil/upliftFactor.ts'
import { waterUnitWeight } from '../../engineering/tables/materials.ts'
import type { SourceId } from '../../engineering/sources.ts'
import type { Standing, Worked } from '../../model/worked.ts'
import { type Metres, metres, newtons, pascals } from '../../units/quantity.ts'
import type { CountedLength } from './countedLength.ts'
import { layerDepths, type SoilColumn } from './soilColumn.ts'

type Method = Readonly<{
  id: string
  beta: (depth: number) => number
  standings: readonly Standing[]
  sources: readonly SourceId[]
  breaks?: readonly Metres[]
}>

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
export function betaFriction(column: SoilColumn, length: CountedLength, method: Method): Readonly<{ ultimate: Worked; allowable: Worked }> {
  const span = metres(length.to - length.from)
  const meanStress = pascals(frictionOver(column, length, () => 1, method.breaks) / (length.perimeter * span))
  const friction = frictionOver(column, length, method.beta, method.breaks)
  const ultimate = workedSideFrictionByBeta(
    { beta: friction / (meanStress * length.perimeter * span), meanStress, perimeter: length.perimeter, length: span },
    { id: `${method.id}-ultimate`, standings: method.standings, sources: method.sources },
  )
  const allowable = workedAllowableUplift(
    { ultimate: newtons(ultimate.value), factor: upliftFactors.analysis.wind.value },
    { id: `${method.id}-allowable`, standings: [ultimate.standing], sources: ultimate.sources },
  )
  return { ultimate, allowable }
}

/** The ultimate one as a bare number [N]. */
export const ultimateFriction = (column: SoilColumn, length: CountedLength, { beta, breaks }: Pick<Method, 'beta' | 'breaks'>): number =>
  frictionOver(column, length, beta, breaks)

/** The allowable one as a bare number [N]. */
export const allowableFriction = (column: SoilColumn, length: CountedLength, { beta, breaks }: Pick<Method, 'beta' | 'breaks'>): number =>
  allowableUplift({ ultimate: newtons(frictionOver(column, length, beta, breaks)), factor: upliftFactors.analysis.wind.value })
