import { weatherFlags } from '../../engineering/mix/weatherFlags.ts'
import { weakest } from '../../engineering/showing.ts'
import type { SourceId } from '../../engineering/sources.ts'
import type { MixResult } from '../../model/timeResult.ts'
import type { PierSpec } from '../../model/spec.ts'
import { metres } from '../../units/quantity.ts'
import { frameOf } from '../pierFrame.ts'
import { dryMix } from './dryMix.ts'
import { mixedConcrete } from './mixedConcrete.ts'

/**
 * What becomes of the mix: water, strength with age, weather. Pure, and apart from `derivePier`.
 * @param spec a valid spec
 */
export function deriveMix(spec: PierSpec): MixResult {
  const frame = frameOf(spec)
  const isMixed = frame.lifts.some((lift) => lift.role === 'concrete')
  const concrete = dryMix(frame) ?? (isMixed ? mixedConcrete(spec) : null)
  const weather =
    concrete === null
      ? []
      : weatherFlags({
          coldestAir: spec.placing.coldestAir,
          concrete: concrete.as === 'mixed' ? spec.placing.temperature : null,
          groundFrozen: spec.placing.groundFrozen === 'yes',
          thickness: metres(Math.min(spec.hole.diameter, spec.hole.depth)),
        })
  const worked = concrete?.worked ?? []
  const sources = new Set<SourceId>([...worked.flatMap((one) => one.sources), ...weather.map((flag) => flag.source)])
  if (concrete?.as === 'dry') sources.add(concrete.trial.source)
  return {
    concrete,
    weather,
    worked,
    sources: [...sources].sort(),
    standing: weakest('definition', ...worked.map((one) => one.standing)),
  }
}
