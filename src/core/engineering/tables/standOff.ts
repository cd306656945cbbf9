import type { CodeEdition } from '../../model/spec.ts'
import type { Metres } from '../../units/quantity.ts'
import { type Cited, cited } from '../cited.ts'

/**
 * Clearances under which wood columns may go without treatment, by code and edition. A condition, never a requirement to use a stand-off.
 * `weatherExposed`: does the exception reach posts out in the weather? `and`: must both clearances hold, or either?
 */
export type StandOffRule = Readonly<{
  aboveConcrete: Cited<Metres>
  aboveEarth: Cited<Metres>
  join: 'either' | 'both'
  barrier: boolean
  weatherExposed: boolean
}>
const inches = (printed: number, source: 'irc-r317-1-4' | 'irc-r317-1' | 'ibc-2304-12', standing: 'read' | 'secondary' | 'from memory') =>
  cited<Metres>(printed, 'in', source, standing)

/** Stand-off conditions, inches. Source: irc-r317-1-4, irc-r317-1, ibc-2304-12. */
export const standOffRules: Readonly<Record<CodeEdition, StandOffRule>> = {
  'irc-2012-2018': {
    aboveConcrete: inches(1, 'irc-r317-1-4', 'read'),
    aboveEarth: inches(6, 'irc-r317-1-4', 'read'),
    join: 'either',
    barrier: true,
    weatherExposed: true,
  },
  'irc-2021': {
    aboveConcrete: inches(1, 'irc-r317-1', 'from memory'),
    aboveEarth: inches(6, 'irc-r317-1', 'from memory'),
    join: 'either',
    barrier: true,
    weatherExposed: true,
  },
  'ibc-2012': {
    aboveConcrete: inches(1, 'ibc-2304-12', 'secondary'),
    aboveEarth: inches(6, 'ibc-2304-12', 'secondary'),
    join: 'both',
    barrier: true,
    weatherExposed: true,
  },
  'ibc-2018': {
    aboveConcrete: inches(1, 'ibc-2304-12', 'secondary'),
    aboveEarth: inches(8, 'ibc-2304-12', 'secondary'),
    join: 'both',
    barrier: true,
    weatherExposed: false,
  },
}
