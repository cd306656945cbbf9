import type { ComponentType } from 'react'
import type { CompareRowId } from '../../state/compareRows.ts'
import { type CellProps, Drawing, HoldsDown, Hole, Links, LoadUsed, Mix, Touching, Weight, Wood } from './factCells.tsx'
import { Ask, Cost, Evidence, Inspect, Life, Replace, Sides, Wet } from './tradeCells.tsx'

/** What stands in each row for one pier. */
export const cells: Readonly<Record<CompareRowId, ComponentType<CellProps>>> = {
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

/** Rows of which every cell is known from the trade alone. */
export const isPractice = (id: CompareRowId): boolean => id === 'inspect' || id === 'replace'
