import type { StepId } from '../../model/saidIds.ts'
import { bracketKind, fillKind } from '../../kinds/index.ts'
import type { BuildStep } from '../../model/buildStep.ts'
import type { PierResult } from '../../model/result.ts'
import { nativeRoles, type Role } from '../../model/solid.ts'
import type { PierSpec } from '../../model/spec.ts'
import type { Zone } from '../../model/zone.ts'
import { mistakes } from './mistakes.ts'
import { stepPractice } from './practice.ts'

/** Seen from above for as long as the pier stands, whatever is placed round them. */
const tall: readonly Role[] = ['wood', 'steel']

/** Steps that place one part alone, and whether a pier has it. */
const onlyWith: Readonly<Partial<Record<StepId, (spec: PierSpec) => boolean>>> = {
  'place-base': ({ hole }) => hole.base !== null,
  'place-bar': ({ bars }) => bars !== null,
  'place-vertical-bars': ({ verticalBars }) => verticalBars !== null,
}

/** Keys of the steps: the fill's own, with those of its bracket where the bracket is set, without those of parts that the pier has not. */
export function stepsOf(spec: PierSpec): readonly StepId[] {
  const { fill, support } = spec
  const ofBracket = support.kind === 'bracket' ? bracketKind(support.bracket.kind).steps : []
  return fillKind(fill.kind)
    .steps.flatMap((step) => (step === 'set-bracket' ? [step, ...ofBracket] : [step]))
    .filter((step, at, all) => all.indexOf(step) === at && (onlyWith[step]?.(spec) ?? true))
}

/**
 * The steps of building a pier, each with what stands once it is done, what is checked, and what can go wrong at it. The steps of a pier
 * stay the same whatever goes wrong, so that a mistake moves nobody to another step.
 * @param spec the pier as it is meant
 * @param result of that pier, or of the pier with its mistakes
 */
export function buildSteps(spec: PierSpec, result: Pick<PierResult, 'zones'>): readonly BuildStep[] {
  const ids = stepsOf(spec)
  const possible = mistakes.filter((mistake) => mistake.applies(spec))
  const standing = new Set(result.zones.filter(({ role }) => nativeRoles.has(role)).map(({ id }) => id))
  const hidden = new Set<string>()
  return ids.map((id, at) => {
    const practice = stepPractice[id]
    const isLast = at === ids.length - 1
    const fresh = result.zones.filter((zone) => !standing.has(zone.id) && (isLast || comesWith(zone, id)))
    if (practice?.covers && fresh.length > 0)
      for (const zone of result.zones)
        if ((standing.has(zone.id) || (fresh.includes(zone) && zone.role === 'bar')) && isCovered(zone)) hidden.add(zone.id)
    for (const zone of fresh) standing.add(zone.id)
    // Legs pushed into wet concrete are out of sight at once.
    for (const zone of fresh) if (zone.id === 'bracket-legs') hidden.add(zone.id)
    return {
      id,
      dangers: practice?.dangers ?? [],
      zones: [...standing],
      hiddenAfter: [...hidden],
      checks: practice?.checks ?? [],
      wrong: possible.filter((mistake) => mistake.at.find((step) => ids.includes(step)) === id).map((mistake) => mistake.id),
      inspection: practice?.inspection === true,
    }
  })
}

const isCovered = ({ role }: Zone): boolean => !nativeRoles.has(role) && !tall.includes(role)

function comesWith(zone: Zone, step: StepId): boolean {
  // Loose soil is what the cleaning has left.
  if (zone.label === 'loose-base') return step === 'clean-out'
  const brings = stepPractice[step]?.brings
  if (!brings?.roles.includes(zone.role)) return false
  // The base comes with its own step alone, though a later step brings the same material.
  if (zone.id === 'base' && step !== 'place-base') return false
  return brings.id === undefined || brings.id.test(zone.id)
}
