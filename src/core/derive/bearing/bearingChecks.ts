import { workedBearingGross, workedBearingNet } from '../../engineering/soil/bearing.ts'
import { weakest } from '../../engineering/showing.ts'
import { effectiveStress } from '../../engineering/soil/verticalStress.ts'
import { waterUnitWeight } from '../../engineering/tables/materials.ts'
import type { Counting } from '../../model/kind.ts'
import type { Demand, Depths, QuantityLine } from '../../model/result.ts'
import type { Check, Worked } from '../../model/worked.ts'
import type { Zone } from '../../model/zone.ts'
import { cubicMetres, metres, newtons, squareMetres, type UnitWeight } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import { given } from '../given.ts'
import { lessCounted } from '../counting.ts'
import type { PierFrame } from '../pierFrame.ts'
import type { SoilColumn } from '../uplift/soilColumn.ts'
import { bearingSite } from './bearingSite.ts'
import { postEnd } from './postEnd.ts'

const netReading: Counting = { counted: "engineer's judgement", why: 'net-is-a-reading', sources: ['ibc-1807-3-2-3'] }

/**
 * Pressure under the pier against what the code presumes, or the user entered, for the soil that it stands on: gross, the pier's own weight
 * in it, and net, less the soil that it replaced.
 */
export function bearingChecks(
  frame: PierFrame,
  column: SoilColumn,
  { lines, zones, depths, demand }: Readonly<{ lines: readonly QuantityLine[]; zones: readonly Zone[]; depths: Depths; demand: Demand }>,
): Check[] {
  const depth = metres(Math.max(0, -frame.profile.bottom - frame.spec.site.slope * frame.profile.bottomRadius))
  const soil = column.at(depth)
  const site = bearingSite(frame, { lines, zones, depths }, soil.bearing)
  const { counting, where, weight, volume } = site
  const area = squareMetres(site.area.value)
  const allowable = given('bearing-value', soil.bearing, 'pressure', {
    formula: 'q_a',
    sources: [soil.source],
    standing: soil.tableStanding,
  })
  const capacity: Worked = {
    id: 'bearing-capacity',
    value: soil.bearing * area,
    quantity: 'force',
    formula: 'N_a = q_a A',
    inputs: [
      { symbol: 'q_a', name: 'bearing', value: soil.bearing, quantity: 'pressure' },
      { symbol: 'A', name: 'area', value: area, quantity: 'area' },
    ],
    sources: [...new Set([...allowable.sources, ...site.area.sources])],
    standing: weakest(allowable.standing, site.area.standing),
  }
  const worked = [...site.steps, site.area, capacity]
  const base = { group: 'bearing', where, worked, allowable } as const
  const load = demand.gravity
  const end = [postEnd(frame, load)].filter((check) => check !== null)
  if (!load) return [makeCheck({ ...base, id: 'bearing-gross', counting }), ...end]
  const use = { standings: [load.standing], sources: load.sources }
  const gross = workedBearingGross({ load: newtons(load.value), weight: newtons(weight), area }, { ...use, id: 'gross-pressure' })
  const stress = effectiveStress(column.layers, null, waterUnitWeight.value, depth)
  const net = workedBearingNet(
    {
      load: newtons(load.value),
      weight: newtons(weight),
      area,
      volume: cubicMetres(volume),
      soil: (depth > 0 ? stress / depth : 0) as UnitWeight,
    },
    { ...use, id: 'net-pressure' },
  )
  return [
    makeCheck({ ...base, id: 'bearing-gross', counting, demand: gross }),
    makeCheck({ ...base, id: 'bearing-net', counting: lessCounted(counting, netReading), demand: net }),
    ...end,
  ]
}
