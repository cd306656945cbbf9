import type { Field } from '../model/field.ts'
import { metres } from '../units/quantity.ts'
import { toSI } from '../units/factors.ts'
import { choiceField, inches, partField } from '../model/fieldMakers.ts'

const inch = (value: number) => metres(toSI(value, 'in'))

/** The hole from the ground up: shaft, then its optional bell, wider mouth and base. */
export const holeFields: readonly Field[] = [
  inches('hole.diameter', 'hole', 8, 48, 1),
  inches('hole.depth', 'hole', 12, 120, 1),
  partField('hole.bell', 'hole', { diameter: inch(30), height: inch(10) }),
  inches('hole.bell.diameter', 'hole', 9, 72, 1, { shown: (spec) => spec.hole.bell !== null }),
  inches('hole.bell.height', 'hole', 2, 60, 1, { shown: (spec) => spec.hole.bell !== null }),
  partField('hole.flare', 'hole', { diameter: inch(24), depth: inch(8) }),
  inches('hole.flare.diameter', 'hole', 9, 72, 1, { shown: (spec) => spec.hole.flare !== null }),
  inches('hole.flare.depth', 'hole', 2, 96, 1, { shown: (spec) => spec.hole.flare !== null }),
  partField('hole.base', 'hole', { material: 'gravel', thickness: inch(4) }),
  choiceField('hole.base.material', 'hole', ['gravel', 'concrete', 'loose-soil'], { shown: (spec) => spec.hole.base !== null }),
  inches('hole.base.thickness', 'hole', 1, 36, 1, { shown: (spec) => spec.hole.base !== null }),
]
