import type { Verdict, VerdictMark } from '../../model/fact.ts'
import type { Check } from '../../model/worked.ts'

const marks: Readonly<Record<Verdict, VerdictMark | null>> = {
  meets: 'meets',
  'as asked': 'meets',
  'condition met': 'meets',
  'as drawn': 'meets',
  'falls short': 'short',
  'not as asked': 'short',
  'not as drawn': 'short',
  'condition not met': 'unneeded',
  'not needed': 'unneeded',
  "can't be verified": 'unverified',
  "can't be confirmed as drawn": 'unverified',
  counted: 'counted',
  "engineer's judgement": 'judgement',
  'upper bound': 'bound',
  'not on the drawing': null,
}

/** The shape of a verdict; null where nothing was held against anything. */
export const markOf = (verdict: Verdict | null): VerdictMark | null => verdict && marks[verdict]

/** How a number counts, whatever it is held against. */
export const countingVerdict = (counted: Check['counted']): Verdict => (counted === 'not counted' ? "can't be verified" : counted)

/** How a check stands: whether it may be counted and, where something is asked, whether that is reached. */
export function checkVerdict({ counted, choice, condition, ratio }: Check): Verdict {
  if (counted === 'not counted' || counted === 'upper bound') return countingVerdict(counted)
  if (choice) return choice.reached ? 'as asked' : 'not as asked'
  if (ratio === undefined) return counted
  if (condition) return ratio <= 1 ? 'condition met' : 'condition not met'
  return ratio <= 1 ? 'meets' : 'falls short'
}
