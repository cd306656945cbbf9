import type { Counting } from '../model/kind.ts'

const order = ['counted', "engineer's judgement", 'not counted'] as const

/** Of two, the one that counts for less; the first of two alike. */
export const lessCounted = (a: Counting, b: Counting): Counting => (order.indexOf(b.counted) > order.indexOf(a.counted) ? b : a)
