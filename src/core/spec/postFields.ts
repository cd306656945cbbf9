import type { Field } from '../model/field.ts'
import { postSections } from '../engineering/tables/postSections.ts'
import { choiceField, inches, numberField } from '../model/fieldMakers.ts'

export const species = ['southern-pine', 'douglas-fir-larch', 'hem-fir', 'spruce-pine-fir', 'cedar'] as const
/** Weakest first: a later one may stand wherever an earlier one may. */
export const useClasses = ['untreated', 'UC3B', 'UC4A', 'UC4B', 'UC4C'] as const

export const postFields: readonly Field[] = [
  choiceField('post.section', 'post', Object.keys(postSections)),
  choiceField('post.species', 'post', species),
  choiceField('post.treatment', 'post', useClasses),
  inches('post.heightAboveGrade', 'post', 2, 360, 1),
  numberField(
    'post.lean',
    'post',
    'angle',
    { from: 0, to: 5, in: 'deg', step: 0.5, metric: 0.5, metricUnit: 'deg' },
    { shown: (spec) => spec.support.kind === 'embedded' },
  ),
  inches('support.foot', 'post', 0, 96, 0.5, { shown: (spec) => spec.support.kind === 'embedded' }),
]
