import { describe, expect, it } from 'vitest'
import { postSections } from '../../../src/core/engineering/tables/postSections.ts'
import { species } from '../../../src/core/engineering/tables/species.ts'
import { columnStability, workedColumnLoad, workedColumnStability } from '../../../src/core/engineering/wood/columnStability.ts'
import type { SpeciesId } from '../../../src/core/model/spec.ts'
import type { Metres, SquareMetres } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases } from '../cases.ts'

describe('6x6 as a column', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const wood = species[row.species as SpeciesId].timber['No.2']
    const { width, depth } = postSections['6x6']
    const inputs = {
      elasticityMin: wood.elasticityMin.value,
      compression: wood.compression.value,
      effectiveLength: at<Metres>(8, 'ft'),
      depth,
      builtUp: 1,
    }
    const found = columnStability(inputs)
    if (!found) throw new Error('no value')
    published(found.slenderness, row, '=le/d')
    published(found.critical, row, '=FcE_psi', 'psi')
    published(found.cp, row, '=CP')
    published(found.allowable, row, "=Fc'_psi", 'psi')
    const load = workedColumnLoad({ allowable: found.allowable, area: (width * depth) as SquareMetres })
    published(load.value, row, '=P_lb', 'lb')
    if (row.id === 'SP') close(load.value, at(14_300, 'lb'), { abs: 0, rel: 0.02 })
    expect(workedColumnStability(inputs)?.value).toBe(found.cp)
  })
  it('has no value past a slenderness of 50', () => {
    const wood = species['hem-fir'].lumber['No.2']
    expect(
      columnStability({
        elasticityMin: wood.elasticityMin.value,
        compression: wood.compression.value,
        effectiveLength: at(20, 'ft'),
        depth: at(3.5, 'in'),
        builtUp: 1,
      }),
    ).toBeNull()
  })
})
