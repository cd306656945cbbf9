import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { deriveMoisture } from '../../../src/core/derive/moisture/deriveMoisture.ts'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { woodWetnesses } from '../../../src/core/engineering/tables/contactWetness.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { withChoice } from '../../../src/core/spec/choose.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { metres, radians } from '../../../src/core/units/quantity.ts'
import { mostBands } from '../../../src/view/scene/materials/wetGlsl.ts'
import { createWetUniforms } from '../../../src/view/scene/materials/wetUniforms.ts'
import { postBounds } from '../../../src/view/scene/pier/drawnPier.ts'
import { showWet } from '../../../src/view/scene/pier/showWet.ts'
import { type Levels, wetBands } from '../../../src/view/scene/pier/wetBands.ts'
import { anyPier } from '../../anyPier.ts'
import { waterAndYears } from '../../../src/view/section/waterAndYears.ts'

/** As the materials read a band: level at a place across the post: -1 at its uphill face, 0 at the axis, 1 at its downhill face [m]. */
const levelAt = ({ uphill, axis, downhill }: Levels, across: number): number =>
  axis + (across < 0 ? uphill - axis : downhill - axis) * Math.min(1, Math.abs(across))

const places = { uphill: -1, axis: 0, downhill: 1 } as const
const fills = ['dry-bag-at-foot', 'dry-full-height', 'mixed-full-height', 'mixed-bracket-pier'] as const
/** The four methods at one site. */
const methods: readonly PierSpec[] = fills.map((kind) => withChoice(defaultSpec, 'fill.kind', kind))
const zonesOf = (spec: PierSpec) => derivePier(spec).zones

describe('[W7] wet wood as bands round the post', () => {
  it('give back the class of every stretch on its own side, whatever the pier', () => {
    fc.assert(
      fc.property(anyPier, (spec) => {
        const { profile } = deriveMoisture(spec)
        const bands = wetBands(profile)
        expect(bands.length).toBeLessThanOrEqual(mostBands)
        for (const { side, from, to, wetness, waterAndAir } of profile) {
          if (to - from < 1e-9) continue
          const y = (from + to) / 2
          // As the picture reads them: of all bands that reach up to a place, the last one counts.
          const found = bands.filter((band) => y <= levelAt(band.to, places[side])).at(-1)
          expect(found).toMatchObject({ wetness, waterAndAir })
        }
      }),
      { numRuns: 150 },
    )
  })

  it('run without a gap, top down, on each side', () => {
    fc.assert(
      fc.property(anyPier, (spec) => {
        const bands = wetBands(deriveMoisture(spec).profile)
        bands.forEach((band, i) => {
          for (const across of [-1, 0, 1]) {
            expect(levelAt(band.to, across)).toBeGreaterThanOrEqual(levelAt(band.from, across))
            const next = bands[i + 1]
            if (next) expect(levelAt(next.to, across)).toBeCloseTo(levelAt(band.from, across), 9)
          }
        })
      }),
      { numRuns: 60 },
    )
  })
})

