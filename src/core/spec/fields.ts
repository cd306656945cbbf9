import type { Field } from '../model/field.ts'
import type { PierSpec } from '../model/spec.ts'
import { calloutFields } from './calloutFields.ts'
import { costFields } from './costFields.ts'
import { holeFields } from './holeFields.ts'
import { bracketFields, fillFields } from './kindFields.ts'
import { lifeFields } from './lifeFields.ts'
import { loadFields } from './loadFields.ts'
import { placingFields } from './placingFields.ts'
import { postFields } from './postFields.ts'
import { siteFields } from './siteFields.ts'
import { barFields } from './steelFields.ts'
import { concreteFields, topFields } from './topFields.ts'
import { waterFields } from './waterFields.ts'

/**
 * Every input there is, in building order: ground, hole, post, fill, steel, top, concrete, water, loads, drawing, years. Bounds and steps are SI.
 * Two kinds may own a field of one path with other bounds; `visibleIf` leaves at most one of them at a time.
 */
export const fields: readonly Field[] = [
  ...siteFields,
  ...holeFields,
  ...postFields,
  ...fillFields,
  ...bracketFields,
  ...barFields,
  ...topFields,
  ...concreteFields,
  ...placingFields,
  ...waterFields,
  ...loadFields,
  ...calloutFields,
  ...lifeFields,
  ...costFields,
]

/** The inputs that this pier has, in building order. */
export const visibleFields = (spec: PierSpec): readonly Field[] => fields.filter((field) => field.visibleIf?.(spec) ?? true)

/** The input at `path` that this pier has; undefined when it has none. */
export const fieldAt = (spec: PierSpec, path: string): Field | undefined => visibleFields(spec).find((field) => field.path === path)
