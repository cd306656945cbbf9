import { describe, expect, it } from 'vitest'
import { deriveMoisture } from '../../src/core/derive/moisture/deriveMoisture.ts'
import { contactWetness } from '../../src/core/engineering/tables/contactWetness.ts'
import { traps } from '../core/engineering/trapTable.ts'
import { wordsOf } from '../../src/words/index.ts'
import { ofEach } from '../core/derive/manyPiers.ts'

const lacking = (table: Readonly<Record<string, unknown>>, keys: Iterable<string>): string[] =>
  [...keys].filter((key) => !Object.hasOwn(table, key))

describe('[T3] words for water against the wood', () => {
  it('every number that 300 piers give has a name, and every input of it', () => {
    const answers = new Set<string>()
    const terms = new Set<string>()
    ofEach((spec) => {
      for (const worked of deriveMoisture(spec).worked) {
        answers.add(worked.id)
        for (const term of worked.inputs) terms.add(term.name)
      }
    })
    expect(answers.size).toBeGreaterThan(15)
    expect(lacking(wordsOf('answers'), answers)).toEqual([])
    expect(lacking({ ...wordsOf('terms'), ...wordsOf('zones') }, terms)).toEqual([])
  })

  it('every reason of the contact table is a sentence', () => {
    expect(
      lacking(
        wordsOf('moisture').reasons,
        Object.values(contactWetness).map((row) => row.reason),
      ),
    ).toEqual([])
  })

  it('[trap 1] [trap 2] [trap 6] [trap 10] [trap 15] traps about water are put right in words', () => {
    const sentences = traps.flatMap((trap) => ([1, 2, 6, 10, 15].includes(trap.number) && trap.sentence ? [trap.sentence] : []))
    expect(sentences).toHaveLength(5)
    expect(lacking(wordsOf('moisture').traps, sentences)).toEqual([])
    expect(wordsOf('moisture').traps['trap-six-inches-in-ten-feet']).toContain('5%')
    expect(wordsOf('moisture').traps['trap-concrete-rots-posts']).toMatch(/^No field study/)
    expect(wordsOf('moisture').traps['trap-concrete-protects-posts']).toMatch(/^No field study/)
  })
})