describe('[W7] what the materials are told of wet wood', () => {
  const told = (spec: PierSpec) => {
    const wet = createWetUniforms()
    showWet(wet, spec, zonesOf(spec), postBounds(zonesOf(spec)), waterAndYears)
    return {
      pour: wet.uWetPour.value,
      cells: Buffer.from(wet.uScatter.value.image.data as Uint8Array).toString('base64'),
      bands: wet.uWetTo.value.slice(0, wet.uWetCount.value).map((band) => band.toArray()),
    }
  }

  it('is another picture for each of the four methods at one site', () => {
    const pictures = methods.map((spec) => JSON.stringify(told(spec)))
    expect(pictures).toHaveLength(4)
    expect(new Set(pictures).size).toBe(4)
  })

  it('has no wet class on a bracket, and one on every post in the ground', () => {
    const worst = methods.map((spec) => Math.max(...told(spec).bands.map(([, , , kind]) => Math.floor(kind ?? 0))))
    expect(worst.slice(0, 3).every((kind) => kind >= woodWetnesses.indexOf('wet-at-times'))).toBe(true)
    const bracket = methods[3]
    if (!bracket) throw new Error('there is no bracket')
    expect(deriveMoisture(bracket).profile.some(({ wetness }) => wetness === 'stays-wet')).toBe(false)
  })

  it('tells of no dry pour where the mix is placed wet, and another one for another pattern', () => {
    const [, dry, mixed] = methods
    if (!dry || !mixed) throw new Error('methods are missing')
    expect(told(mixed).pour).toBe(0)
    expect(told(dry).pour).toBe(1)
    const other = { ...dry, placing: { ...dry.placing, pattern: dry.placing.pattern + 1 } }
    expect(told(other).cells).not.toBe(told(dry).cells)
    expect(told({ ...dry }).cells).toBe(told(dry).cells)
  })

  it('changes values in place, and works nothing out while it is off', () => {
    const wet = createWetUniforms()
    const held = [wet.uWetTo.value[0], wet.uScatter.value, wet.uWetSide.value]
    showWet(wet, defaultSpec, zonesOf(defaultSpec), postBounds(zonesOf(defaultSpec)), null)
    expect([wet.uWet.value, wet.uWetPour.value, wet.uWetCount.value]).toEqual([0, 0, 0])
    showWet(wet, defaultSpec, zonesOf(defaultSpec), postBounds(zonesOf(defaultSpec)), waterAndYears)
    expect(wet.uWet.value).toBe(1)
    expect(wet.uWetCount.value).toBeGreaterThan(0)
    expect([wet.uWetTo.value[0], wet.uScatter.value, wet.uWetSide.value]).toEqual(held)
    for (const [i, one] of [wet.uWetTo.value[0], wet.uScatter.value, wet.uWetSide.value].entries()) expect(one).toBe(held[i])
  })

  it('follows a post that leans: how far it has come over at grade, and how much farther with each metre up', () => {
    const wet = createWetUniforms()
    showWet(wet, defaultSpec, zonesOf(defaultSpec), postBounds(zonesOf(defaultSpec)), waterAndYears)
    expect(wet.uWetLean.value.toArray()).toEqual([0, 0])
    const spec: PierSpec = { ...defaultSpec, post: { ...defaultSpec.post, lean: radians(0.05) } }
    showWet(wet, spec, zonesOf(spec), postBounds(zonesOf(spec)), waterAndYears)
    expect(wet.uWetLean.value.y).toBeCloseTo(Math.tan(0.05), 12)
    // 42 in up from its foot, less what it turns about its lower edge.
    expect(wet.uWetLean.value.x).toBeCloseTo(1.0668 * Math.tan(0.05), 3)
  })

  it('watches the zone that the core names on each side, and none over a bracket', () => {
    for (const spec of methods) {
      const wet = createWetUniforms()
      showWet(wet, spec, zonesOf(spec), postBounds(zonesOf(spec)), waterAndYears)
      const { at, bands } = deriveMoisture(spec).groundline
      expect(wet.uZoneFrom.value.toArray()).toEqual([bands.uphill.from, bands.axis.from, bands.downhill.from])
      expect(wet.uZoneTo.value.toArray()).toEqual([bands.uphill.to, bands.axis.to, bands.downhill.to])
      expect(wet.uZoneTo.value.y > wet.uZoneFrom.value.y).toBe(at !== 'none')
    }
  })

  it('moves with the top of the concrete', () => {
    const mixed = methods[2]
    if (!mixed) throw new Error('the method is missing')
    const lowered = { ...mixed, top: { ...mixed.top, rim: metres(mixed.top.rim - 0.1) } }
    expect(told(lowered).bands).not.toEqual(told(mixed).bands)
  })
})
