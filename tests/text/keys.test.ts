import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bracketKinds, fillKinds } from '../../src/core/kinds/index.ts'
import { fields } from '../../src/core/spec/fields.ts'
import { derived } from '../../src/state/derived.ts'
import { text } from '../../src/text/index.ts'
import { arbitraryPier } from '../arbitraryPier.ts'

const lacking = (table: Readonly<Record<string, unknown>>, keys: Iterable<string>): string[] =>
  [...new Set(keys)].filter((key) => !Object.hasOwn(table, key)).sort()

describe('[T3] everything that can be shown has words', () => {
  it('fields and their choices', () => {
    expect(
      lacking(
        text.fields,
        fields.map((field) => field.path),
      ),
    ).toEqual([])
    const choices = fields.flatMap((field) =>
      field.type === 'choice' ? field.choices.map((choice) => [field.path, String(choice)] as const) : [],
    )
    const own = new Set(['fill.kind', 'support.bracket.kind'])
    expect(choices.filter(([path, choice]) => !own.has(path) && text.choices[path]?.[choice] === undefined)).toEqual([])
  })

  it('steps and cautions of every kind', () => {
    const kinds = [...fillKinds, ...bracketKinds]
    expect(kinds.length).toBe(10)
    expect(
      lacking(
        text.steps,
        kinds.flatMap((kind) => [...kind.steps]),
      ),
    ).toEqual([])
    expect(
      lacking(
        text.cautions,
        kinds.flatMap((kind) => [...kind.cautions]),
      ),
    ).toEqual([])
    expect(
      lacking(
        text.reasons,
        fillKinds.flatMap((kind) => Object.values(kind.counting).map((one) => one.why)),
      ),
    ).toEqual([])
  })

  it('every number, check, reason, zone and issue of random piers', () => {
    const seen = { answers: new Set<string>(), reasons: new Set<string>(), zones: new Set<string>(), issues: new Set<string>() }
    const runs = 400
    fc.assert(
      fc.property(arbitraryPier(), ({ spec }) => {
        const result = derived(spec)
        for (const check of result.checks) {
          seen.answers.add(check.id)
          if (check.why !== undefined) seen.reasons.add(check.why)
          for (const worked of [...check.worked, check.allowable, check.demand]) if (worked) seen.answers.add(worked.id)
        }
        for (const worked of result.headlines) seen.answers.add(worked.id)
        for (const zone of result.zones) seen.zones.add(zone.label)
        for (const issue of result.issues) seen.issues.add(issue.code)
      }),
      { numRuns: runs, seed: 7 },
    )
    console.info(
      `words: ${runs} piers, ${seen.answers.size} answers, ${seen.reasons.size} reasons, ${seen.zones.size} zones, ${seen.issues.size} issues`,
    )
    expect(seen.answers.size).toBeGreaterThan(20)
    expect(lacking(text.answers, seen.answers)).toEqual([])
    expect(lacking(text.reasons, seen.reasons)).toEqual([])
    expect(lacking(text.zones, seen.zones)).toEqual([])
    expect(lacking(text.issues, seen.issues)).toEqual([])
  })

  it('would miss a word that is not there', () => expect(lacking(text.zones, ['concrete', 'moon'])).toEqual(['moon']))
})
