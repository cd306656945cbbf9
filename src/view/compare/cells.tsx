import type { ComponentType } from 'react'
import type { PierResult } from '../../core/model/result.ts'
import type { CompareRowId } from '../../state/compareRows.ts'
import { HoldsDown, Hole, LoadUsed, Mix, Weight, Wood } from './NumberCells.tsx'
import { Cost, Life, Wet } from './YearCells.tsx'
import { Ask, Drawing, Evidence, Inspect, Links, Replace, Sides, Touching } from './WordCells.tsx'

/** What stands in each row for one pier. */
export const cells: Readonly<Record<CompareRowId, ComponentType<Readonly<{ result: PierResult }>>>> = {
  'holds-down': HoldsDown,
  'load-used': LoadUsed,
  links: Links,
  drawing: Drawing,
  hole: Hole,
  mix: Mix,
  weight: Weight,
  wood: Wood,
  touching: Touching,
  wet: Wet,
  life: Life,
  inspect: Inspect,
  replace: Replace,
  cost: Cost,
  sides: Sides,
  evidence: Evidence,
  ask: Ask,
}
