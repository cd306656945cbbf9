import { presumptiveClasses } from './siteFields.ts'
import { barSizes } from './steelFields.ts'
import { useClasses } from './postFields.ts'
import { postSections } from '../engineering/tables/postSections.ts'
import type { Field } from '../model/field.ts'
import { choiceField, inches, numberField, partField } from '../model/fieldMakers.ts'
import type { Callout, PierSpec } from '../model/spec.ts'
import { metres } from '../units/quantity.ts'

/** A drawing of which nothing is entered yet. Nothing is allowed below a figure unless the drawing allows it: common practice, no source. */
export const firstCallout: Callout = {
  diameter: null,
  depth: null,
  strength: null,
  mixed: null,
  encasement: null,
  barThrough: null,
  barSize: null,
  section: null,
  treatment: null,
  bracket: null,
  uplift: null,
  frostDepth: null,
  soil: null,
  tolerance: { diameter: metres(0), depth: metres(0) },
  number: '',
  date: '',
  notes: '',
}

const entered = { shown: (spec: PierSpec) => spec.callout !== null }
const item = { ...entered, nullable: true }
const yesNo = (path: string) => choiceField(path, 'drawing', ['yes', 'no'], item)

/** What the permit drawing says, in the order in which a pier is built. Bounds are those of the tool, set here; no source. */
export const calloutFields: readonly Field[] = [
  partField('callout', 'drawing', firstCallout),
  inches('callout.diameter', 'drawing', 4, 96, 1, item),
  inches('callout.depth', 'drawing', 6, 240, 1, item),
  numberField(
    'callout.strength',
    'drawing',
    'strength',
    { from: 500, to: 10_000, in: 'psi', step: 250, metric: 1, metricUnit: 'MPa' },
    item,
  ),
  yesNo('callout.mixed'),
  yesNo('callout.encasement'),
  yesNo('callout.barThrough'),
  choiceField('callout.barSize', 'drawing', barSizes, item),
  choiceField('callout.section', 'drawing', Object.keys(postSections), item),
  choiceField('callout.treatment', 'drawing', useClasses, item),
  yesNo('callout.bracket'),
  numberField('callout.uplift', 'drawing', 'force', { from: 1, to: 40_000, in: 'lb', step: 50, metric: 0.2, metricUnit: 'kN' }, item),
  inches('callout.frostDepth', 'drawing', 0, 96, 1, item),
  choiceField('callout.soil', 'drawing', presumptiveClasses, item),
  inches('callout.tolerance.diameter', 'drawing', 0, 6, 0.25, entered),
  inches('callout.tolerance.depth', 'drawing', 0, 12, 0.5, entered),
]
