import { describe, expect, it } from 'vitest'
import { plainReduction, plainStress, workedPlainBearing } from '../../../src/core/engineering/concrete/plainConcrete.ts'
import { footingRules, reachByBending, reachByPunching } from '../../../src/core/engineering/concrete/plainFooting.ts'
import { fromPrinted } from '../../../src/core/engineering/cited.ts'
import type { Metres, Pascals, SquareMetres } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('plain concrete without steel, against a design note that was worked by hand', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const of = row.of === 'bending' || row.of === 'shear' || row.of === 'punching' ? row.of : expect.fail(row.of)
    const stress = plainReduction.value * plainStress({ strength: si<Pascals>(row, 'fc_psi', 'psi'), of })
    const width = si(row, 'width_in', 'in')
    const thick = si(row, 'thick_in', 'in')
    const moment = (stress * width * thick ** 2) / 6
    published(moment, row, '=moment_ftlb', 'lb-ft')
    // The note rounds its widths to 0.01 in before it goes on: up to 0.02 percent.
    published(moment / fromPrinted(1, 'in'), row, '=moment_inlb', 'lb', at(20, 'lb'))
    published(stress * width * thick, row, '=force_lb', 'lb', at(10, 'lb'))
  })
  it('a 12 in bell is cut from a 12 in column: 2 in are lost on the ground, 8 in is the least, and 6 in that of the residential code', () => {
    const { least, leastResidential, lostOnGround } = footingRules
    expect([least.printed, leastResidential.printed, lostOnGround.printed]).toEqual([8, 6, 2])
  })
  it('concrete of 2,500 psi under a 5 1/2 in post: 0.60 x 0.85 x 2,500 x 30.25 / 1.6 = 24,106 lb by hand', () => {
    const shown = workedPlainBearing({
      strength: at<Pascals>(2500, 'psi'),
      area: at<SquareMetres>(30.25, 'in2'),
      reduction: plainReduction.value,
      loadFactor: footingRules.loadFactor.value,
    })
    close(shown.value, at(24_105.5, 'lb'), { abs: at(1, 'lb'), rel: 0 })
    expect(shown.standing).toBe('secondary')
  })

  const pressures = [1500, 2000, 3000, 4000, 12_000, 40_000].map((psf) => at<Pascals>(1.6 * psf, 'psf'))
  const everywhere = (ask: (thick: Metres, strength: Pascals, pressure: Pascals) => void) => {
    for (const inches of [6, 10, 22, 46])
      for (const psi of [2500, 3500, 5000])
        for (const pressure of pressures) ask(at<Metres>(inches, 'in'), at<Pascals>(psi, 'psi'), pressure)
  }
  it('at the reach by bending the moment at the face is what the section holds', () =>
    everywhere((thick, strength, pressure) => {
      const reach = reachByBending({ thick, strength, pressure })
      const held = (plainReduction.value * plainStress({ strength, of: 'bending' }) * thick ** 2) / 6
      close((pressure * reach ** 2) / 2, held, { abs: 0, rel: 1e-12 })
    }))
  it('at the reach by punching the load outside h/2 is what the plane there holds', () =>
    everywhere((thick, strength, pressure) => {
      const [loadedWidth, loadedDepth] = [at<Metres>(5.5, 'in'), at<Metres>(7.5, 'in')]
      const reach = reachByPunching({ thick, strength, pressure, loadedWidth, loadedDepth })
      const outside = (loadedWidth + 2 * reach) * (loadedDepth + 2 * reach) - (loadedWidth + thick) * (loadedDepth + thick)
      const round = 2 * (loadedWidth + loadedDepth + 2 * thick)
      close(pressure * outside, plainReduction.value * plainStress({ strength, of: 'punching' }) * round * thick, { abs: 0, rel: 1e-9 })
    }))
  it('shear across at h from the face never rules: the reach ends first, by bending or by the thickness', () =>
    everywhere((thick, strength, pressure) => {
      const reach = Math.min(thick + footingRules.lostOnGround.value, reachByBending({ thick, strength, pressure }))
      const held = plainReduction.value * plainStress({ strength, of: 'shear' }) * thick
      expect(pressure * Math.max(0, reach - thick)).toBeLessThan(held)
    }))
})
