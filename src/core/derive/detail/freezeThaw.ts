import { freezeThawClass } from '../../engineering/concrete/freezeThawClass.ts'
import { type FreezeThaw, freezeThawStrength, nonStructuralFreezeThaw } from '../../engineering/tables/concrete.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { makeCheck } from '../check.ts'
import { given, limitOf } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { mixBetween } from '../placedZones.ts'

const classes = Object.keys(freezeThawStrength) as FreezeThaw[]

/**
 * Strength against the freeze-thaw class of structural concrete. The class is read off the pier and said to be a reading; the figures of
 * every class are shown, so that another may be taken.
 */
export function freezeThaw(
  frame: PierFrame,
  { where, allowable, inOpen }: Readonly<{ where: readonly string[]; allowable: Worked; inOpen: boolean }>,
): Check {
  const { spec } = frame
  const found = freezeThawClass({
    weathering: spec.site.weathering,
    inFrozenGround: spec.site.frostDepth > 0 && topOfMix(frame) < spec.site.frostDepth,
    inOpen,
    holdsWater: spec.top.shape !== 'crowned' || spec.top.heaped > 0,
  })
  const row = freezeThawStrength[found]
  return makeCheck({
    id: 'freeze-thaw',
    group: 'detail',
    where,
    worked: [
      ...classes.map((one) => limitOf(`freeze-thaw-${one}`, freezeThawStrength[one].strength, 'strength')),
      limitOf('freeze-thaw-non-structural', nonStructuralFreezeThaw[found], 'strength'),
      ...(row.maxWaterCement === null
        ? []
        : [given('freeze-thaw-water', row.maxWaterCement, 'ratio', { sources: ['aci-318-19-19-3'], standing: 'from memory' })]),
    ],
    allowable,
    demand: { ...limitOf('freeze-thaw-least', row.strength, 'strength'), standing: 'assumed here' },
    counting: { counted: "engineer's judgement", why: `freeze-thaw-is-${found}`, sources: ['aci-318-19-19-3', 'ibc-1904-2', 'assumption'] },
  })
}

/** Depth of the highest concrete below the ground at the downhill edge [m]; negative above it. */
function topOfMix(frame: PierFrame): number {
  const top = mixBetween(frame, frame.profile.shaftRadius)?.top ?? frame.fillBottom
  return -top - frame.spec.site.slope * frame.profile.shaftRadius
}
