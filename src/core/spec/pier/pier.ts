import { count, either, freeText, group, length, oneOf, part } from '../../fields/makers.ts'
import type { PathsOf } from '../../fields/node.ts'
import { fillKinds } from '../../kinds/index.ts'
import { calloutFields } from './callout.ts'
import { concreteFields, placingFields, topFields } from './concrete.ts'
import { holeFields } from './hole.ts'
import { costFields, lifeFields } from './life.ts'
import { loadFields } from './loads.ts'
import { postFields, supportFields } from './post.ts'
import { sidewaysFields, siteFields } from './site.ts'
import { throughBarFields, verticalBarFields } from './steel.ts'
import { waterFields } from './water.ts'

/** Soil mechanisms that may be chosen. The presumptive upper bound is not among them: it is never a capacity. */
export const soilMechanisms = [
  'friction-and-weight',
  'rational-friction-and-weight',
  'depth-friction-and-weight',
  'clay-adhesion-and-weight',
  'user-friction-and-weight',
  'cone-over-ledge',
  'breakout-of-ledge',
] as const

/**
 * One pier, field by field: the only place where a field is declared. Its type, the file and its JSON Schema, the link, the pier that everybody
 * starts from, the inputs and their bounds are all read off this tree. The tree is nested as the spec is, and its order is the file's.
 */
export const pierFields = group({
  site: siteFields,
  hole: holeFields,
  post: postFields,
  support: supportFields,
  fill: either(fillKinds, { group: 'fill', link: 'fk', silent: 'mixed-full-height' }),
  bars: throughBarFields,
  verticalBars: verticalBarFields,
  top: topFields,
  concrete: concreteFields,
  placing: placingFields,
  water: waterFields,
  /** Number of like piers on the job [count]. */
  piers: count({ from: 1, to: 500, group: 'concrete', after: 'concrete.waste', leftOut: 'start', link: 'np', silent: 1 }),
  loads: loadFields,
  sideways: sidewaysFields,
  /** Centre to centre to the nearest pier like this; null when it stands alone. */
  spacing: length({ from: '12 in', to: '600 in', step: '6 in', group: 'site', after: 'site.weathering', link: 'ns', silent: null }),
  /** Code whose clearances for untreated wood are shown. */
  code: oneOf(['irc-2012-2018', 'irc-2021', 'ibc-2012', 'ibc-2018'], {
    group: 'steel',
    after: 'support.standOff',
    when: 'post on a bracket',
    leftOut: 'start',
    link: 'cd',
    silent: 'irc-2012-2018',
  }),
  /** A soil mechanism chosen over the least one, with the reason typed; null for the least that may be counted. Set where the ways are shown. */
  judgement: part({ mechanism: oneOf(soilMechanisms, { silent: 'friction-and-weight' }), reason: freeText(500, 10) }),
  callout: calloutFields,
  life: lifeFields,
  costs: costFields,
})

/** Words about a job as a whole, beside the pier. */
export const documentWords = { name: freeText(120), note: freeText(4000) }

/** Path of an input: a value, an optional part, or a kind. It is the key of the input's words. */
export type FieldPath = Exclude<PathsOf<(typeof pierFields)['fields']>, `judgement${string}`>
