import type { Counting } from '../../model/kind.ts'
import type { PierSpec } from '../../model/spec.ts'
import type { Worked } from '../../model/worked.ts'
import type { Newtons } from '../../units/quantity.ts'
import { given } from '../given.ts'

/** Allowable uplift from the bracket's own evaluation report, as entered [N]; null without one, and without a bracket. */
export const ratingOf = ({ support }: PierSpec): Newtons | null => (support.kind === 'bracket' ? support.bracket.rating : null)

/** The rating as the allowable of a link: it stands in for what is worked out of bolts, legs and anchors, and is the user's to answer for. */
export const workedRating = (rating: Newtons): Worked =>
  given('bracket-rating', rating, 'force', { formula: 'T_r', sources: ['user'], standing: 'assumed here' })

export const ratedByUser: Counting = { counted: 'counted', why: 'rating-entered-by-user', sources: ['user'] }
