import type { Standing } from '../../model/worked.ts'
import { type Cited, cited } from '../cited.ts'
import type { SourceId } from '../sources.ts'

/** Nominal greatest size of the aggregate, inches as sold. */
export type AggregateSize = '3/8' | '1/2' | '3/4' | '1' | '1-1/2' | '2'
const air = (printed: number, source: SourceId = 'aci-318-19-19-3-3', standing: Standing = 'from memory') =>
  cited(printed, '%', source, standing)

/** Total air by aggregate size: exposure F1, and F2 or F3, percent. The 1 in value for moderate exposure is also in ASTM C94. Source: aci-318-19-19-3-3, astm-c94-air. */
export const airContent: Readonly<Record<AggregateSize, Readonly<{ F1: Cited; F2: Cited }>>> = {
  '3/8': { F1: air(6), F2: air(7.5) },
  '1/2': { F1: air(5.5), F2: air(7) },
  '3/4': { F1: air(5), F2: air(6) },
  '1': { F1: air(4.5, 'astm-c94-air', 'secondary'), F2: air(6) },
  '1-1/2': { F1: air(4.5), F2: air(5.5) },
  '2': { F1: air(4), F2: air(5) },
}

/** Either way from the target, percent of volume. Source: astm-c94-air. */
export const airTolerance = cited(1.5, '%', 'astm-c94-air', 'secondary')

/** Range of total air by aggregate size, percent, of a guide specification. Source: ufgs-03311-air. */
export const airRange: Readonly<Record<AggregateSize, readonly [low: Cited, high: Cited]>> = {
  '3/8': [air(6, 'ufgs-03311-air', 'read'), air(10, 'ufgs-03311-air', 'read')],
  '1/2': [air(5, 'ufgs-03311-air', 'read'), air(9, 'ufgs-03311-air', 'read')],
  '3/4': [air(4, 'ufgs-03311-air', 'read'), air(8, 'ufgs-03311-air', 'read')],
  '1': [air(3.5, 'ufgs-03311-air', 'read'), air(6.5, 'ufgs-03311-air', 'read')],
  '1-1/2': [air(3, 'ufgs-03311-air', 'read'), air(6, 'ufgs-03311-air', 'read')],
  '2': [air(2.5, 'ufgs-03311-air', 'read'), air(5.5, 'ufgs-03311-air', 'read')],
}
