import fc from 'fast-check'
import { postSections } from '../src/core/engineering/tables/postSections.ts'
import { bracketKinds, fillKinds } from '../src/core/kinds/index.ts'
import type { Fill, PierSpec, PostSectionId, Support } from '../src/core/model/spec.ts'
import { defaultSpec } from '../src/core/spec/defaults.ts'
import { toSI } from '../src/core/units/factors.ts'
import { metres, radians, slope } from '../src/core/units/quantity.ts'

/** Piers of every kind that can be built, for property tests: sizes are drawn so that each part fits the ones before it. */

const inch = (value: number) => metres(toSI(value, 'in'))
/** Evenly spread; a plain double would crowd round zero. Both ends come up often. */
const between = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 10_000 }).map((share) => low + ((high - low) * share) / 10_000)
const maybe = <T>(some: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.oneof(fc.constant(null), some)
const sectionIds = Object.keys(postSections) as PostSectionId[]

const anyHole = (site: PierSpec['site']): fc.Arbitrary<PierSpec['hole']> =>
  fc.record({ diameter: between(inch(12), inch(48)), depth: between(inch(36), inch(120)) }).chain(({ diameter, depth }) => {
    const steep = site.slope
    const bell = fc.record({ diameter: between(diameter * 1.1, diameter * 1.8), height: between(0.1 * depth, 0.25 * depth) })
    // A wide mouth has to end below grade on the downhill side too.
    const flare = fc.record({ diameter: between(diameter * 1.05, diameter * 1.4), depth: between(0.1 * depth, 0.3 * depth) })
    return fc
      .record({
        bell: maybe(bell).map((b) => (b && steep * b.diameter * 0.5 < 0.6 * (depth - b.height) ? b : null)),
        flare: maybe(flare).map((f) => (f && steep * f.diameter * 0.5 < 0.8 * f.depth ? f : null)),
        base: maybe(
          fc.record({ material: fc.constantFrom('gravel' as const, 'concrete' as const), thickness: between(inch(3), 0.15 * depth) }),
        ),
      })
      .map(({ bell: b, flare: f, base }) => ({
        diameter: metres(diameter),
        depth: metres(depth),
        bell: b && { diameter: metres(b.diameter), height: metres(b.height) },
        flare: f && { diameter: metres(f.diameter), depth: metres(f.depth) },
        base: base && { material: base.material, thickness: metres(base.thickness) },
      }))
  })

const anySite: fc.Arbitrary<PierSpec['site']> = fc
  .record({
    slope: fc.oneof(fc.constant(0), between(0.01, 0.5)),
    downhill: between(0, 2 * Math.PI),
    lower: maybe(between(inch(18), inch(90))),
    topsoil: fc.oneof(fc.constant(0), between(inch(2), inch(12))),
    waterTable: maybe(between(inch(12), inch(120))),
  })
  .map(({ slope: steep, downhill, lower, topsoil, waterTable }) => ({
    ...defaultSpec.site,
    slope: slope(steep),
    downhill: radians(downhill),
    lower: lower === null ? null : { from: metres(lower), soil: defaultSpec.site.soil },
    topsoil: metres(topsoil),
    waterTable: waterTable === null ? null : metres(waterTable),
  }))

/** Share of the way up from the base to the downhill edge of grade, for a fill that has a height of its own. */
const fitted = (fill: Fill, room: number, share: number): Fill => {
  if ('height' in fill) return { ...fill, height: metres(Math.min(inch(96), share * room)) }
  if ('pad' in fill) return { ...fill, pad: metres(Math.min(inch(24), share * room)) }
  return fill
}

/** Documents of every kind of fill and bracket, without bars, which change no swept body. */
export const anyPier: fc.Arbitrary<PierSpec> = anySite.chain((site) =>
  fc
    .record({
      hole: anyHole(site),
      section: fc.constantFrom(...sectionIds),
      kind: fc.constantFrom(...fillKinds),
      bracket: fc.constantFrom(...bracketKinds),
      foot: between(0, 0.3),
      share: between(0.15, 0.6),
      shape: fc.constantFrom('flat' as const, 'crowned' as const, 'dished' as const),
      rise: between(inch(0.5), inch(3)),
      rim: between(inch(-3), inch(8)),
      heaped: fc.oneof(fc.constant(0), between(inch(1), inch(8))),
      above: between(inch(36), inch(120)),
      standOff: between(inch(1), inch(6)),
    })
    .filter(({ hole, section }) => {
      const { width, depth } = postSections[section]
      return Math.hypot(width, depth) < hole.diameter - inch(2)
    })
    .map((drawn): PierSpec => {
      const { hole, kind, bracket } = drawn
      const room = hole.depth - (hole.base?.thickness ?? 0) - (site.slope * hole.diameter) / 2
      const support: Support =
        kind.support === 'bracket'
          ? { kind: 'bracket', bracket: bracket.defaults, standOff: metres(drawn.standOff) }
          : { kind: 'embedded', foot: metres(drawn.foot * hole.depth) }
      return {
        ...defaultSpec,
        site,
        hole,
        post: { ...defaultSpec.post, section: drawn.section, heightAboveGrade: metres(drawn.above) },
        support,
        fill: fitted(kind.defaults, room, drawn.share),
        bars: null,
        verticalBars: null,
        top: { shape: drawn.shape, rise: metres(drawn.rise), rim: metres(drawn.rim), heaped: metres(drawn.heaped) },
      }
    }),
)
