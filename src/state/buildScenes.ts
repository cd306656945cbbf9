import { bracketKind, fillKind } from '../core/kinds/index.ts'
import type { PierResult } from '../core/model/result.ts'
import type { Role } from '../core/model/solid.ts'

/** A step of building, and the zones that stand once it is done. */
export type BuildScene = Readonly<{ id: string; zones: ReadonlySet<string> }>

const native: readonly Role[] = ['topsoil', 'soil', 'soil-lower']
/** What a step brings into the hole. What no step names comes with the last one. */
const brings: Readonly<Record<string, Readonly<{ roles: readonly Role[]; id?: RegExp }>>> = {
  'place-base': { roles: ['gravel', 'concrete'], id: /^base/ },
  'place-pad': { roles: ['concrete'] },
  'set-and-brace': { roles: ['wood'] },
  'place-bar': { roles: ['bar'] },
  'place-vertical-bars': { roles: ['bar'] },
  'empty-bags': { roles: ['dry-mix', 'bar'] },
  'pour-dry': { roles: ['dry-mix', 'bar'] },
  'place-mixed': { roles: ['concrete', 'bar'] },
  'pour-flowable': { roles: ['flowable-fill', 'bar'] },
  'granular-in-lifts': { roles: ['granular', 'bar'] },
  'backfill-in-lifts': { roles: ['backfill'] },
  'set-bracket-in-wet-concrete': { roles: ['steel', 'bar'], id: /^bracket/ },
  'set-anchors': { roles: ['steel'], id: /^bracket/ },
  'set-post-on-bracket': { roles: ['wood', 'steel'] },
}

let last: Readonly<{ result: PierResult; scenes: readonly BuildScene[] }> | null = null

/** The steps of building this pier, each with what stands after it: the kind's own steps, and those of its bracket where it is set. */
export function buildScenes(result: PierResult): readonly BuildScene[] {
  if (last?.result !== result) last = { result, scenes: scenesOf(result) }
  return last.scenes
}

function scenesOf({ spec, zones }: PierResult): readonly BuildScene[] {
  const { support } = spec
  const ofBracket = support.kind === 'bracket' ? bracketKind(support.bracket.kind).steps : []
  const steps = fillKind(spec.fill.kind)
    .steps.flatMap((step) => (step === 'set-bracket' ? ['set-bracket', ...ofBracket] : [step]))
    .filter((step, at, all) => all.indexOf(step) === at)
  const standing = new Set(zones.filter(({ role }) => native.includes(role)).map(({ id }) => id))
  return steps.map((id, at) => {
    const brought = brings[id]
    for (const zone of zones)
      if (at === steps.length - 1 || (brought?.roles.includes(zone.role) && (brought.id === undefined || brought.id.test(zone.id))))
        standing.add(zone.id)
    return { id, zones: new Set(standing) }
  })
}
