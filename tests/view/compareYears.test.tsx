// @vitest-environment jsdom
import { describe, expect, it } from 'vitest'
import type { FillId, PierSpec } from '../../src/core/model/spec.ts'
import { withChoice } from '../../src/core/spec/choose.ts'
import { costFields } from '../../src/core/spec/pier/life.ts'
import { defaultSpec } from '../../src/core/spec/defaults.ts'
import { rowsFor } from '../../src/state/compareRows.ts'
import { derived } from '../../src/state/derived.ts'
import { compare } from '../../src/words/en/compare.ts'
import { cells } from '../../src/view/cells/cells.tsx'
import { draw } from './page.ts'

const prices = {
  ...costFields.first.prices,
  'mixed-full-height': { first: 100, replacement: 600 },
  'mixed-bracket-pier': { first: 250, replacement: 90 },
}
const built = (kind: FillId, costs: PierSpec['costs'] = null, life = defaultSpec.life) =>
  derived({ ...withChoice(defaultSpec, 'fill.kind', kind), costs, life })
const said = async (row: 'wet' | 'life' | 'cost' | 'replace', result: ReturnType<typeof built>): Promise<string> => {
  const Cell = cells[row]
  const page = await draw(<Cell result={result} />)
  const words = document.body.textContent ?? ''
  await page.end()
  return words
}

describe('[Y5] years and cost side by side', () => {
  it('tell a price that is missing from a life that nobody knows, and show money as a range', async () => {
    const costs = { ...costFields.first, prices }
    expect(await said('cost', built('mixed-full-height'))).toBe(compare.table.noPrice)
    expect(await said('cost', built('dry-full-height', costs))).toBe(compare.table.noPrice)
    expect(await said('cost', built('mixed-bracket-pier', costs))).toBe(compare.table.noLifeCost)
    const own = { ...defaultSpec.life, reference: 'own' as const }
    expect(await said('cost', built('mixed-full-height', costs))).toBe(compare.table.noLifeCost)
    expect(await said('cost', built('mixed-full-height', costs, own))).toMatch(/^284 to 891 in money of today/)
  })

  it('give the share that rows leave open, or say that none speaks of such a post', async () => {
    expect(await said('life', built('mixed-full-height'))).toContain(compare.table.goneBy('50', '0', '41'))
    expect(await said('life', built('mixed-bracket-pier'))).toBe(compare.table.noLife)
  })

  it('say the classes of wet wood, and the hours of a change only where the trade has a figure', async () => {
    expect(await said('wet', built('mixed-bracket-pier'))).toBe(compare.table.noWood)
    expect(await said('wet', built('mixed-full-height'))).toMatch(/\d%/)
    expect(await said('replace', built('mixed-full-height'))).toContain(compare.table.noTime)
    expect(await said('replace', built('mixed-bracket-pier'))).not.toContain(compare.table.noTime)
  })

  it('pick no best and no worst', () => {
    for (const row of rowsFor([built('mixed-full-height')]))
      if (['wet', 'life', 'cost', 'replace'].includes(row.id)) expect(row.better).toBeNull()
  })
})
