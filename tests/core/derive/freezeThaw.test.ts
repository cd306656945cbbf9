import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { freezeThawClass } from '../../../src/core/engineering/concrete/freezeThawClass.ts'
import { type FreezeThaw, freezeThawStrength, nonStructuralFreezeThaw } from '../../../src/core/engineering/tables/concrete.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { toSI } from '../../../src/core/units/factors.ts'
import { metres, pascals } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { checkOf, figure, foot, inch, plainPier, stepOf } from './pierOf.ts'

const with_ = (site: Partial<PierSpec['site']>, top: Partial<PierSpec['top']> = {}): PierSpec => ({
  ...plainPier,
  site: { ...plainPier.site, weathering: 'severe', frostDepth: foot(3), ...site },
  top: { ...plainPier.top, shape: 'crowned', rise: inch(2), rim: inch(1), heaped: metres(0), ...top },
})
const classOf = (spec: PierSpec) => checkOf(derivePier(spec), 'freeze-thaw').why?.replace('freeze-thaw-is-', '')
const least = (spec: PierSpec) => figure(spec, 'freeze-thaw', 'freeze-thaw-least', 'psi')

describe('[C17] strength by freeze-thaw class', () => {
  it.each([
    // ACI 318-19 Table 19.3.2.1 as the reference prints it, and the note on IBC 1904.2 beside it.
    ['F0', 2500, null, 2500],
    ['F1', 3500, 0.55, 3000],
    ['F2', 4500, 0.45, 3500],
    ['F3', 5000, 0.4, 3500],
  ] as const)('%s: %i psi and water over cement %f; %i psi where it is not structural', (id: FreezeThaw, psi, ratio, other) => {
    expect(freezeThawStrength[id].strength.printed).toBe(psi)
    expect(freezeThawStrength[id].maxWaterCement).toBe(ratio)
    expect(nonStructuralFreezeThaw[id].printed).toBe(other)
    close(figure(with_({}), 'freeze-thaw', `freeze-thaw-${id}`, 'psi'), psi, { abs: 1e-6, rel: 0 })
  })
  it('is read off weather, frost and top', () => {
    expect(classOf(with_({ weathering: 'negligible' }))).toBe('F0')
    expect(classOf(with_({}))).toBe('F2')
    expect(classOf(with_({ frostDepth: metres(0) }))).toBe('F1')
    expect(classOf(with_({ frostDepth: metres(0) }, { shape: 'flat', rise: metres(0) }))).toBe('F2')
    expect(classOf(with_({ frostDepth: metres(0) }, { shape: 'flat', rise: metres(0), rim: inch(-6) }))).toBe('F0')
  })
  it('concrete that ends below the frost does not freeze', () => {
    const collar = { ...with_({ frostDepth: foot(2) }), fill: { kind: 'mixed-collar', height: foot(2) } } as const
    expect(classOf(collar)).toBe('F0')
    expect(classOf({ ...collar, site: { ...collar.site, frostDepth: foot(3.5) } })).toBe('F2')
  })
  it('is a reading that an engineer decides on, stands as an assumption, and reaches 1 at its figure', () => {
    const strong = { ...with_({}), concrete: { ...plainPier.concrete, strength: pascals(toSI(4500, 'psi')) } }
    const check = checkOf(derivePier(strong), 'freeze-thaw')
    expect(check).toMatchObject({ counted: "engineer's judgement", ratio: 1, standing: 'assumed here' })
    close(stepOf(check, 'freeze-thaw-water').value, 0.45, { abs: 1e-12, rel: 0 })
  })
  it('more water, more frost or worse weather never asks for less', () => {
    const order = ['F0', 'F1', 'F2']
    const both = [false, true]
    const rank = (...[weathering, inFrozenGround, inOpen, holdsWater]: readonly [0 | 1 | 2, boolean, boolean, boolean]) =>
      order.indexOf(
        freezeThawClass({
          weathering: (['negligible', 'moderate', 'severe'] as const)[weathering],
          inFrozenGround,
          inOpen,
          holdsWater,
        }),
      )
    for (const w of [0, 1] as const)
      for (const ground of both)
        for (const open of both)
          for (const water of both) {
            const here = rank(w, ground, open, water)
            expect(rank((w + 1) as 1 | 2, ground, open, water)).toBeGreaterThanOrEqual(here)
            expect(rank(w, true, open, water)).toBeGreaterThanOrEqual(here)
            expect(rank(w, ground, true, water)).toBeGreaterThanOrEqual(here)
            expect(rank(w, ground, open, true)).toBeGreaterThanOrEqual(here)
          }
    expect(least(with_({}))).toBeGreaterThan(least(with_({ frostDepth: metres(0) })))
  })
})
