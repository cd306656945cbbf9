import { describe, expect, it } from 'vitest'
import { postSections } from '../../../src/core/engineering/tables/postSections.ts'
import { type Grade, species } from '../../../src/core/engineering/tables/species.ts'
import { loadDuration } from '../../../src/core/engineering/wood/connectionFactors.ts'
import { netArea, netTension, workedNetTension } from '../../../src/core/engineering/wood/netTension.ts'
import type { SpeciesId } from '../../../src/core/model/spec.ts'
import type { SquareMetres } from '../../../src/core/units/quantity.ts'
import { at, published, readCases } from '../cases.ts'

describe('tension on the net section', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const values = species[row.species as SpeciesId].timber[row.grade as Grade]
    if (!values) throw new Error('no grade')
    const { width, depth } = postSections['6x6']
    const area = netArea({ area: (width * depth) as SquareMetres, hole: at(0.625, 'in'), length: depth, count: 1 })
    published(area, row, '=A_in2', 'in2')
    const inputs = { tension: values.tension.value, duration: loadDuration.wind.value, wet: values.wet.tension.value, area }
    published(netTension(inputs), row, '=T_lb', 'lb')
    expect(workedNetTension(inputs, { standings: [values.tension.standing] }).standing).toBe(values.tension.standing)
  })
})
