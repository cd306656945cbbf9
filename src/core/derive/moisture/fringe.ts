import type { Cited } from '../../engineering/cited.ts'
import { fringeTop, workedFringeTop } from '../../engineering/moisture/capillaryFringe.ts'
import type { MoistureResult } from '../../model/moistureResult.ts'
import type { PierSpec } from '../../model/spec.ts'
import type { Worked } from '../../model/worked.ts'
import { metres } from '../../units/quantity.ts'
import { renamed } from '../../engineering/showing.ts'
import { riseAtDepth, risesOf } from './soilRise.ts'

/**
 * Depth to which water rises over the table on the axis, by the least and the greatest published rise. In still water the soil at a
 * height over the table holds what its own rise says, so each layer answers for itself; where the lower one reaches its own top and
 * the upper one does not take it further, the fringe ends at their border.
 */
export function fringeOf(spec: PierSpec): MoistureResult['fringe'] {
  const { waterTable } = spec.site
  if (waterTable === null) return null
  const rises = risesOf(spec)
  const ofEnd = (end: 'low' | 'high'): Worked | null => {
    const own = riseAtDepth(rises, waterTable)[end]
    const upper = rises.upper[end]
    const border = rises.from !== null && waterTable > rises.from ? rises.from : null
    const topOf = (rise: Cited) => fringeTop({ waterTable, rise: metres(rise.value) })
    const show = (rise: number, from: Cited) =>
      renamed(
        workedFringeTop(
          { waterTable, rise: metres(rise) },
          { id: `fringe-top-${end}`, standings: [from.standing], sources: [from.source] },
        ),
        { rise: 'waterRise' },
      )
    if (border === null) return own && show(own.value, own)
    if (upper !== null && topOf(upper) < border) return show(upper.value, upper)
    if (own === null) return null
    return topOf(own) < border ? show(waterTable - border, own) : show(own.value, own)
  }
  return { low: ofEnd('low'), high: ofEnd('high') }
}
