import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { standOffCondition } from '../../../src/core/engineering/detail/standOff.ts'
import { sources } from '../../../src/core/engineering/sources.ts'
import { traps } from './trapTable.ts'
import type { Metres } from '../../../src/core/units/quantity.ts'

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
    const found = standOffCondition({ edition: 'irc-2012-2018', aboveConcrete: 0 as Metres, aboveEarth: 0 as Metres, exposed: true })
    expect(found.conditionReached).toBe(false)
    expect(Object.keys(found)).not.toContain('required')
  })
})
