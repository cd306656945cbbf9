import type { PierResult } from '../../core/model/result.ts'
import type { Role } from '../../core/model/solid.ts'
import type { QuestionId } from '../../words/en/sheet.ts'

const has = ({ zones }: PierResult, role: Role): boolean => zones.some((zone) => zone.role === role)

const always = (): boolean => true
/** In the order of importance; each with the state that it belongs to. */
const asked: readonly (readonly [QuestionId, (result: PierResult) => boolean])[] = [
  ['lines-marked', always],
  ['not-as-drawn', ({ callout }) => callout?.overall === 'not as drawn'],
  ['not-counted', ({ uplift }) => uplift.uncounted.length > 0],
  ['short', ({ uplift }) => uplift.ratio !== null && uplift.ratio > 1],
  ['load-unknown', ({ demand }) => demand.uplift === null],
  ['load-estimated', ({ demand }) => demand.uplift !== null && demand.isEstimate],
  ['placed-dry', (result) => has(result, 'dry-mix')],
  ['ticket', (result) => has(result, 'concrete')],
  ['bar', (result) => has(result, 'bar') && result.spec.support.kind !== 'bracket'],
  ['no-bar', (result) => !has(result, 'bar') && result.spec.support.kind !== 'bracket'],
  ['bracket', ({ spec }) => spec.support.kind === 'bracket'],
  ['backfill', (result) => has(result, 'backfill')],
  ['granular', (result) => has(result, 'granular')],
  ['wood-below', ({ exposure }) => exposure.lines.some(({ belowGrade }) => belowGrade > 0)],
  ['slope', ({ spec }) => spec.site.slope > 0],
  ['frost', ({ spec }) => spec.site.frostDepth > 0],
  ['water-known', ({ spec }) => spec.site.waterTable !== null && spec.site.waterTable < spec.hole.depth],
  ['no-drawing', ({ callout }) => callout === null],
  ['water-unknown', ({ spec }) => spec.site.waterTable === null],
  ['bottom', always],
  ['inspector', always],
]

export const fewestQuestions = 6
const most = 10

/** Questions for the builder that belong to the state shown, at least six: what fits one pier of those compared is asked. */
export function questionsFor(results: readonly PierResult[]): readonly QuestionId[] {
  const fitting = asked.filter(([, fits]) => results.some(fits)).map(([id]) => id)
  const last: readonly QuestionId[] = ['bottom', 'inspector']
  return [...fitting.filter((id) => !last.includes(id)).slice(0, most - last.length), ...last]
}
