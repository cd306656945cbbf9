import type { Seconds } from '../../units/quantity.ts'
import type { EvidenceRow } from '../tables/lifeEvidence.ts'

/** Least and greatest life; `high` null where the source says "or more". */
export type ReferenceLife = Readonly<{ low: Seconds; high: Seconds | null }>

/**
 * Life that a row of evidence may stand for as a reference.
 * @param row of evidence [1]
 * @returns least and greatest life [s]; null for a row that gives none, such as one where none failed
 * Formula: the life as printed, else the time by which half are expected to fail
 * Valid: for wood, site and treatment like the row's. Outside: the factors, each an opinion.
 * Source: iso-15686
 * Checked by: tests/core/engineering/life/evidence.test.ts
 */
export function referenceLife(row: EvidenceRow): ReferenceLife | null {
  if (row.life) return { low: row.life.low.value, high: row.life.high?.value ?? null }
  return row.median ? { low: row.median.value, high: row.median.value } : null
}
