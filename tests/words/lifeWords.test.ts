import { describe, expect, it } from 'vitest'
import { claims } from '../../src/core/engineering/tables/claims.ts'
import { lifeEvidence, notFound } from '../../src/core/engineering/tables/lifeEvidence.ts'
import { traps } from '../core/engineering/trapTable.ts'
import { life } from '../../src/words/en/life.ts'
import { moisture } from '../../src/words/en/moisture.ts'

describe('words of the years', () => {
  it('has a sentence for every row of evidence, and for no other', () => {
    expect(Object.keys(life.evidence).sort()).toEqual(lifeEvidence.map((row) => row.id).sort())
  })

  it('says of a row the number that the row has', () => {
    for (const row of lifeEvidence) {
      const said = life.evidence[row.id as keyof typeof life.evidence]
      for (const printed of [row.life?.low.printed, row.life?.high?.printed, row.watched?.printed, row.median?.printed])
        if (printed !== undefined) expect(said, row.id).toContain(String(printed))
      if (row.sample) expect(said, row.id).toContain(String(row.sample.count))
    }
  })

  it('names what was looked for and not found', () => {
    expect(Object.keys(life.notFound).sort()).toEqual([...notFound].sort())
    for (const claim of claims) for (const id of claim.missing) expect(Object.keys(life.notFound)).toContain(id)
  })

  it('puts every trap right that is put right in words', () => {
    const said = { ...moisture.traps, ...life.traps } as Readonly<Record<string, string>>
    for (const { sentence } of traps) if (sentence !== null) expect(said[sentence], sentence).toMatch(/\.$/)
  })
})
