import { type Stand, stands, statusOf, type ToldCheck } from '../core/derive/report/status.ts'
import type { Fact } from '../core/model/fact.ts'
import { wordsOf } from '../words/index.ts'
import { headlineWords, rowIn } from './firstWords.ts'

/** One part of the status line: how many checks stand so, and which. */
export type StatusPart = Readonly<{ stand: Stand; count: string; names: readonly string[] }>

/** What a check is called where answers are told in a line. */
export function toldName({ id, group, restsOn }: ToldCheck): string {
  const own = rowIn<string>(wordsOf('app').status.names, group) ?? rowIn<string>(wordsOf('checkNames'), id) ?? headlineWords(id).label
  return restsOn.length > 0 && group === 'uplift' ? `${own} (${restsOn.map((link) => headlineWords(link).label).join(', ')})` : own
}

/** How the checks stand, worst first; nothing is said of what no check does, but for how many meet. */
export function statusParts(facts: readonly Fact[]): readonly StatusPart[] {
  const status = statusOf(facts)
  const words = wordsOf('app').status
  return stands
    .filter((stand) => stand === 'meets' || status[stand].length > 0)
    .map((stand) => ({ stand, count: words[stand](status[stand].length), names: status[stand].map(toldName) }))
}

/** Of these the names are told with the count. */
export const isNamed = ({ stand }: StatusPart): boolean => stand === 'short' || stand === 'unverified'

/** The status line as plain text. */
export const statusLine = (facts: readonly Fact[]): string =>
  [
    ...statusParts(facts).map((part) => `${part.count}${isNamed(part) ? `: ${part.names.join('; ')}` : ''}.`),
    wordsOf('app').status.noLeave,
  ].join(' ')
