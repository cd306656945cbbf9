import type { Counting } from '../../model/kind.ts'
import type { Depths, QuantityLine } from '../../model/result.ts'
import { nativeRoles } from '../../model/solid.ts'
import type { Zone } from '../../model/zone.ts'
import type { Worked } from '../../model/worked.ts'
import { metres, type Pascals } from '../../units/quantity.ts'
import { countingOf, inRangeOfCode, lessCounted } from '../counting.ts'
import { bearingBody } from '../depths.ts'
import type { PierFrame } from '../pierFrame.ts'
import { endOfPost, spreadByConcrete, type SpreadArea, type Under, underPost, wholeBottom } from './spread.ts'

/** What stands on the ground at the bottom of the pier, how much of it there is, and whether that may be counted. */
export type BearingSite = Readonly<{
  area: Worked
  /** How the area was come to. */
  steps: readonly Worked[]
  counting: Counting
  where: readonly string[]
  /** Weight of what bears on that area [N], dry, and its volume below grade [m3]. */
  weight: number
  volume: number
}>

const onItsEnd: Counting = { counted: 'counted', why: 'post-stands-on-its-end', sources: ['ibc-1807-3-2-3'] }
const onLooseSoil: Counting = { counted: 'not counted', why: 'bears-on-loose-soil', sources: ['ibc-1807-3-3'] }
const inTopsoil: Counting = { counted: 'not counted', why: 'bears-in-topsoil', sources: [] }
const weakFill: Counting = { counted: 'not counted', why: 'concrete-below-code', sources: ['aci-318-19-14'] }
const spreads: Readonly<Record<SpreadArea['as'], Counting>> = {
  whole: { counted: 'counted', why: 'bears-on-whole-bottom', sources: ['ibc-1807-3-2-3', 'aci-318-19-14'] },
  part: { counted: 'counted', why: 'bears-on-what-spreads', sources: ['ibc-1807-3-2-3', 'aci-318-19-14', 'irc-r403-1-1'] },
  'too thin': { counted: 'counted', why: 'concrete-too-thin-to-spread', sources: ['ibc-1807-3-2-3', 'aci-318-19-14', 'irc-r403-1-1'] },
}

/** Concrete, or dry mix, whose strength decides by itself whether it counts. */
const isMix = (under: Under): boolean => under.on === 'body' && (under.role === 'concrete' || under.role === 'dry-mix')

/**
 * What of the bottom bears: the part over which the concrete under the post spreads its load; of a post whose end reaches the ground or the
 * gravel, that end alone, since nothing that may be counted hands its load to the concrete around it.
 */
function bearing(frame: PierFrame, under: Under, allowable: Pascals): Pick<BearingSite, 'area' | 'steps' | 'counting'> {
  const { spec } = frame
  if (under.on === 'ground') return { area: endOfPost(frame), steps: [], counting: onItsEnd }
  if (!isMix(under)) {
    const counting = under.role === 'flowable-fill' ? weakFill : onLooseSoil
    return { area: wholeBottom(frame), steps: [], counting }
  }
  const { strength } = countingOf(spec)
  // A base of concrete spreads the load whatever lies on it.
  const hasBase = spec.hole.base?.material === 'concrete'
  const mix = strength.counted === 'not counted' && hasBase ? metres(0) : under.thickness
  const { area, steps, as } = spreadByConcrete(frame, mix, allowable)
  const own = hasBase ? spreads[as] : strength
  return { area, steps, counting: own.counted === 'not counted' ? own : lessCounted(inRangeOfCode(spec, spreads[as]), own) }
}

/** @param allowable pressure of the ground that it stands on [Pa] */
export function bearingSite(
  frame: PierFrame,
  { lines, zones, depths }: Readonly<{ lines: readonly QuantityLine[]; zones: readonly Zone[]; depths: Depths }>,
  allowable: Pascals,
): BearingSite {
  const { spec, standing } = frame
  const under = underPost(frame)
  const hasBase = spec.hole.base?.material === 'concrete'
  const found = bearing(frame, under, allowable)
  const isOnEnd = under.on === 'ground'
  const bears = new Set(
    lines
      .filter((line) => !isOnEnd && !nativeRoles.has(line.role) && (line.id !== 'base' || hasBase) && line.role !== 'wood')
      .map((line) => line.id),
  )
  // What lies beside the part that bears stands on the ground by itself.
  const share = found.area.value / wholeBottom(frame).value
  const partOf = (id: string): number => (bears.has(id) ? share : id === 'post' && standing !== null ? 1 : 0)
  const counting = spec.hole.base?.material === 'loose-soil' ? onLooseSoil : found.counting
  return {
    ...found,
    counting: depths.bearingAtDownhillEdge > spec.site.topsoil ? counting : inTopsoil,
    where: isOnEnd ? ['post'] : bearingBody(frame),
    weight: lines.reduce((sum, line) => sum + partOf(line.id) * line.weight, 0),
    volume: zones.reduce((sum, zone) => sum + (zone.build === 'swept' ? partOf(zone.id) * zone.inHole : 0), 0),
  }
}
