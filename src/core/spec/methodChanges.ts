import type { Issue } from '../model/issue.ts'
import type { PierDocument } from '../model/spec.ts'
import { loadPaths } from './filledInLoads.ts'
import { valueAt } from './path.ts'
import { places } from './placement.ts'
import { toSI } from '../units/factors.ts'

/**
 * A change in how a pier is reckoned, after which the same pier may be given another number or verdict. `until`: the last version of the job
 * file that was written before it. `concerns`: piers whose numbers it may move.
 */
type MethodChange = Readonly<{ id: string; until: number; concerns: (document: PierDocument) => boolean }>

const mixed = ({ spec }: PierDocument): boolean => places(spec, 'concrete')
const pressed = ({ spec }: PierDocument): boolean => Boolean(spec.loads.entered?.gravity || spec.loads.estimate)
const pushed = ({ spec }: PierDocument): boolean => Boolean(spec.loads.entered?.lateral || spec.loads.estimate)
const weak = toSI(2500, 'psi')

/** Every change since the first release, in the order in which people are told. A key of words each. */
export const methodChanges = [
  {
    id: 'loads-filled-in',
    until: 1,
    concerns: ({ spec, origins }) => loadPaths.some((path) => origins[path] === 'assumed' && typeof valueAt(spec, path) === 'number'),
  },
  {
    id: 'drawing-uplift-used',
    until: 1,
    concerns: ({ spec }) => spec.loads.entered === null && spec.loads.estimate === null && Boolean(spec.callout?.uplift),
  },
  {
    id: 'nought-not-asked',
    until: 1,
    concerns: ({ spec: { loads } }) => [loads.entered?.uplift, loads.entered?.gravity, loads.entered?.lateral].includes(0 as never),
  },
  { id: 'bearing-under-concrete', until: 1, concerns: (document) => mixed(document) && pressed(document) },
  { id: 'pull-through-concrete', until: 1, concerns: mixed },
  { id: 'weak-concrete', until: 1, concerns: (document) => mixed(document) && document.spec.concrete.strength < weak },
  { id: 'bell-counted-apart', until: 1, concerns: ({ spec }) => spec.hole.bell !== null },
  { id: 'bracket-hinge', until: 1, concerns: (document) => document.spec.support.kind === 'bracket' && pushed(document) },
  { id: 'years-by-evidence', until: 1, concerns: () => true },
  { id: 'dry-mix-mass', until: 1, concerns: ({ spec }) => places(spec, 'dry-mix') },
] as const satisfies readonly MethodChange[]
export type MethodChangeId = (typeof methodChanges)[number]['id']

/** What has moved in this pier since the version of the file that it comes from; nothing for a file of this version. */
export const changesSince = (version: unknown, document: PierDocument): readonly Issue[] =>
  methodChanges
    .filter(({ until, concerns }) => typeof version === 'number' && version <= until && concerns(document))
    .map(({ id }) => ({ code: id, severity: 'changed', path: '' }))
