import { describe, expect, it } from 'vitest'
import { postSections } from '../../../../src/core/engineering/tables/postSections.ts'
import { postDesignValues, species } from '../../../../src/core/engineering/tables/species.ts'
import type { SpeciesId } from '../../../../src/core/model/spec.ts'

describe('design values of a post', () => {
  it.each(Object.keys(species) as SpeciesId[])('%s: every section finds a row with figures in order', (id) => {
    for (const section of Object.values(postSections)) {
      const row = postDesignValues(id, section.make)
      expect(row.tension.value).toBeLessThan(row.bending.value)
      expect(row.elasticityMin.value / row.elasticity.value).toBeGreaterThan(0.3)
      expect(row.elasticityMin.value / row.elasticity.value).toBeLessThan(0.4)
      for (const factor of Object.values(row.wet)) expect(factor.value).toBeLessThanOrEqual(1)
    }
  })
  it('southern pine timber is not cut for wet service a second time; others lose compression', () => {
    expect(species['southern-pine'].timber['No.2'].wet.compression.value).toBe(1)
    expect(species['douglas-fir-larch'].timber['No.2'].wet.compression.value).toBe(0.91)
  })
  it('says which figures come from memory', () => {
    expect(species['southern-pine'].timber['No.2'].tension.standing).toBe('from memory')
    expect(species['southern-pine'].timber['No.2'].compression.standing).toBe('secondary')
    expect(species['douglas-fir-larch'].timber['No.2'].tension.standing).toBe('secondary')
  })
})
