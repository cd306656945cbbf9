import { retold, weakest } from '../../engineering/showing.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { metres } from '../../units/quantity.ts'
import { blockOfPiersId } from './blockOfPiers.ts'
import { upliftBySoil } from './chain.ts'
import { pullPasses } from './governing.ts'
import { soilsBetween } from './soilColumn.ts'
import type { SoilContext } from './soilContext.ts'

/** Steps that hold a mechanism's side friction, its factor taken off. */
const frictions: ReadonlySet<string> = new Set([
  'side-friction-lower-bound-allowable',
  'side-friction-rational-allowable',
  'side-friction-by-depth-allowable',
  'clay-adhesion-allowable',
  'user-friction',
])

/** The checks with the tension of the concrete held against what hangs below it, by the soil mechanism in use. */
export function withPullBelow(checks: readonly Check[], context: SoilContext, soil: string): readonly Check[] {
  const used = checks.find((check) => check.id === soil)
  return checks.map((check) => {
    const step = (id: string) => check.worked.find((one) => one.id === id)
    const [level, weight] = [step('parting-level'), step('weight-below-plane')]
    const below = used && level && weight && pullPasses(check.id, soil) ? pullBelow(context, { plane: -level.value, weight }, used) : null
    return below ? { ...check, worked: [...check.worked, ...below.worked], demand: below.pull } : check
  })
}

/**
 * What the concrete at its parting level has to carry, or loses if it parts there: the weight that hangs below that level, at its full
 * value, and what the soil mechanism in use holds below it.
 * @param plane the level [m], signed
 * @param weight of the mix below it
 * @param soil the mechanism in use
 */
function pullBelow(
  context: SoilContext,
  { plane, weight }: Readonly<{ plane: number; weight: Worked }>,
  soil: Check,
): Readonly<{ pull: Worked; worked: readonly Worked[] }> {
  const breakout = soil.id === 'breakout-of-ledge' && hasLedgeBelow(context, plane) ? soil.allowable : null
  // Breakout holds the weight of the pier inside it.
  if (breakout) return { pull: retold(breakout, 'pull-below-plane'), worked: [] }
  const held = heldBelow(context, plane, soil)
  const pull: Worked = {
    id: 'pull-below-plane',
    value: weight.value + (held?.value ?? 0),
    quantity: 'force',
    formula: held ? 'T = W_{below} + R_{below}' : 'T = W_{below}',
    inputs: [
      { symbol: 'W_{below}', name: 'weight', value: weight.value, quantity: 'weight' },
      ...(held ? [{ symbol: 'R_{below}', name: 'heldBelow', value: held.value, quantity: 'force' as const }] : []),
    ],
    sources: [...new Set([...weight.sources, ...(held?.sources ?? [])])],
    standing: weakest(weight.standing, held?.standing ?? 'definition'),
  }
  return { pull, worked: held ? [held] : [] }
}

/** Friction of the mechanism over what is left of its length below the plane, or the cone on a ledge down there; null without either. */
function heldBelow(context: SoilContext, plane: number, soil: Check): Worked | null {
  const cone = soil.worked.find((one) => one.id === 'cone-soil-weight')
  if (cone) return hasLedgeBelow(context, plane) ? retold(cone, 'soil-held-below-plane') : null
  const { frame, length } = context
  if (!length) return null
  const drop = frame.spec.site.slope * frame.profile.shaftRadius
  const from = metres(Math.max(length.from, -plane - drop))
  if (!(length.to > from)) return null
  const below = upliftBySoil({
    ...context,
    length: { ...length, from },
    passed: soilsBetween(context.column, { from, to: length.to }),
  }).find((link) => link.id === (soil.id === blockOfPiersId ? 'friction-and-weight' : soil.id))
  const friction = below?.show().worked.find((one) => frictions.has(one.id))
  return friction ? retold(friction, 'friction-below-plane') : null
}

function hasLedgeBelow({ frame, ledge }: SoilContext, plane: number): boolean {
  return ledge !== null && -ledge.depth - frame.spec.site.slope * ledge.radius <= plane + 1e-9
}
