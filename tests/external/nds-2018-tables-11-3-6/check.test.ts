import { describe, expect, it } from 'vitest'
import { groupAction, workedGroupAction } from '../../../src/core/engineering/wood/groupAction.ts'
import type { Metres, Pascals, SquareMetres } from '../../../src/core/units/quantity.ts'
import { digits, published, readCases, si } from '../cases.ts'

describe('group action factor', () => {
  const cases = readCases(import.meta.url)
  const inputs = (row: (typeof cases)[number]) => ({
    diameter: si<Metres>(row, 'D_in', 'in'),
    spacing: si<Metres>(row, 's_in', 'in'),
    count: digits(row, 'n'),
    main: { elasticity: si<Pascals>(row, 'Em_psi', 'psi'), area: si<SquareMetres>(row, 'Am_in2', 'in2') },
    side: { elasticity: si<Pascals>(row, 'Es_psi', 'psi'), area: si<SquareMetres>(row, 'As_in2', 'in2') },
    joint: row.joint as 'wood-wood' | 'wood-metal',
  })
  it.each(cases.map((row) => [row.id, row] as const))('%s', (_, row) => {
    const { cg, u, m, rea } = groupAction(inputs(row))
    published(cg, row, '=table')
    // G3 comes to 0.876788, listed as 0.87678: cut short.
    published(cg, row, '=Cg', '1', row.id === 'G3' ? 4e-6 : 0)
    published(u, row, '=u')
    published(m, row, '=m')
    published(rea, row, '=REA')
    expect(workedGroupAction(inputs(row)).value).toBe(cg)
  })
  it('is 1 for one dowel and never above 1, and falls as the row grows', () => {
    const [first] = cases
    if (!first) throw new Error('no case')
    const of = (count: number) => groupAction({ ...inputs(first), count }).cg
    expect(of(1)).toBe(1)
    let last = 1
    for (let n = 2; n <= 12; n++) {
      expect(of(n)).toBeLessThanOrEqual(last + 1e-12)
      last = of(n)
    }
  })
})
