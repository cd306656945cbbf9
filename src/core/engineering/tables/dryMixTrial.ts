import type { Standing } from '../../model/worked.ts'
import type { Seconds } from '../../units/quantity.ts'
import { type Cited, cited } from '../cited.ts'
import type { SourceId } from '../sources.ts'

/** A published trial, told by keys into the text table. No strength is given: none was readable. */
export type Trial = Readonly<{
  source: SourceId
  standing: Standing
  /** Where it was done and how. */
  setting: readonly string[]
  /** Ages at which cores were cut. */
  ages: readonly Cited<Seconds>[]
  finding: string
  /** What its authors say is still open. */
  open: readonly string[]
  /** What was not readable, or not covered. */
  missing: readonly string[]
}>
const weeks = (printed: number) => cited<Seconds>(7 * printed, 'd', 'bohnhoff-2003', 'abstract only')

/** Dry-mix footings buried in sand, dug up and cored at 4, 12 and 24 weeks. Source: bohnhoff-2003. */
export const dryMixTrial: Trial = {
  source: 'bohnhoff-2003',
  standing: 'abstract only',
  setting: ['dry-mix-footings', 'buried-in-sand', 'several-water-treatments', 'cored'],
  ages: [weeks(4), weeks(12), weeks(24)],
  finding: 'dry-mix-could-match-mixed',
  open: ['aggregate', 'compaction', 'confinement', 'evenness-after-placing', 'water-movement'],
  missing: ['strength-values-not-read', 'not-clay', 'not-loose-and-wetted-from-top', 'no-post-pulled'],
}
