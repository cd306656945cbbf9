import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  allowableFromNominal,
  anchorReduction,
  roundPierBreakout,
  workedAllowableFromNominal,
  workedRoundPierBreakout,
} from '../../../src/core/engineering/concrete/breakout.ts'
import type { Metres, Pascals } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('breakout from a round pier', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s in', (_, row) => {
    const diameter = si<Metres>(row, 'D_in', 'in')
    const of = (psi: number) => roundPierBreakout({ diameter, strength: at(psi, 'psi'), embedment: diameter })
    published(of(2500).effective, row, '=hef_in', 'in')
    published(of(2500).nominal, row, '=Ncb-2500_lb', 'lb')
    published(of(3000).nominal, row, '=Ncb-3000_lb', 'lb')
    const reduced = { nominal: of(2500).nominal, reduction: anchorReduction.breakout.value }
    published(allowableFromNominal({ ...reduced, share: 1 }), row, '=phi_lb', 'lb')
    published(allowableFromNominal({ ...reduced, share: 0.6 }), row, '=asd_lb', 'lb')
    expect(workedAllowableFromNominal({ ...reduced, share: 0.6 }).value).toBe(allowableFromNominal({ ...reduced, share: 0.6 }))
    expect(workedRoundPierBreakout({ diameter, strength: at(2500, 'psi'), embedment: diameter }).standing).toBe('secondary')
  })
  it('depth past a third of the diameter adds nothing, and no step falls in between', () => {
    const diameter = at<Metres>(18, 'in')
    const of = (inches: number) => roundPierBreakout({ diameter, strength: at(2500, 'psi'), embedment: at(inches, 'in') }).nominal
    expect(of(30)).toBe(of(12))
    close(of(6 - 1e-9), of(6 + 1e-9), { abs: 0, rel: 1e-6 })
  })
  it('is never weaker in a wider pier or a stronger concrete', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 1.2, noNaN: true }), fc.double({ min: 1e7, max: 4e7, noNaN: true }), (d, f) => {
        const of = (diameter: number, strength: number) =>
          roundPierBreakout({ diameter: diameter as Metres, strength: strength as Pascals, embedment: 1 as Metres }).nominal
        expect(of(d * 1.05, f)).toBeGreaterThanOrEqual(of(d, f))
        expect(of(d, f * 1.05)).toBeGreaterThanOrEqual(of(d, f))
      }),
    )
  })
})
