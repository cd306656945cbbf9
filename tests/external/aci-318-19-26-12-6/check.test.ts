import { describe, expect, it } from 'vitest'
import { coreAcceptance } from '../../../src/core/engineering/concrete/cores.ts'
import type { Pascals } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('core acceptance', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const cores = ['core1', 'core2', 'core3'].map((name) => si<Pascals>(row, name, 'psi'))
    const found = coreAcceptance({ cores, specified: si(row, 'specified', 'psi') })
    if (!found) throw new Error('no verdict')
    published(found.mean, row, '=mean_psi', 'psi')
    published(found.meanPercent, row, '=mean_percent')
    expect(found.meets).toBe(row.meets === 'yes')
  })
  it('vector 24: the printed mean of 5,090 is 84.8 %, and that too rounds to 85', () => {
    close(5090 / 60, 84.8, { abs: 0.05, rel: 0 })
    expect(Math.round(5090 / 60)).toBe(85)
  })
  it('two cores are no set', () =>
    expect(coreAcceptance({ cores: [at(3000, 'psi'), at(3000, 'psi')], specified: at(3000, 'psi') })).toBeNull())
})
