import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type AnyFillKind, bracketKinds, fillKinds } from '../../src/core/kinds/index.ts'
import type { Worked } from '../../src/core/model/worked.ts'
import { allFields } from '../../src/core/spec/fields.ts'
import { derived } from '../../src/state/derived.ts'
import { wordsOf } from '../../src/words/index.ts'
import { arbitraryPier } from '../arbitraryPier.ts'

const lacking = (table: Readonly<Record<string, unknown>>, keys: Iterable<string>): string[] =>
  [...new Set(keys)].filter((key) => !Object.hasOwn(table, key)).sort()

describe('[T3] everything that can be shown has words', () => {
  it('fields and their choices', () => {
    expect(
      lacking(
        wordsOf('fields'),
        allFields.map((field) => field.path),
      ),
    ).toEqual([])
    const choices = allFields.flatMap((field) =>
      field.type === 'choice' ? field.choices.map((choice) => [field.path, String(choice)] as const) : [],
    )
    const own = new Set(['fill.kind', 'support.bracket.kind'])
    expect(choices.filter(([path, choice]) => !own.has(path) && wordsOf('choices')[path]?.[choice] === undefined)).toEqual([])
  })

  it('steps and cautions of every kind', () => {
    const kinds = [...fillKinds, ...bracketKinds]
    expect(kinds.length).toBe(11)
    expect(
      lacking(
        wordsOf('steps'),
        kinds.flatMap((kind) => [...kind.steps]),
      ),
    ).toEqual([])
    expect(
      lacking(
        wordsOf('cautions').ofPiers,
        kinds.flatMap((kind) => [...kind.cautions]),
      ),
    ).toEqual([])
    expect(
      lacking(
        wordsOf('reasons'),
        fillKinds.flatMap((kind: AnyFillKind) =>
          [...Object.values(kind.counting), ...Object.values(kind.cored ?? kind.counting)].map((one) => one.why),
        ),
      ),
    ).toEqual([])
  })

  it('every number, check, reason, zone, load and issue of random piers', () => {
    const seen = {
      answers: new Set<string>(),
      opening: new Set<string>(),
      reasons: new Set<string>(),
      terms: new Set<string>(),
      zones: new Set<string>(),
      issues: new Set<string>(),
      cautions: new Set<string>(),
      notes: new Set<string>(),
      combinations: new Set<string>(),
    }
    const see = (all: readonly (Worked | null | undefined)[]) => {
      for (const worked of all) {
        if (!worked) continue
        seen.answers.add(worked.id)
        for (const term of worked.inputs) seen.terms.add(term.name)
      }
    }
    fc.assert(
      fc.property(arbitraryPier(), ({ spec }) => {
        const result = derived(spec)
        for (const check of result.checks) {
          seen.answers.add(check.id)
          if (check.why !== undefined) seen.reasons.add(check.why)
          see([...check.worked, check.allowable, check.demand])
        }
        see(result.headlines)
        for (const worked of result.headlines) seen.opening.add(worked.id)
        for (const id of [result.uplift.governing, ...result.uplift.uncounted]) if (id !== null) seen.opening.add(id)
        const { uplift, gravity, lateral, worked, cases, notes, governing } = result.demand
        see([uplift, gravity, lateral, ...worked])
        for (const one of cases) {
          see(one.worked)
          for (const load of [one.uplift, one.gravity]) seen.combinations.add(load.combination)
        }
        for (const load of [governing.uplift, governing.gravity]) if (load) seen.combinations.add(load.combination)
        for (const note of notes) seen.notes.add(note)
        for (const caution of result.cautions) seen.cautions.add(caution)
        for (const zone of result.zones) seen.zones.add(zone.label)
        for (const issue of result.issues) seen.issues.add(issue.code)
      }),
      { numRuns: 400, seed: 7 },
    )
    expect(seen.answers.size).toBeGreaterThan(20)
    expect(lacking(wordsOf('answers'), seen.answers)).toEqual([])
    // The opening page names its headlines and whatever link may govern or be missing.
    expect(lacking(wordsOf('headlines'), seen.opening)).toEqual([])
    expect(lacking(wordsOf('reasons'), seen.reasons)).toEqual([])
    expect(lacking(wordsOf('zones'), seen.zones)).toEqual([])
    expect(lacking(wordsOf('issues'), seen.issues)).toEqual([])
    expect(lacking(wordsOf('cautions').ofPiers, seen.cautions)).toEqual([])
    expect(lacking(wordsOf('loads').notes, seen.notes)).toEqual([])
    expect(lacking(wordsOf('loads').combinations, seen.combinations)).toEqual([])
    // A term is said in its own words, or by the zone that it stands for.
    expect(lacking({ ...wordsOf('terms'), ...wordsOf('zones') }, seen.terms)).toEqual([])
    expect(seen.notes.size).toBeGreaterThan(4)
  })

  it('would miss a word that is not there', () => expect(lacking(wordsOf('zones'), ['concrete', 'moon'])).toEqual(['moon']))
})
