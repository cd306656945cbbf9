import fc from 'fast-check'
import { bars } from '../../../src/core/engineering/tables/bars.ts'
import { cover } from '../../../src/core/engineering/tables/concrete.ts'
import { postSections } from '../../../src/core/engineering/tables/postSections.ts'
import type { BarSize, PierSpec, Soil } from '../../../src/core/model/spec.ts'
import { soilMechanisms } from '../../../src/core/spec/pier/pier.ts'
import { throughBarFields, verticalBarFields } from '../../../src/core/spec/pier/steel.ts'
import { validateSpec } from '../../../src/core/spec/validate.ts'
import { toSI } from '../../../src/core/units/factors.ts'
import { metres, newtons, pascals, radians, unitWeight } from '../../../src/core/units/quantity.ts'
import type { PressureGradient } from '../../../src/core/units/quantity.ts'
import { anyPier } from '../../anyPier.ts'

const inch = (value: number) => toSI(value, 'in')
const between = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 10_000 }).map((share) => low + ((high - low) * share) / 10_000)
const maybe = <T>(some: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.oneof(fc.constant(null), some)

const anySoil: fc.Arbitrary<Soil> = fc.oneof(
  fc.constantFrom('crystalline-rock' as const, 'gravel' as const, 'sand' as const, 'clay' as const).map((name) => ({
    kind: 'presumptive' as const,
    class: name,
  })),
  fc
    .record({
      weight: between(15e3, 21e3),
      angle: between(0.2, 0.7),
      cohesion: fc.oneof(fc.constant(0), between(10e3, 250e3)),
      friction: fc.oneof(fc.constant(0), between(2e3, 20e3)),
    })
    .map(({ weight, angle, cohesion, friction }) => ({
      kind: 'user' as const,
      unitWeight: unitWeight(weight),
      frictionAngle: radians(angle),
      cohesion: pascals(cohesion),
      allowableBearing: pascals(100e3),
      lateral: 20e3 as PressureGradient,
      sideFriction: pascals(friction),
    })),
)

/** Bars that fit: covered at their ends, seven diameters up or a little less, and apart where there are two. */
const anyBars = (spec: PierSpec): fc.Arbitrary<PierSpec['bars']> =>
  fc
    .record({
      size: fc.constantFrom<BarSize>('#4', '#5', '#6'),
      count: fc.integer({ min: 1, max: 2 }),
      up: between(3.2, 12),
      cut: between(0, 1),
    })
    .map(({ size, count, up, cut }) => {
      const d = bars[size].diameter.value
      const most = spec.hole.diameter - 2 * cover.castAgainstEarth.value
      const least = postSections[spec.post.section].width + inch(1)
      return {
        ...throughBarFields.first,
        size,
        count,
        aboveFoot: metres(up * d),
        spacing: metres(4.2 * d),
        length: metres(Math.max(least, most - cut * inch(6))),
      }
    })

/** The same with thin upright bars that are developed past a connection 16 in over the bottom of the concrete and under its top. */
const developed = (spec: PierSpec): PierSpec => {
  const under = spec.support.kind === 'embedded' ? spec.support.foot - (spec.hole.base?.thickness ?? 0) : 0
  return {
    ...spec,
    support:
      spec.support.kind === 'bracket'
        ? { ...spec.support, bracket: { ...spec.support.bracket, embedment: metres(Math.max(spec.support.bracket.embedment, inch(16))) } }
        : spec.support,
    bars: spec.bars && { ...spec.bars, aboveFoot: metres(Math.max(spec.bars.aboveFoot, inch(16) - under)) },
    verticalBars: { ...verticalBarFields.first, size: '#3', grade: '40' },
  }
}

/**
 * Piers whose chain is mostly counted: mixed concrete, with bars where a post stands in it, over every soil, blow count, frost depth and
 * vertical steel. They can all be built.
 */
export const countedPier: fc.Arbitrary<PierSpec> = anyPier
  .filter(({ fill }) => fill.kind.startsWith('mixed'))
  .chain((spec) =>
    fc
      .record({
        soil: anySoil,
        lower: anySoil,
        frost: between(0, inch(40)),
        blows: maybe(fc.integer({ min: 4, max: 50 })),
        bars: anyBars(spec),
        isDeveloped: fc.integer({ min: 0, max: 9 }).map((tenth) => tenth > 0),
        vertical: maybe(fc.constant(verticalBarFields.first)),
        mechanism: maybe(fc.constantFrom(...soilMechanisms)),
        rating: maybe(between(5e3, 50e3)),
        strength: between(toSI(2500, 'psi'), toSI(6000, 'psi')),
        unitWeight: fc.constantFrom('plain' as const, 'reinforced' as const),
      })
      .map((drawn) => ({
        isDeveloped: drawn.isDeveloped,
        pier: {
          ...spec,
          site: {
            ...spec.site,
            soil: drawn.soil,
            lower: spec.site.lower && { ...spec.site.lower, soil: drawn.lower },
            frostDepth: metres(drawn.frost),
            blows: drawn.blows,
          },
          support:
            spec.support.kind === 'bracket'
              ? { ...spec.support, bracket: { ...spec.support.bracket, rating: drawn.rating === null ? null : newtons(drawn.rating) } }
              : spec.support,
          judgement: drawn.mechanism && { mechanism: drawn.mechanism, reason: 'drawn for a test' },
          bars: spec.support.kind === 'embedded' ? drawn.bars : null,
          verticalBars: drawn.vertical,
          concrete: { ...spec.concrete, strength: pascals(drawn.strength), unitWeight: drawn.unitWeight },
        } satisfies PierSpec,
      })),
  )
  .map((spec) => (spec.isDeveloped ? developed(spec.pier) : spec.pier))
  .filter((spec) => validateSpec(spec).every((issue) => issue.severity !== 'error'))
