import { strengthGainConstants } from '../../engineering/concrete/strengthGain.ts'
import { freezeThawClass } from '../../engineering/concrete/freezeThawClass.ts'
import { waterCementForStrength, workedRatioWithAdded, workedStrengthLeft } from '../../engineering/mix/addedWater.ts'
import { airForExposure } from '../../engineering/mix/airForExposure.ts'
import { dayOfShare, strengthBand, workedDayOfShareLatest, workedDayOfShareSoonest } from '../../engineering/mix/strengthBand.ts'
import { cementPerVolume } from '../../engineering/tables/hydration.ts'
import { waterUnitWeight } from '../../engineering/tables/materials.ts'
import { fromPrinted } from '../../engineering/cited.ts'
import type { MixedConcrete } from '../../model/timeResult.ts'
import type { PierSpec } from '../../model/spec.ts'
import type { Worked } from '../../model/worked.ts'
import { seconds } from '../../units/quantity.ts'
import { given } from '../given.ts'

/** Days at which the curve is drawn. */
const days = [0, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 18, 20, 22, 24, 26, 28] as const
/** Stone of common ready mix. Assumed here. */
const aggregate = '3/4'

/** Concrete that was mixed before it was placed: strength by age, the day of a share, water added, air. */
export function mixedConcrete(spec: PierSpec): MixedConcrete {
  const { placing } = spec
  const curve = { temperature: placing.temperature, ...strengthGainConstants.moist[placing.cement] }
  const gain = days.flatMap((day) => {
    const age = seconds(fromPrinted(day, 'd'))
    const band = strengthBand({ age, ...curve })
    return band ? [{ age, share: { low: band.low, high: band.high } }] : []
  })
  const day = dayOfShare({ share: placing.share, ...curve })
  const soonest = workedDayOfShareSoonest({ share: placing.share, ...curve })
  const latest = workedDayOfShareLatest({ share: placing.share, ...curve })
  const added = addedWater(spec)
  const air = airAsked(spec)
  return {
    as: 'mixed',
    gain,
    loadDay: day && { low: day.soonest, high: day.latest },
    share: placing.share,
    added,
    air,
    worked: [...[soonest, latest].filter((one) => one !== null), ...added, ...air.worked],
  }
}

/** Water over cement with what was added at the site, and what is left of the strength, for the leanest and the richest mix. */
function addedWater({ placing, concrete }: PierSpec): readonly Worked[] {
  const airEntrained = placing.air === 'yes'
  const ratio = waterCementForStrength({ strength: concrete.strength, airEntrained })
  if (ratio === null || !(placing.addedWater > 0)) return []
  return (['low', 'high'] as const).flatMap((end) => {
    const cement = cementPerVolume[end]
    const inputs = { ratio, cement: cement.value, added: placing.addedWater, water: waterUnitWeight.value }
    const use = (id: string) => ({ id: `${id}-${end === 'low' ? 'lean' : 'rich'}`, standings: [cement.standing], sources: [cement.source] })
    const left = workedStrengthLeft({ ...inputs, airEntrained }, use('strength-left'))
    return [workedRatioWithAdded(inputs, use('ratio-with-added')), ...(left ? [left] : [])]
  })
}

/** Air that the freeze-thaw class asks for, as the check of strength reads the pier. */
function airAsked({ site, top }: PierSpec): MixedConcrete['air'] {
  const exposure = freezeThawClass({
    weathering: site.weathering,
    inFrozenGround: site.frostDepth > 0,
    inOpen: true,
    holdsWater: top.shape !== 'crowned' || top.heaped > 0,
  })
  const target = airForExposure({ exposure, aggregate })
  if (target === null) return { asked: false, worked: [] }
  const from = { sources: target.sources, standing: target.standing }
  return {
    asked: true,
    worked: [
      given('air-least', target.low, 'ratio', from),
      given('air-target', target.target, 'ratio', from),
      given('air-most', target.high, 'ratio', from),
    ],
  }
}
