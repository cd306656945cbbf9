import type { FieldGroup } from '../../../core/model/field.ts'
import type { PierSpec } from '../../../core/model/spec.ts'
import { wordsOf } from '../../../words/index.ts'
import type { SayNumber } from '../../../core/units/reader.ts'

const word = (path: string, choice: string | number): string => wordsOf('choices')[path]?.[String(choice)] ?? String(choice)

/** A group in a few words while it is closed: what an expert scans for. */
export const groupSummary: Readonly<Record<FieldGroup, (spec: PierSpec, say: SayNumber, shows: (path: string) => boolean) => string>> = {
  site: ({ site }, say) =>
    [
      site.soil.kind === 'presumptive' ? word('site.soil.class', site.soil.class).split(',')[0] : word('site.soil.kind', site.soil.kind),
      wordsOf('app').fields.slope(say(site.slope, 'slope')),
    ].join(', '),
  hole: ({ hole }, say) => `${say(hole.diameter, 'length')} × ${say(hole.depth, 'length')}`,
  post: ({ post }) => `${word('post.section', post.section)}, ${word('post.species', post.species).toLowerCase()}`,
  fill: ({ fill }) => wordsOf('fills')[fill.kind].label,
  steel: ({ support, bars }, say) =>
    support.kind === 'bracket'
      ? wordsOf('brackets')[support.bracket.kind].label
      : bars
        ? `${bars.count > 1 ? `${bars.count} × ` : ''}${bars.size}, ${say(bars.length, 'length')}`
        : wordsOf('app').fields.none,
  top: ({ top }, say) =>
    top.shape === 'flat' ? word('top.shape', top.shape) : `${word('top.shape', top.shape)}, ${say(top.rise, 'length')}`,
  concrete: ({ concrete, piers }, say, shows) =>
    [
      shows('concrete.strength') ? say(concrete.strength, 'strength') : wordsOf('app').fields.extra(say(concrete.waste, 'ratio')),
      ...(piers > 1 ? [wordsOf('app').fields.piers(piers)] : []),
    ].join(', '),
  water: ({ water }) => word('water.ground', water.ground),
  loads: ({ loads, callout }, say) => {
    const { estimate, none } = wordsOf('app').fields
    const uplift = loads.entered?.uplift ?? (loads.estimate && !loads.entered ? null : callout?.uplift)
    return uplift ? say(uplift, 'force') : loads.estimate ? estimate : none
  },
  years: ({ life, costs }, say) => [word('life.reference', life.reference), ...(costs ? [say(costs.rate, 'ratio')] : [])].join(', '),
  drawing: ({ callout }) => (callout ? callout.number || wordsOf('app').fields.drawingEntered : wordsOf('app').fields.none),
}
