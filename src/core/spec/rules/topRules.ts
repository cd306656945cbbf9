import { leastLeft } from '../dimensions.ts'
import { exceeds, error, fallsShort, lengths, type Rule, when } from './rule.ts'

/** Steepest crown or dish that stays where it is trowelled, 1 up in 1 out. Source: common-practice, no source. */
const steepest = 1

/** A finished top must end above the foot, the base, the bell and the narrow end of a wider mouth. */
export const topRules: Rule = (spec, d) => {
  const finished = d.top
  if (finished === null) return []
  const { hole, top } = spec
  const held = (spec.support.kind === 'embedded' ? Math.max(d.foot, d.baseTop) : d.baseTop) + leastLeft
  const wall = Math.max(hole.bell === null ? d.bottom : d.bottom + hole.bell.height, hole.flare === null ? d.bottom : -hole.flare.depth)
  const floor = Math.max(held, wall + leastLeft)
  const uphill = -d.gradeAt(d.radius)
  const width = d.radius - d.inner
  const shaped = top.shape !== 'flat'
  const isLow = fallsShort(finished.rim, floor)
  return [
    ...when(isLow, () => error('rim-too-low', 'top.rim', lengths(top.rim, floor - uphill))),
    ...when(shaped && width > 0 && exceeds(top.rise, steepest * width), () =>
      error('crown-too-steep', 'top.rise', { ...lengths(top.rise, steepest * width), sources: ['common-practice'] }),
    ),
    ...when(!isLow && fallsShort(finished.inner, held), () => error('dish-too-deep', 'top.rise', lengths(top.rise, finished.rim - held))),
  ]
}
