import type { CalloutItem } from '../../model/calloutResult.ts'
import { weighing } from '../unitWeights.ts'
import { amount, type CalloutContext, item, number, reaches, share } from './item.ts'

/** Weight of mixed concrete in so much of a round hole [N]. */
const concreteWeight = ({ frame }: CalloutContext, area: number, height: number): number =>
  weighing('concrete', frame.spec).moist * area * height
const circle = (diameter: number): number => (Math.PI * diameter ** 2) / 4

const lowest = ({ frame }: CalloutContext): readonly string[] => frame.lifts.slice(0, 1).map((lift) => lift.id)

/** Width of the straight part of the hole. What it holds goes with the square. */
export function diameterItem(context: CalloutContext): CalloutItem {
  const { callout, frame } = context
  const { diameter, depth } = frame.spec.hole
  const drawn = callout.diameter
  const tolerance = callout.tolerance.diameter
  return item({
    id: 'diameter',
    drawn: drawn === null ? null : number(drawn, 'length'),
    set: number(diameter, 'length'),
    where: lowest(context),
    verify: ['measure-hole', 'photo-before-filling'],
    tolerance,
    find: () => {
      const asked = drawn ?? 0
      return {
        verdict: reaches(diameter, asked, tolerance) ? 'meets' : 'falls short',
        why: reaches(diameter, asked, tolerance) ? 'hole-not-narrower' : 'hole-narrower',
        difference: diameter - asked,
        consequences: [
          ...share('hole-volume', circle(diameter), circle(asked)),
          ...amount('concrete-weight', concreteWeight(context, circle(diameter) - circle(asked), depth), 'weight'),
        ],
      }
    },
  })
}

/** Depth of what bears, below the downhill edge: where the pier stands least deep. */
export function depthItem(context: CalloutContext): CalloutItem {
  const { callout, frame, depths } = context
  const set = depths.bearingAtDownhillEdge
  const drawn = callout.depth
  const tolerance = callout.tolerance.depth
  return item({
    id: 'depth',
    drawn: drawn === null ? null : number(drawn, 'length'),
    set: number(set, 'length'),
    where: lowest(context),
    verify: ['measure-depth', 'photo-before-filling'],
    tolerance,
    find: () => {
      const asked = drawn ?? 0
      const isDeep = reaches(set, asked, tolerance)
      const area = circle(frame.spec.hole.diameter)
      return {
        verdict: isDeep ? 'meets' : 'falls short',
        why: isDeep ? 'not-less-deep' : 'less-deep',
        difference: set - asked,
        consequences: [
          ...share('shaft-length', set, asked),
          ...amount('concrete-weight', concreteWeight(context, area, set - asked), 'weight'),
          ...(isDeep ? [] : amount('below-frost', set - frame.spec.site.frostDepth, 'length')),
        ],
      }
    },
  })
}

/** The frost depth that the drawing takes: what bears must be below it, and the site must not freeze deeper than the drawing says. */
export function frostItem(context: CalloutContext): CalloutItem {
  const { callout, frame, depths } = context
  const set = depths.bearingAtDownhillEdge
  const drawn = callout.frostDepth
  const { frostDepth } = frame.spec.site
  return item({
    id: 'frost',
    drawn: drawn === null ? null : number(drawn, 'length'),
    set: number(set, 'length'),
    where: lowest(context),
    verify: ['measure-depth', 'building-office'],
    sources: ['ibc-1809-5'],
    find: () => {
      const asked = drawn ?? 0
      const isBelow = reaches(set, asked)
      const isSiteWithin = reaches(asked, frostDepth)
      return {
        verdict: isBelow && isSiteWithin ? 'meets' : 'falls short',
        why: isBelow ? (isSiteWithin ? 'below-drawn-frost' : 'site-freezes-deeper') : 'above-drawn-frost',
        difference: set - asked,
        consequences: isSiteWithin ? [] : amount('site-frost', frostDepth - asked, 'length'),
        ...(isBelow && !isSiteWithin ? { verify: ['building-office', 'engineer'] } : {}),
      }
    },
  })
}
