import type { CombinedLoad, Demand, GoverningLoad, LoadCase } from '../../core/model/result.ts'
import type { Worked } from '../../core/model/worked.ts'
import { wordsOf } from '../../words/index.ts'
import { inWords } from './named.ts'
import { workedJson } from './workedJson.ts'
const said = (table: Readonly<Record<string, string>>, key: string): string => (Object.hasOwn(table, key) ? (table[key] ?? key) : key)
const one = (worked: Worked | null) => worked && workedJson(worked)

const combined = ({ combination, load }: CombinedLoad) => ({
  combination,
  label: said(wordsOf('loads').combinations, combination),
  load_N: load,
  text: inWords(load, 'force'),
})

const loadCase = ({ id, wind, figure, inside, post, byArea, byStatics, uplift, gravity, worked }: LoadCase) => {
  const words = wordsOf('loads')
  return {
    id,
    label: [words.wind[wind], words.figure[figure], ...(inside === null ? [] : [words.inside[inside]]), words.post[post]].join(', '),
    byArea_N: byArea,
    byStatics_N: byStatics,
    uplift: combined(uplift),
    gravity: combined(gravity),
    worked: worked.map(workedJson),
  }
}

const governs = (load: GoverningLoad | null) => load && { ...load, label: said(wordsOf('loads').combinations, load.combination) }

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
  notes: demand.notes.map((key) => wordsOf('loads').notes[key]),
})
