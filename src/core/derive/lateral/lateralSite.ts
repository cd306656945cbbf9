import { countingOf, lessCounted } from '../counting.ts'
import { bearingLevel } from '../depths.ts'
import { given, lengthTerm } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { type SoilColumn, soilsBetween } from '../uplift/soilColumn.ts'
import { lateralBelowWater, workedLateralBelowWater } from '../../engineering/soil/lateralBelowWater.ts'
import { workedHeightAboveSoundGround } from '../../engineering/soil/lateralGround.ts'
import { lateralDepthLimit } from '../../engineering/soil/lateralNonconstrained.ts'
import { workedBearingWidth } from '../../engineering/soil/lateralWidth.ts'
import { effectiveStress } from '../../engineering/soil/verticalStress.ts'
import { backfillMinimum } from '../../engineering/tables/concrete.ts'
import { waterUnitWeight } from '../../engineering/tables/materials.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { fillKind } from '../../kinds/index.ts'
import type { Counting } from '../../model/kind.ts'
import type { Demand } from '../../model/result.ts'
import type { Worked } from '../../model/worked.ts'
import { type Metres, type PressureGradient, metres } from '../../units/quantity.ts'

/** What every sideways check of one pier starts from. */
export type LateralSite = Readonly<{
  column: SoilColumn
  width: Worked
  /** Embedment that counts, below the sound ground at the downhill edge, and no more than the code's rule covers [m]. */
  depth: Worked
  /** Height of the force above that ground, when a force is known. */
  height: Worked | null
  /** What lies between grade on the axis and the ground that counts [m]. */
  lost: Metres
  /** From grade at the downhill edge down to where the embedment begins and ends [m]. */
  from: Metres
  to: Metres
  gradient: Worked
  counting: Counting
  where: readonly string[]
}>

/** Slopes past this are no longer level ground, for which the code's rule is written. Source: assumption. */
const levelEnough = 0.1
const nothingEntered: Counting = { counted: 'not counted', why: 'no-sideways-value', sources: ['user'] }
const noPressure: Counting = { counted: 'not counted', why: 'ground-no-heavier-than-water', sources: ['user'] }
/** A hinge hands on a push, and no moment of it. */
const aboveHinge: Counting = { counted: 'not counted', why: 'hinge-passes-no-moment', sources: ['statics'] }
/** The width of the hole bears sideways where the concrete around a post is at least as strong as the code asks for. */
const weakAround: Counting = { counted: 'not counted', why: 'concrete-around-post-too-weak', sources: [backfillMinimum.source] }
const onSlope: Counting = { counted: "engineer's judgement", why: 'sideways-on-slope', sources: ['computed-here'] }

/** Null where no embedment is left below the soil that carries nothing. */
export function lateralSite(frame: PierFrame, column: SoilColumn, demand: Demand): LateralSite | null {
  const { spec, profile, foot } = frame
  const { lateralWidth } = fillKind(spec.fill.kind)
  const drop = spec.site.slope * profile.shaftRadius
  const bottom = lateralWidth === 'hole' ? bearingLevel(frame) : foot
  const from = spec.site.topsoil
  const to = metres(-bottom - drop)
  if (!(to > from)) return null
  const lost = metres(drop + from)
  const counted = Math.min(to - from, lateralDepthLimit.value)
  const height = demand.lateralHeight
  const gradient = weakestGradient(column, from, to)
  const isEntered = soilsBetween(column, { from, to }).every((values) => values.lateral > 0)
  const ground = gradient.value > 0 ? (spec.site.slope > levelEnough ? onSlope : null) : isEntered ? noPressure : nothingEntered
  const { sideways } = countingOf(spec)
  const isWeak = lateralWidth === 'hole' && spec.support.kind === 'embedded' && spec.concrete.strength < backfillMinimum.value * (1 - 1e-9)
  const isAboveHinge = spec.support.kind === 'bracket' && height !== null && height > foot + 1e-9
  return {
    column,
    width:
      lateralWidth === 'hole'
        ? given('bearing-width', spec.hole.diameter, 'length', {
            formula: 'b = D',
            inputs: [lengthTerm('D', 'diameter', spec.hole.diameter)],
          })
        : postWidth(frame),
    depth: given('embedment', counted, 'length', {
      formula: String.raw`d = d_{dn} - t_0 \le 12\ \mathrm{ft}`,
      inputs: [lengthTerm('d_{dn}', 'depth', to), lengthTerm('t_0', 'topsoil', from)],
    }),
    height: height === null ? null : workedHeightAboveSoundGround({ height, lost }),
    lost,
    from,
    to,
    gradient,
    counting: isAboveHinge ? aboveHinge : isWeak ? weakAround : ground ? lessCounted(sideways, ground) : sideways,
    where: lateralWidth === 'hole' ? frame.lifts.map((lift) => lift.id) : ['post'],
  }
}

function postWidth({ spec }: PierFrame): Worked {
  const { shape, width, depth } = postSections[spec.post.section]
  return workedBearingWidth({ width, depth, round: shape === 'round' })
}

/** The least gain of pressure among the soils passed, taken down for water as at the foot of the embedment. */
function weakestGradient(column: SoilColumn, from: Metres, to: Metres): Worked {
  const effective = column.stress(to)
  const moist = effectiveStress(column.layers, null, waterUnitWeight.value, to)
  const all = soilsBetween(column, { from, to }).map((values) => {
    const inputs = { gradient: values.lateral, effective, moist }
    return { value: lateralBelowWater(inputs), inputs, values }
  })
  const least = all.reduce((best, one) => (one.value < best.value ? one : best))
  const { source, tableStanding: standing } = least.values
  return effective < moist
    ? workedLateralBelowWater(least.inputs, { id: 'lateral-gradient', standings: [standing], sources: [source] })
    : given('lateral-gradient', least.value, 'gradient', { formula: 'L_t', sources: [source], standing })
}

export const gradientOf = ({ gradient }: LateralSite): PressureGradient => gradient.value as PressureGradient

/** The same ground with frost left out as well, for who would not count ground that thaws; null where frost goes no deeper than topsoil. */
export function belowFrost(site: LateralSite, frostDepth: Metres): Readonly<{ depth: Metres; height: Metres }> | null {
  const more = frostDepth - site.from
  if (!(more > 0) || !site.height) return null
  return { depth: metres(Math.max(0, Math.min(site.to - frostDepth, lateralDepthLimit.value))), height: metres(site.height.value + more) }
}

/** Without a load and its height the rule gives no number, whatever may be counted. */
export const withoutLoad = (counting: Counting): Counting =>
  counting.counted === 'not counted' ? counting : { ...counting, why: 'needs-load-and-height' }
