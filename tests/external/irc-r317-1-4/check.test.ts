import { describe, expect, it } from 'vitest'
import { standOffRules } from '../../../src/core/engineering/tables/standOff.ts'
import type { CodeEdition } from '../../../src/core/model/spec.ts'
import { published, readCases } from '../cases.ts'

describe('stand-off, a condition by code and edition', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id as CodeEdition, row] as const))('%s', (edition, row) => {
    const rule = standOffRules[edition]
    published(rule.aboveConcrete.value, row, '=concrete_in', 'in')
    published(rule.aboveEarth.value, row, '=earth_in', 'in')
    expect(rule).toMatchObject({ join: row.join, weatherExposed: row.weather === 'yes', barrier: true })
    expect(rule.aboveEarth.standing).toBe(row.standing)
  })
})
