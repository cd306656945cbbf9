import { describe, expect, it } from 'vitest'
import { weatherFlags } from '../../../src/core/engineering/mix/weatherFlags.ts'
import { concreteWeather, discharge, placingTemperature, protection } from '../../../src/core/engineering/tables/concreteWeather.ts'
import type { Celsius } from '../../../src/core/units/quantity.ts'
import { has, published, readCases, si } from '../cases.ts'

describe('weather while concrete is placed', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const flags = weatherFlags({
      coldestAir: si(row, 'air_degF', 'degF'),
      concrete: has(row, 'concrete_degF') ? si<Celsius>(row, 'concrete_degF', 'degF') : null,
      groundFrozen: row.frozen === 'yes',
      thickness: si(row, 'section_in', 'in'),
    })
    expect(flags.map(({ id }) => id).join(' ')).toBe(row.flags)
  })
  it.each(readCases(import.meta.url, 'limits.csv').map((row) => [row.id, row] as const))('%s', (id, row) => {
    const limit = id === 'cold air' ? concreteWeather.coldAir : concreteWeather.hotConcrete
    published(limit.value, row, '=degF', 'degF')
    published(limit.value, row, '=degC', 'degC')
  })
  it('[trap 13] 300 turns of the drum belong to older editions', () => {
    expect(Object.keys(discharge)).toContain('olderEditionsDrumTurns')
    expect(discharge.time.printed).toBe(90)
    expect(concreteWeather.firstFreeze.printed).toBe(500)
    expect(placingTemperature.map(({ least }) => [least.printed, least.standing])).toEqual([
      [55, 'from memory'],
      [50, 'from memory'],
    ])
    expect([protection.notExposed.printed, protection.exposed.printed]).toEqual([2, 3])
  })
})
