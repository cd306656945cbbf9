import { leastOpenPressure, type Slopes, workedLeastRoofPush, workedRoofPush } from '../../engineering/loads/roofPush.ts'
import { weakest } from '../../engineering/showing.ts'
import type { LoadEstimate } from '../../model/spec.ts'
import type { Worked } from '../../model/worked.ts'
import { pascals } from '../../units/quantity.ts'
import type { RoofWind } from './roofWind.ts'

/** Wind in allowable-stress combinations. Source: asce-7-16-2. */
const windShare = 0.6
const postsOfFrame = 2

/**
 * Sideways load at one post of an open building from wind on its roof alone, shared by the two posts of the frame; null for a level
 * roof, which gives wind no outline here.
 */
export function sidewaysDemand(
  { span, bay, overhang, roofAngle: angle, roof }: LoadEstimate,
  winds: readonly RoofWind[],
): Readonly<{ lateral: Worked; worked: readonly Worked[] }> | null {
  const slopes: Slopes = roof === 'free-monoslope' ? 'one' : 'two'
  const frame = { span, bay, overhang, angle, slopes }
  const pushes = winds
    .filter((one) => one.wind !== 'along')
    .map(({ windward, leeward }) =>
      workedRoofPush(
        { ...frame, windward: pascals(windward.value), leeward: pascals(leeward.value) },
        { standings: [windward.standing, leeward.standing], sources: windward.sources },
      ),
    )
  const least = workedLeastRoofPush({ ...frame, pressure: leastOpenPressure.value }, { standings: [leastOpenPressure.standing] })
  const most = pushes.reduce((best, one) => (one.value > best.value ? one : best), least)
  if (!(most.value > 0)) return null
  const push = pushes.reduce<Worked | null>((best, one) => (best && best.value >= one.value ? best : one), null)
  const lateral: Worked = {
    id: 'demand-lateral',
    value: (windShare * most.value) / postsOfFrame,
    quantity: 'force',
    formula: String.raw`P = \frac{f_W \max(H,\ H_{least})}{m}`,
    inputs: [
      { symbol: 'f_W', name: 'windFactor', value: windShare, quantity: 'ratio' },
      ...(push ? [{ symbol: 'H', name: 'push', value: push.value, quantity: 'force' as const }] : []),
      { symbol: 'H_{least}', name: 'leastPush', value: least.value, quantity: 'force' },
      { symbol: 'm', name: 'posts', value: postsOfFrame, quantity: 'count' },
    ],
    sources: [...new Set([...most.sources, 'asce-7-16-2' as const])],
    standing: weakest(most.standing, 'secondary'),
  }
  return { lateral, worked: push ? [push, least] : [least] }
}
