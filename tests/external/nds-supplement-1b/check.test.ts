import { describe, expect, it } from 'vitest'
import { postSections } from '../../../src/core/engineering/tables/postSections.ts'
import { postDesignValues, species } from '../../../src/core/engineering/tables/species.ts'
import { postMoisture, woodUnitWeight } from '../../../src/core/engineering/wood/woodUnitWeight.ts'
import type { PostSectionId } from '../../../src/core/model/spec.ts'
import { at, digits, published, readCases } from '../cases.ts'

describe('post sections', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id as PostSectionId, row] as const))('%s', (id, row) => {
    const { width: b, depth: d, printed, shape } = postSections[id]
    expect([printed.width, printed.depth, shape]).toEqual([digits(row, 'b_in'), digits(row, 'd_in'), 'rect'])
    published(b * d, row, '=A_in2', 'in2')
    published((b * d ** 3) / 12, row, '=I_in4', 'in4')
    published((b * d ** 2) / 6, row, '=S_in3', 'in3')
    const perLength = (species_: 'southern-pine' | 'douglas-fir-larch') =>
      woodUnitWeight({ gravity: species[species_].gravity.value, moisture: postMoisture.service }) * b * d
    published(perLength('southern-pine'), row, '=SP_lb/ft', 'lb/ft')
    published(perLength('douglas-fir-larch'), row, '=DFL_lb/ft', 'lb/ft')
  })
  it('a 4x4 is lumber, a 6x6 timber; a value from memory says so', () => {
    expect(postDesignValues('southern-pine', postSections['6x6'].make)).toBe(species['southern-pine'].timber['No.2'])
    expect(postDesignValues('southern-pine', postSections['4x4'].make)).toBe(species['southern-pine'].lumber['No.2'])
    expect(postDesignValues('southern-pine', postSections['6x6'].make).tension.standing).toBe('from memory')
    expect(postSections['round-8'].width).toBeCloseTo(at(8, 'in'), 12)
  })
})
