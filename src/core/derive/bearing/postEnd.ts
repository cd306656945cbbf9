import { plainReduction, workedPlainBearing } from '../../engineering/concrete/plainConcrete.ts'
import { footingRules } from '../../engineering/concrete/plainFooting.ts'
import { loadDuration } from '../../engineering/wood/connectionFactors.ts'
import { workedEndBearing } from '../../engineering/wood/endBearing.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { postDesignValues } from '../../engineering/tables/species.ts'
import type { Counting } from '../../model/kind.ts'
import type { Check, Worked } from '../../model/worked.ts'
import { makeCheck } from '../check.ts'
import { countingOf, inRangeOfCode } from '../counting.ts'
import type { PierFrame } from '../pierFrame.ts'
import { postArea } from '../postArea.ts'
import { underPost } from './spread.ts'

const counted: Counting = { counted: 'counted', why: 'post-end-on-concrete', sources: ['nds-2018-3-10', 'aci-318-19-14'] }

/**
 * The end of the post on the concrete under it: what the wood may press with along its grain, and what the concrete there bears; the lesser.
 * Null on a bracket, whose steel is for its own rating, and for a post that stands on the ground, which gives way first.
 */
export function postEnd(frame: PierFrame, load: Worked | null): Check | null {
  const { spec, standing, fillBottom, foot } = frame
  const under = underPost(frame)
  if (standing === null || under.on === 'ground' || (under.role !== 'concrete' && under.role !== 'dry-mix')) return null
  const section = postSections[spec.post.section]
  const { compression, wet } = postDesignValues(spec.post.species, section.make)
  const area = postArea(spec.post.section)
  const wood = workedEndBearing(
    { compression: compression.value, wet: wet.compression.value, duration: loadDuration.occupancy.value, area },
    { standings: [compression.standing, wet.compression.standing], sources: [compression.source] },
  )
  const concrete = workedPlainBearing({
    strength: spec.concrete.strength,
    area,
    reduction: plainReduction.value,
    loadFactor: footingRules.loadFactor.value,
  })
  const isOnBase = foot <= fillBottom + 1e-9
  const { strength } = countingOf(spec)
  return makeCheck({
    id: 'post-end-on-concrete',
    group: 'bearing',
    where: ['post'],
    worked: [wood, concrete],
    allowable: wood.value <= concrete.value ? wood : concrete,
    counting: !isOnBase && strength.counted === 'not counted' ? strength : inRangeOfCode(spec, counted),
    ...(load ? { demand: load } : {}),
  })
}
