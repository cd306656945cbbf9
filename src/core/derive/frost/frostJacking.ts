import { castRoles } from '../../model/solid.ts'
import { adfreezeBond, workedAdfreezeForce } from '../../engineering/soil/adfreeze.ts'
import { presumptiveFriction, workedPresumptiveFriction } from '../../engineering/soil/presumptiveFriction.ts'
import { workedSideFriction } from '../../engineering/soil/sideFriction.ts'
import { weakest } from '../../engineering/showing.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { type Metres, metres, pascals } from '../../units/quantity.ts'
import { makeCheck } from '../check.ts'
import type { PierFrame } from '../pierFrame.ts'
import { countedLength } from '../uplift/countedLength.ts'
import { type SoilColumn, soilsBetween } from '../uplift/soilColumn.ts'

const warning: Counting = { counted: "engineer's judgement", why: 'frost-jacking-is-a-warning', sources: ['cfem-2006', 'crrel-tr-145'] }
const cleanGround: Counting = { counted: 'not counted', why: 'frost-grips-clean-ground-less', sources: ['cfem-2006'] }

/** Classes that hold little water and few fines, for which nobody gives a bond. */
const clean = new Set(['crystalline-rock', 'foliated-rock', 'gravel'])

/**
 * What freezing ground may pull up on the side of the pier, beside what would hold it: the weight that hangs on the post and the friction
 * below the frost at its upper bound. A warning whichever is more, and never a ratio. Null without frost.
 */
export function frostJacking(frame: PierFrame, column: SoilColumn, weight: Worked): Check | null {
  const { spec, lifts } = frame
  const { frostDepth, soil } = spec.site
  if (!(frostDepth > 0)) return null
  const cast = lifts.filter((lift) => castRoles.has(lift.role)).map((lift) => lift.id)
  const grip = gripped(frame)
  if (!grip) return null
  const where = grip.isPost ? ['post'] : cast
  const base = { id: 'frost-jacking', group: 'frost', where } as const
  if (soil.kind === 'presumptive' && clean.has(soil.class)) {
    return makeCheck({ ...base, worked: [], allowable: null, counting: cleanGround })
  }
  const bond = adfreezeBond['fine-to-concrete-or-wood']
  const heave = workedAdfreezeForce({ bond: bond.value, perimeter: grip.perimeter, frozen: grip.frozen }, { standings: [bond.standing] })
  const friction = frictionBelow(frame, column)
  const hold: Worked = {
    id: 'frost-balance',
    value: weight.value + (friction?.value ?? 0),
    quantity: 'force',
    formula: friction ? 'B = D + R' : 'B = D',
    inputs: [
      { symbol: 'D', name: 'weight', value: weight.value, quantity: 'weight' },
      ...(friction ? [{ symbol: 'R', name: 'friction', value: friction.value, quantity: 'force' as const }] : []),
    ],
    sources: [...new Set([...weight.sources, ...(friction?.sources ?? [])])],
    standing: weakest(weight.standing, friction?.standing ?? 'definition'),
  }
  const { ratio: _, ...check } = makeCheck({
    ...base,
    worked: [weight, ...(friction ? [friction] : [])],
    allowable: hold,
    counting: warning,
    demand: heave,
  })
  return check
}

/**
 * Outline and depth that frozen ground takes hold of: the hole where mix is cast against it up there, else the post in what was put back.
 * Null for a pier that reaches no frozen ground.
 */
function gripped(frame: PierFrame): Readonly<{ perimeter: Metres; frozen: Metres; isPost: boolean }> | null {
  const { spec, lifts, foot, standing, profile } = frame
  const top = lifts[lifts.length - 1]
  const isPost = top === undefined || !castRoles.has(top.role)
  const { shape, width, depth } = postSections[spec.post.section]
  if (isPost && standing === null) return null
  const bottom = isPost ? -foot : -profile.bottom
  const frozen = Math.min(spec.site.frostDepth, bottom)
  if (!(frozen > 0)) return null
  const round = isPost ? (shape === 'round' ? Math.PI * width : 2 * (width + depth)) : Math.PI * spec.hole.diameter
  return { perimeter: metres(round), frozen: metres(frozen), isPost }
}

/** The code's friction for piers that are pushed down, over what is cast below the frost: more than may be hoped for. */
function frictionBelow(frame: PierFrame, column: SoilColumn): Worked | null {
  const length = countedLength(frame)
  if (!length) return null
  const bearing = pascals(Math.max(...soilsBetween(column, length).map((values) => values.bearing)))
  const { diameter } = frame.spec.hole
  const shear = presumptiveFriction({ bearing, diameter })
  const shown = workedPresumptiveFriction({ bearing, diameter })
  if (shear === null || shown === null) return null
  return workedSideFriction(
    { shear, perimeter: length.perimeter, length: metres(length.to - length.from) },
    { id: 'friction-below-frost', standings: [shown.standing], sources: shown.sources },
  )
}
