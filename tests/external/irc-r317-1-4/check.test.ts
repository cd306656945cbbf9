import { describe, expect, it } from 'vitest'
import { standOffCondition } from '../../../src/core/engineering/detail/standOff.ts'
import { standOffRules } from '../../../src/core/engineering/tables/standOff.ts'
import type { CodeEdition } from '../../../src/core/model/spec.ts'
import { readCases, si } from '../cases.ts'

describe('stand-off, a condition by code and edition', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const found = standOffCondition({
      edition: row.edition as CodeEdition,
      aboveConcrete: si(row, 'concrete_in', 'in'),
      aboveEarth: si(row, 'earth_in', 'in'),
      exposed: row.exposed === 'yes',
    })
    expect(found.conditionReached).toBe(row.reached === 'yes')
    expect(found.notForWeather).toBe(row.id === 'ibc-2018-weather')
    expect(found.barrier).toBe(true)
  })
  it('holds the printed inches', () => {
    const printed = (edition: CodeEdition) => [standOffRules[edition].aboveConcrete.printed, standOffRules[edition].aboveEarth.printed]
    expect(printed('irc-2012-2018')).toEqual([1, 6])
    expect(printed('ibc-2012')).toEqual([1, 6])
    expect(printed('ibc-2018')).toEqual([1, 8])
    expect(standOffRules['irc-2021'].aboveEarth.standing).toBe('from memory')
  })
})
