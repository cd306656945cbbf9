import { bags } from '../../engineering/tables/bags.ts'
import { backfillMinimum, structuralMinimum } from '../../engineering/tables/concrete.ts'
import { fillKind } from '../../kinds/index.ts'
import type { Issue } from '../../model/issue.ts'
import type { PierSpec } from '../../model/spec.ts'
import { type Dimensions, mixLevel } from '../dimensions.ts'
import { places } from '../placement.ts'
import { exceeds, error, lengths, type Rule, warning, when } from './rule.ts'

/**
 * Top of concrete or dry mix that ends below grade with something else above it [m], signed; null when the fill has none.
 * Told by the fields that a fill has, not by its kind.
 */
export function mixTop({ fill, placing }: PierSpec, d: Dimensions): number | null {
  if ('height' in fill) return d.baseTop + fill.height
  if ('bags' in fill) return mixLevel(bagVolume(fill, placing), d).y
  return null
}

const bagVolume = ({ bags: count, bagSize }: Bagged, { looseWeight }: PierSpec['placing']) =>
  (count * bags[bagSize].weight.value) / looseWeight

type Bagged = Readonly<{ bags: number; bagSize: keyof typeof bags }>

const levels = (spec: PierSpec, d: Dimensions): readonly Issue[] => {
  const { fill, placing } = spec
  const found: Issue[] = []
  if ('height' in fill) {
    const most = d.highestLevel - d.baseTop
    if (exceeds(fill.height, most)) found.push(error('collar-too-high', 'fill.height', lengths(fill.height, most)))
  }
  if ('pad' in fill) {
    const most = d.highestLevel - d.baseTop
    if (exceeds(fill.pad, most)) found.push(error('pad-too-thick', 'fill.pad', lengths(fill.pad, most)))
  }
  if ('bags' in fill) {
    const volume = bagVolume(fill, placing)
    const { room } = mixLevel(volume, d)
    if (!(volume < room)) found.push(error('fill-overflows', 'fill.bags', { got: volume, limit: room, quantity: 'volume' }))
  }
  const top = mixTop(spec, d)
  if (top !== null && !exceeds(top, d.foot)) {
    const path = 'height' in fill ? 'fill.height' : 'fill.bags'
    found.push(warning('fill-without-post', path, lengths(top - d.bottom, d.foot - d.bottom)))
  }
  return found
}

/** Standing of the way of filling itself. Sources are the record's own. */
const standing = (spec: PierSpec): readonly Issue[] => {
  const { sources } = fillKind(spec.fill.kind)
  const { strength } = spec.concrete
  const least = strength < backfillMinimum.value ? backfillMinimum : structuralMinimum
  return [
    ...when(places(spec, 'backfill'), () =>
      warning('backfill-not-listed', 'fill.kind', { got: spec.fill.kind, sources: ['ibc-1807-3-3'] }),
    ),
    ...when(places(spec, 'dry-mix'), () => warning('dry-mix-not-verifiable', 'fill.kind', { got: spec.fill.kind, sources })),
    ...when(places(spec, 'concrete') && exceeds(least.value, strength), () =>
      warning('strength-low', 'concrete.strength', { got: strength, limit: least.value, quantity: 'strength', sources: [least.source] }),
    ),
  ]
}

/** A fill names the support it goes with; anything else is a mistake of the document. */
const support = (spec: PierSpec): readonly Issue[] => {
  const needed = fillKind(spec.fill.kind).support
  return when(spec.support.kind !== needed, () => error('support-mismatch', 'support.kind', { got: spec.support.kind, limit: needed }))
}

export const fillRules: Rule = (spec, d) => [...support(spec), ...levels(spec, d), ...standing(spec)]
