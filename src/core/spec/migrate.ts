import type { Issue } from '../model/issue.ts'
import { filledInLoads } from './filledInLoads.ts'
import { shown } from './issueCodes.ts'
import { schemaVersion } from './schemaVersion.ts'

export type Migration = (old: unknown) => unknown

/** From each released version to the next. `migrations[n]` turns a job of version n into one of n + 1. */
export const migrations: Readonly<Record<number, Migration>> = { 1: filledInLoads }

/** Throws when a step of the chain is missing or there is one too many: a mistake of ours, found by the first test that runs. */
export function assertGapless(chain: Readonly<Record<number, Migration>>, newest: number): void {
  const steps = Object.keys(chain)
    .map(Number)
    .sort((a, b) => a - b)
  const wanted = Array.from({ length: newest - 1 }, (_, i) => i + 1)
  if (steps.length !== wanted.length || steps.some((step, i) => step !== wanted[i])) {
    throw new Error(`assertGapless: steps ${steps.join(', ')} do not lead from 1 to ${newest}`)
  }
}
assertGapless(migrations, schemaVersion)

type Migrated = Readonly<{ ok: true; data: unknown }> | Readonly<{ ok: false; issue: Issue }>
const refuse = (code: string, facts: Partial<Issue> = {}): Migrated => ({
  ok: false,
  issue: { code, severity: 'error', path: 'pierglass', ...facts },
})

/**
 * Brings the data of a file of any released version up to the newest, step by step. The version number itself is brought up too.
 * @param mark key that the version number stands under
 */
export function migrated(data: unknown, chain = migrations, newest = schemaVersion, mark = 'pierglass'): Migrated {
  const isMarked = typeof data === 'object' && data !== null && !Array.isArray(data) && Object.hasOwn(data, mark)
  if (!isMarked) return refuse('not-a-job', { path: mark })
  const version = (data as Readonly<Record<string, unknown>>)[mark]
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return refuse('unknown-schema', { path: mark, got: shown(version), limit: newest })
  if (version > newest) return refuse('newer-schema', { path: mark, got: version, limit: newest })
  let current: unknown = data
  for (let step = version; step < newest; step++) {
    const migration = chain[step]
    if (migration === undefined) throw new Error(`migrated: no step from version ${step}`)
    current = { ...(migration(current) as object), [mark]: step + 1 }
  }
  return { ok: true, data: current }
}
