import { postSections } from '../../engineering/tables/postSections.ts'
import type { Counting } from '../../model/kind.ts'
import type { Depths, QuantityLine } from '../../model/result.ts'
import { nativeRoles } from '../../model/solid.ts'
import type { Zone } from '../../model/zone.ts'
import type { Worked } from '../../model/worked.ts'
import { countingOf } from '../counting.ts'
import { bearingBody, bearingRadius } from '../depths.ts'
import { given, lengthTerm } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { postArea } from '../postArea.ts'

/** What stands on the ground at the bottom of the pier, how much of it there is, and whether that may be counted. */
export type BearingSite = Readonly<{
  area: Worked
  counting: Counting
  where: readonly string[]
  /** Weight of what bears [N], dry, and its volume below grade [m3]. */
  weight: number
  volume: number
}>

const rounding = 1e-9

const onItsEnd: Counting = { counted: 'counted', why: 'post-stands-on-its-end', sources: ['ibc-1807-3-2-3'] }
const spread: Counting = { counted: 'counted', why: 'bears-on-whole-bottom', sources: ['ibc-1807-3-2-3'] }
const onLooseSoil: Counting = { counted: 'not counted', why: 'bears-on-loose-soil', sources: ['ibc-1807-3-3'] }
const inTopsoil: Counting = { counted: 'not counted', why: 'bears-in-topsoil', sources: [] }

/**
 * The whole bottom of the pier bears when mix or a pad lies under the post. A post whose end reaches the ground or the gravel bears on that
 * end alone: nothing that may be counted spreads its load.
 */
export function bearingSite(frame: PierFrame, lines: readonly QuantityLine[], zones: readonly Zone[], depths: Depths): BearingSite {
  const { spec, standing, foot, fillBottom } = frame
  const hasPad = spec.hole.base?.material === 'concrete'
  const isOnEnd = standing !== null && !hasPad && foot <= fillBottom + rounding
  const bears = new Set(
    isOnEnd
      ? ['post']
      : lines
          .filter((line) => !nativeRoles.has(line.role) && (line.id !== 'base' || hasPad) && (standing !== null || line.role !== 'wood'))
          .map((line) => line.id),
  )
  const { strength } = countingOf(spec)
  // A pad of concrete under it all spreads the load, whatever stands on it.
  const isOnLoose = spec.hole.base?.material === 'loose-soil'
  const counting = isOnLoose ? onLooseSoil : isOnEnd ? onItsEnd : strength.counted === 'counted' || hasPad ? spread : strength
  return {
    area: isOnEnd ? endOfPost(frame) : wholeBottom(frame),
    counting: depths.bearingAtDownhillEdge > spec.site.topsoil ? counting : inTopsoil,
    where: isOnEnd ? ['post'] : bearingBody(frame),
    weight: lines.reduce((sum, line) => sum + (bears.has(line.id) ? line.weight : 0), 0),
    volume: zones.reduce((sum, zone) => sum + (zone.build === 'swept' && bears.has(zone.id) ? zone.inHole : 0), 0),
  }
}

function wholeBottom(frame: PierFrame): Worked {
  const radius = bearingRadius(frame)
  return given('bearing-area', Math.PI * radius ** 2, 'area', {
    formula: String.raw`A = \pi D^2/4`,
    inputs: [lengthTerm('D', 'diameter', 2 * radius)],
  })
}

function endOfPost({ spec }: PierFrame): Worked {
  const { shape, width, depth } = postSections[spec.post.section]
  const isRound = shape === 'round'
  return given('bearing-area', postArea(spec.post.section), 'area', {
    formula: isRound ? String.raw`A = \pi D^2/4` : 'A = w\\,d',
    inputs: isRound ? [lengthTerm('D', 'diameter', width)] : [lengthTerm('w', 'postWidth', width), lengthTerm('d', 'postDepth', depth)],
  })
}
