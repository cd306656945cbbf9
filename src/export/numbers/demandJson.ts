import type { CombinedLoad, Demand, GoverningLoad, LoadCase } from '../../core/model/result.ts'
import type { Worked } from '../../core/model/worked.ts'
import { caseWords, combinationWords, loadNotes } from '../../facts/loadWords.ts'
import { inWords } from './named.ts'
import { workedJson } from './workedJson.ts'
const one = (worked: Worked | null) => worked && workedJson(worked)

const combined = ({ combination, load }: CombinedLoad) => ({
  combination,
  label: combinationWords(combination),
  load_N: load,
  text: inWords(load, 'force'),
})

const loadCase = (of: LoadCase) => ({
  id: of.id,
  label: caseWords(of),
  byArea_N: of.byArea,
  byStatics_N: of.byStatics,
  uplift: combined(of.uplift),
  gravity: combined(of.gravity),
  worked: of.worked.map(workedJson),
})

const governs = (load: GoverningLoad | null) => load && { ...load, label: combinationWords(load.combination) }

/** What pulls, presses and pushes on one pier as plain data: every case that was tried, and which one governs. */
export const demandJson = (demand: Demand): unknown => ({
  kind: demand.kind,
  isEstimate: demand.isEstimate,
  uplift: one(demand.uplift),
  gravity: one(demand.gravity),
  lateral: one(demand.lateral),
  lateralHeight_m: demand.lateralHeight,
  governing: { uplift: governs(demand.governing.uplift), gravity: governs(demand.governing.gravity) },
  cases: demand.cases.map(loadCase),
  worked: demand.worked.map(workedJson),
  notes: loadNotes(demand.notes),
})
