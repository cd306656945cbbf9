import { describe, it } from 'vitest'
import { species } from '../../../src/core/engineering/tables/species.ts'
import { columnStability, workedColumnLoad } from '../../../src/core/engineering/wood/columnStability.ts'
import { loadDuration } from '../../../src/core/engineering/wood/connectionFactors.ts'
import type { SquareMetres } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, digits, published, readCases, si } from '../cases.ts'

describe('Example 5.6', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const lumber = species['spruce-pine-fir'].lumber['No.2']
    close(lumber.elasticityMin.value, si(row, 'Emin_psi', 'psi'), { abs: 0, rel: 1e-12 })
    close(lumber.compression.value * loadDuration.snow.value, si(row, 'Fc_psi', 'psi'), { abs: 0, rel: 1e-12 })
    const found = columnStability({
      elasticityMin: si(row, 'Emin_psi', 'psi'),
      compression: si(row, 'Fc_psi', 'psi'),
      effectiveLength: si(row, 'le_ft', 'ft'),
      depth: si(row, 'd_in', 'in'),
      builtUp: digits(row, 'Kf'),
    })
    if (!found) throw new Error('no value')
    published(found.slenderness, row, '=le/d')
    published(found.cp, row, '=CP')
    published(found.allowable, row, "=Fc'_psi", 'psi')
    const area = at<SquareMetres>(12.25, 'in2')
    const stress = at<number>(4800, 'lb') / area
    published(stress, row, '=fc_psi', 'psi')
    published(stress / found.allowable, row, '=ratio')
    close(workedColumnLoad({ allowable: found.allowable, area }).value, found.allowable * area, { abs: 0, rel: 1e-12 })
  })
})
