import type { Field } from '../model/field.ts'
import type { PierSpec, ThroughBars, VerticalBars } from '../model/spec.ts'
import { metres } from '../units/quantity.ts'
import { toSI } from '../units/factors.ts'
import { choiceField, countField, inches, partField } from '../model/fieldMakers.ts'
import { placesMix } from './placement.ts'

export const barSizes = ['#3', '#4', '#5', '#6', '#7', '#8'] as const
export const barGrades = ['unknown', '40', '60'] as const
export const barCoatings = ['plain', 'galvanised', 'epoxy', 'stainless'] as const

const inch = (value: number) => metres(toSI(value, 'in'))
export const firstBars: ThroughBars = {
  size: '#5',
  count: 1,
  aboveFoot: inch(5.5),
  spacing: inch(4),
  length: inch(14),
  grade: '60',
  coating: 'galvanised',
}
export const firstVerticalBars: VerticalBars = { size: '#4', count: 4, cover: inch(3), grade: '60', coating: 'plain' }

const embedded = { shown: (spec: PierSpec) => spec.support.kind === 'embedded' }
const through = { shown: (spec: PierSpec) => spec.support.kind === 'embedded' && spec.bars !== null }
const several = { shown: (spec: PierSpec) => spec.support.kind === 'embedded' && spec.bars !== null && spec.bars.count > 1 }
const upright = { shown: (spec: PierSpec) => placesMix(spec) && spec.verticalBars !== null }

/** Bars through the post, then vertical bars. */
export const barFields: readonly Field[] = [
  partField('bars', 'steel', firstBars, embedded),
  choiceField('bars.size', 'steel', barSizes, through),
  countField('bars.count', 'steel', 1, 4, through),
  inches('bars.aboveFoot', 'steel', 0.5, 96, 0.5, through),
  inches('bars.spacing', 'steel', 0.5, 36, 0.5, several),
  inches('bars.length', 'steel', 3, 72, 1, through),
  choiceField('bars.grade', 'steel', barGrades, through),
  choiceField('bars.coating', 'steel', barCoatings, through),
  partField('verticalBars', 'steel', firstVerticalBars, { shown: placesMix }),
  choiceField('verticalBars.size', 'steel', barSizes, upright),
  countField('verticalBars.count', 'steel', 3, 12, upright),
  inches('verticalBars.cover', 'steel', 1, 12, 0.5, upright),
  choiceField('verticalBars.grade', 'steel', barGrades, upright),
  choiceField('verticalBars.coating', 'steel', barCoatings, upright),
]
