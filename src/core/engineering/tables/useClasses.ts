import type { UseClass } from '../../model/spec.ts'
import type { Standing } from '../../model/worked.ts'
import type { SourceId } from '../sources.ts'

/** A treatment use class. `rank` orders them by severity; `en335`: the nearest European class (not a performance class). */
export type UseClassRecord = Readonly<{
  rank: number
  groundContact: boolean
  heavyDuty: boolean
  en335: string | null
  source: SourceId
  standing: Standing
}>
/** AWPA U1 use classes that a post may carry. Source: awpa-u1. */
export const useClasses: Readonly<Record<UseClass, UseClassRecord>> = {
  untreated: { rank: 0, groundContact: false, heavyDuty: false, en335: null, source: 'definition', standing: 'definition' },
  UC3B: { rank: 1, groundContact: false, heavyDuty: false, en335: '3.2', source: 'awpa-u1', standing: 'read' },
  UC4A: { rank: 2, groundContact: true, heavyDuty: false, en335: '4', source: 'awpa-u1', standing: 'read' },
  UC4B: { rank: 3, groundContact: true, heavyDuty: true, en335: '4', source: 'awpa-u1', standing: 'read' },
  UC4C: { rank: 4, groundContact: true, heavyDuty: true, en335: '4', source: 'awpa-u1', standing: 'read' },
}

/** Least retention of preservative, pcf, at UC3B, UC4A and UC4B; null where the table gives none. Source: awpa-u1-retentions. */
export const retentions: Readonly<Record<string, readonly [number | null, number | null, number | null]>> = {
  'CCA-C': [null, 0.4, 0.6],
  'ACQ-B': [0.25, 0.4, 0.6],
  'ACQ-D': [0.15, 0.4, 0.6],
  ACZA: [0.25, 0.4, 0.6],
  'CA-B': [0.1, 0.21, 0.31],
  'CA-C': [0.06, 0.15, 0.31],
  'CuN-W': [0.07, 0.11, null],
}
