import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { type Properties, tableProperties } from '../../../src/core/derive/properties.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { makeDocument } from '../../../src/core/spec/validate.ts'
import { startingAssumptions } from '../../../src/core/uncertainty/assumptions.ts'
import { valueAtShare } from '../../../src/core/uncertainty/distributions.ts'
import { asEntered, type Draw, inputIds, inputs, inputsOf } from '../../../src/core/uncertainty/inputs.ts'
import { isPossible } from '../../../src/core/uncertainty/possible.ts'
import { drawnProperties, drawnSpec, keptProperties, upliftSample } from '../../../src/core/uncertainty/upliftSample.ts'
import { arbitraryPier } from '../../arbitraryPier.ts'
import { close } from '../../close.ts'
import { countedPier } from './countedPier.ts'

/** Holds a try against the whole result of the same pier: the same links, and the same number to a part in 1e9. */
const agrees = (spec: PierSpec, { soil, links, governing }: ReturnType<typeof upliftSample>): boolean => {
  const { uplift } = derivePier(spec)
  expect(soil?.id ?? '').toBe(uplift.soil)
  expect(governing?.id ?? null).toBe(uplift.governing)
  expect(links.filter((link) => link.allowable === null).map((link) => link.id)).toEqual(uplift.uncounted)
  if (!governing?.allowable || uplift.allowable === null) return false
  close(governing.allowable.value, uplift.allowable, { abs: 0, rel: 1e-9 })
  return true
}

const shareOf = fc.integer({ min: 1, max: 999 }).map((part) => part / 1000)
const anyDraw = (spec: PierSpec): fc.Arbitrary<Draw> =>
  fc.array(shareOf, { minLength: inputIds.length, maxLength: inputIds.length }).map((shares) => {
    const draw = asEntered()
    const here = new Set(inputsOf(spec).map((input) => input.id))
    startingAssumptions.forEach(({ id, spread }, i) => {
      if (here.has(id)) draw[id] = valueAtShare(spread)(shares[i] ?? 0.5)
    })
    return draw
  })

/** Draws that a document can say: materials as the tables have them, sizes, strengths and the user's own soil as drawn. */
const sayable = (draw: Draw): Draw => ({ ...draw, 'concrete-weight': 1, 'wood-gravity': 1 })

/** The drawn pier as a document of its own. Only a soil that the user describes can be written down as drawn. */
const written = (spec: PierSpec, draw: Draw): PierSpec => {
  const drawn = drawnSpec(spec, draw)
  const soil = (one: PierSpec['site']['soil']): PierSpec['site']['soil'] =>
    one.kind === 'presumptive'
      ? one
      : ({
          ...one,
          frictionAngle: one.frictionAngle + draw['friction-angle'],
          cohesion: one.cohesion * draw['clay-strength'],
          sideFriction: one.sideFriction * draw['user-friction'],
          unitWeight: one.unitWeight * draw['soil-weight'],
        } as typeof one)
  const { site } = drawn
  return { ...drawn, site: { ...site, soil: soil(site.soil), lower: site.lower && { ...site.lower, soil: soil(site.lower.soil) } } }
}

