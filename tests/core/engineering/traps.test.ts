import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { sources } from '../../../src/core/engineering/sources.ts'
import { setChoice } from '../../../src/core/spec/edit.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { traps } from './trapTable.ts'

const root = join(dirname(fileURLToPath(import.meta.url)), '../../..')

describe('claims that need care', () => {
  it('are sixteen, in order, each with a test or a sentence', () => {
    expect(traps.map(({ number }) => number)).toEqual(Array.from({ length: 16 }, (_, i) => i + 1))
    expect(new Set(traps.map(({ id }) => id)).size).toBe(16)
  })
  it.each(traps.map((trap) => [trap.number, trap.id, trap] as const))(
    '%d %s is guarded where it says',
    (number, _, { tests, sources: named }) => {
      expect(tests.length).toBeGreaterThan(0)
      for (const test of tests) {
        expect(existsSync(join(root, test)), test).toBe(true)
        expect(readFileSync(join(root, test), 'utf8'), test).toContain(`[trap ${number}]`)
      }
      for (const id of named) expect(id in sources).toBe(true)
    },
  )
  it('[trap 12] a stand-off is a way out of treatment, never asked for: short of it, nothing is refused', () => {
    const chosen = setChoice(defaultDocument, 'fill.kind', 'mixed-bracket-pier')
    const { spec } = chosen.ok ? chosen.value : expect.fail('no bracket pier')
    const { checks, issues } = derivePier({ ...spec, code: 'ibc-2018' })
    const clearances = checks.filter(({ id }) => id.startsWith('stand-off-above'))
    expect(clearances.map(({ condition }) => condition)).toEqual([true, true])
    expect(clearances.some(({ ratio = 0 }) => ratio > 1)).toBe(true)
    expect(issues).toEqual([])
  })
})
