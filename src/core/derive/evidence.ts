import type { SourceId } from '../engineering/sources.ts'
import { type Claim, claims, dryMixTrialRow } from '../engineering/tables/claims.ts'
import { dryMixTrial } from '../engineering/tables/dryMixTrial.ts'
import { lifeEvidence } from '../engineering/tables/lifeEvidence.ts'
import type { PierResult } from '../model/result.ts'
import type { Standing } from '../model/worked.ts'

/** One finding, by a key into the text table, with its source. */
export type Finding = Readonly<{ id: string; source: SourceId; standing: Standing }>
/** A thing that is said, with the findings for it, those against it, and what was looked for and not found. Keys into the text table. */
export type WeighedClaim = Readonly<{
  id: string
  inFavour: readonly Finding[]
  against: readonly Finding[]
  missing: readonly string[]
}>

/** Every finding that a claim may name, by its id. */
const findings: ReadonlyMap<string, Finding> = new Map(
  [...lifeEvidence, { id: dryMixTrialRow, source: dryMixTrial.source, standing: dryMixTrial.standing }].map(({ id, source, standing }) => [
    id,
    { id, source, standing },
  ]),
)

const finding = (id: string): Finding => {
  const known = findings.get(id)
  if (!known) throw new Error(`finding: no evidence "${id}"`)
  return known
}

const weighed = ({ id, inFavour, against, missing }: Claim): WeighedClaim => ({
  id,
  inFavour: inFavour.map(finding),
  against: against.map(finding),
  missing,
})

/** Every claim with its evidence, in the order of the table. */
export const weighedClaims: readonly WeighedClaim[] = claims.map(weighed)

/**
 * What is said about a pier like this one: about treated posts always, about the mix in it, about what touches its wood, and, where
 * no wood is in the ground, about the wood that would be.
 */
export function claimsAbout({ zones, exposure }: Pick<PierResult, 'zones' | 'exposure'>): readonly WeighedClaim[] {
  const touches = (...contacts: (keyof typeof exposure.area)[]) => contacts.some((one) => (exposure.area[one] ?? 0) > 1e-9)
  const inSoil = touches('native-soil', 'backfill')
  const isAbove = exposure.areaBelowGrade <= 1e-9
  const about: Readonly<Record<string, boolean>> = {
    'concrete-rots-posts': touches('concrete', 'dry-mix'),
    'concrete-protects-posts': touches('concrete', 'dry-mix'),
    'dry-mix-never-hydrates': zones.some(({ role }) => role === 'dry-mix'),
    'dry-mix-is-as-good-as-mixed': zones.some(({ role }) => role === 'dry-mix'),
    'posts-in-wet-soil-last-ten-years': inSoil || isAbove,
    'treated-posts-last-sixty-years': true,
    'gravel-drains-the-hole': touches('granular', 'gravel'),
  }
  return weighedClaims.filter(({ id }) => about[id] === true)
}