describe('[N3] a try is the chain itself', () => {
  it('of any pier as entered, counted or not', () => {
    const seen = { counted: 0, uncounted: 0 }
    fc.assert(
      fc.property(
        fc.oneof(
          arbitraryPier().map(({ spec }) => spec),
          countedPier,
        ),
        (spec) => {
          seen[agrees(spec, upliftSample(spec, asEntered())) ? 'counted' : 'uncounted']++
        },
      ),
      { numRuns: 200, seed: 21 },
    )
    expect(seen.counted).toBeGreaterThan(20)
    expect(seen.uncounted).toBeGreaterThan(20)
  })

  it('of piers that can be counted, with every soil, bar, bell, base, water and slope', () => {
    const seen = { counted: 0, soils: new Set<string>(), governing: new Set<string>() }
    fc.assert(
      fc.property(countedPier, (spec) => {
        const chain = upliftSample(spec, asEntered())
        if (!agrees(spec, chain)) return
        seen.counted++
        seen.soils.add(chain.soil?.id ?? '')
        seen.governing.add(chain.governing?.id ?? '')
      }),
      { numRuns: 300, seed: 22 },
    )
    expect(seen.counted).toBeGreaterThan(120)
    expect([...seen.soils].length).toBeGreaterThan(3)
    expect([...seen.governing].length).toBeGreaterThan(3)
  })

  it('of a pier that came out otherwise, as if it had been entered so', () => {
    let counted = 0
    fc.assert(
      fc.property(
        countedPier.chain((spec) => fc.tuple(fc.constant(spec), anyDraw(spec))),
        ([spec, all]) => {
          const isOwn = (soil: PierSpec['site']['soil']) => soil.kind === 'user'
          const ownSoil = isOwn(spec.site.soil) && (!spec.site.lower || isOwn(spec.site.lower.soil))
          // A soil of the tables can't be written down as drawn: it keeps its figures here.
          const draw = {
            ...sayable(all),
            ...(ownSoil ? {} : { 'friction-angle': 0, 'soil-weight': 1, 'clay-strength': 1, 'user-friction': 1 }),
          }
          if (!isPossible(spec, draw)) return
          if (agrees(written(spec, draw), upliftSample(spec, draw))) counted++
        },
      ),
      { numRuns: 300, seed: 23 },
    )
    expect(counted).toBeGreaterThan(100)
  })

  it('with figures kept for a study is the try without', () => {
    fc.assert(
      fc.property(
        countedPier.chain((spec) => fc.tuple(fc.constant(spec), anyDraw(spec))),
        ([spec, draw]) => {
          const said = (properties?: Properties) =>
            upliftSample(spec, draw, properties).links.map(({ id, counting, allowable }) => [id, counting, allowable?.value])
          expect(said(keptProperties(spec))).toEqual(said())
        },
      ),
      { numRuns: 100, seed: 24 },
    )
  })
})

describe('[N4] inputs', () => {
  it('are each assumed about once, in the order in which they are listed', () => {
    expect(startingAssumptions.map(({ id }) => id)).toEqual([...inputIds])
    expect(inputs.map(({ id }) => id)).toEqual([...inputIds])
    expect(startingAssumptions.every(({ standing }) => standing === 'assumed here')).toBe(true)
  })

  it('change what they are named for and nothing else', () => {
    const seen = new Set<string>()
    fc.assert(
      fc.property(countedPier, (spec) => {
        const properties = tableProperties(spec)
        const before = { spec: drawnSpec(spec, asEntered()), gravity: properties.gravity }
        for (const input of inputsOf(spec)) {
          const draw = { ...asEntered(), [input.id]: input.as === 'times' ? 1.07 : 0.011 }
          const after = { spec: drawnSpec(spec, draw), properties: drawnProperties(properties, draw, spec) }
          const isSame = JSON.stringify(after.spec) === JSON.stringify(before.spec)
          const materials = ['friction-angle', 'clay-strength', 'user-friction', 'soil-weight', 'concrete-weight', 'wood-gravity']
          expect([input.id, isSame]).toEqual([input.id, materials.includes(input.id)])
          const role = input.id === 'soil-weight' ? 'soil' : input.id === 'concrete-weight' ? 'concrete' : null
          if (role) close(after.properties.weighing(role).moist, 1.07 * properties.weighing(role).moist, { abs: 0, rel: 1e-12 })
          seen.add(input.id)
        }
      }),
      { numRuns: 200, seed: 25 },
    )
    expect([...inputIds].filter((id) => !seen.has(id))).toEqual([])
  })

  it('leave a pier as entered when they draw nothing', () => {
    fc.assert(
      fc.property(arbitraryPier(), ({ spec }) => {
        expect(drawnSpec(spec, asEntered())).toEqual(spec)
        expect(makeDocument({ ...defaultDocument, spec: drawnSpec(spec, asEntered()) }).ok).toBe(true)
      }),
      { numRuns: 100, seed: 26 },
    )
  })
})
