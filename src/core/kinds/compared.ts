import type { FillId } from '../model/spec.ts'

/** Methods that a pier is set beside unless somebody picks others: poured round the post, under a bracket, and the two that go in dry. No ranking. */
export const comparedFirst: readonly FillId[] = ['mixed-full-height', 'mixed-bracket-pier', 'dry-bag-at-foot', 'dry-full-height']
