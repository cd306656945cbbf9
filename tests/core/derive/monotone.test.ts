import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { materialWeights } from '../../../src/core/engineering/tables/materials.ts'
import type { PierSpec, Soil } from '../../../src/core/model/spec.ts'
import type { Check } from '../../../src/core/model/worked.ts'
import { toSI } from '../../../src/core/units/factors.ts'
import { metres, newtons, pascals, pressureGradient } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { canBeBuilt, fallen, ofEach, rounding, values } from './manyPiers.ts'
import { figure, inch, plainPier } from './pierOf.ts'

const eachSoil = (spec: PierSpec, change: (soil: Extract<Soil, { kind: 'user' }>) => Soil): PierSpec => {
  const of = (soil: Soil) => (soil.kind === 'user' ? change(soil) : soil)
  return {
    ...spec,
    site: { ...spec.site, soil: of(spec.site.soil), lower: spec.site.lower && { ...spec.site.lower, soil: of(spec.site.lower.soil) } },
  }
}

describe('[C11] a weaker part never makes a stronger pier', () => {
  const weaker: Readonly<Record<string, (spec: PierSpec) => PierSpec>> = {
    // No cores: they speak for a strength that is asked, and asking for less makes the same cores better.
    'weaker concrete': (spec) => ({
      ...spec,
      concrete: { ...spec.concrete, cores: null, strength: pascals(0.8 * spec.concrete.strength) },
    }),
    'an unmarked bar': (spec) => ({ ...spec, bars: spec.bars && { ...spec.bars, grade: 'unknown' } }),
    'a shorter bar': (spec) => ({ ...spec, bars: spec.bars && { ...spec.bars, length: metres(0.95 * spec.bars.length) } }),
    'looser soil': (spec) =>
      eachSoil(spec, (soil) => ({
        ...soil,
        unitWeight: (0.9 * soil.unitWeight) as typeof soil.unitWeight,
        cohesion: pascals(0.9 * soil.cohesion),
        allowableBearing: pascals(0.9 * soil.allowableBearing),
        lateral: pressureGradient(0.9 * soil.lateral),
        sideFriction: pascals(0.9 * soil.sideFriction),
      })),
    'more frost': (spec) => ({ ...spec, site: { ...spec.site, frostDepth: metres(spec.site.frostDepth + 0.1) } }),
    'more topsoil': (spec) => ({ ...spec, site: { ...spec.site, topsoil: metres(spec.site.topsoil + 0.05) } }),
    'a lower rating': (spec) =>
      spec.support.kind === 'bracket' && spec.support.bracket.rating !== null
        ? {
            ...spec,
            support: { ...spec.support, bracket: { ...spec.support.bracket, rating: newtons(0.7 * spec.support.bracket.rating) } },
          }
        : spec,
  }
  /** Softer concrete beside several bars lets them share a pull more evenly: the one place where a weaker part may hold more. */
  const sharesMoreEvenly = (name: string, { bars }: PierSpec) => name === 'weaker concrete' && bars !== null && bars.count > 1

  /** Topsoil in place of ground that somebody entered as lighter than it weighs the rest down more. */
  const weighsMore = (name: string, { site: { soil } }: PierSpec) =>
    name === 'more topsoil' && soil.kind === 'user' && soil.unitWeight < materialWeights.topsoil.unitWeight.value

  it.each(Object.entries(weaker))('%s', (name, change) => {
    ofEach((pier) => {
      const spec = { ...pier, concrete: { ...pier.concrete, cores: null } }
      const changed = change(spec)
      if (!canBeBuilt(changed) || sharesMoreEvenly(name, spec) || weighsMore(name, spec)) return
      const before = derivePier(spec)
      const after = derivePier(changed)
      const isLink = (check: Check) => check.group.startsWith('uplift')
      expect(fallen(values(after, isLink), values(before, isLink))).toEqual([])
      if (before.uplift.allowable !== null && after.uplift.allowable !== null)
        expect(after.uplift.allowable).toBeLessThanOrEqual(before.uplift.allowable * (1 + rounding) + rounding)
    })
  })

  it('softer wood holds a single bar or bolt less, if not the post itself, whose values go by grade', () => {
    ofEach((spec) => {
      const dowels = spec.support.kind === 'bracket' ? spec.support.bracket.boltCount : (spec.bars?.count ?? 0)
      if (dowels !== 1) return
      const isDowel = (check: Check) => check.id === 'bar-through-post' || check.id === 'bracket-bolts'
      const soft = derivePier({ ...spec, post: { ...spec.post, species: 'cedar' } })
      expect(fallen(values(soft, isDowel), values(derivePier(spec), isDowel))).toEqual([])
    })
  })

  it('water that stands higher is never stronger, up or sideways', () => {
    ofEach((spec, i) => {
      const at = (water: number | null) =>
        derivePier({ ...spec, site: { ...spec.site, waterTable: water === null ? null : metres(water) } })
      const tenths = i % 40
      const low = at(tenths === 39 ? null : tenths / 10 + 0.3)
      const high = at(tenths / 10)
      const held = (check: Check) => check.group.startsWith('uplift') || check.group === 'lateral'
      expect(fallen(values(high, held), values(low, held))).toEqual([])
    })
  })
})

describe('[C12] deeper and wider, mechanism by mechanism', () => {
  const isSoil = (check: Check) => check.group === 'uplift-soil' || check.id === 'lateral-embedment' || check.id === 'lateral-held-at-grade'
  type Pair = Readonly<{ before: PierSpec; after: PierSpec; id: string }>
  const isRock = ({ site }: PierSpec) =>
    [site.soil, site.lower?.soil].some((soil) => soil?.kind === 'presumptive' && soil.class.endsWith('rock'))

  /** Every case in which more hole may hold less, with its cause. Nothing else may. */
  const exceptions: Readonly<Record<string, (pair: Pair) => boolean>> = {
    'in clay one diameter over the bottom does not count, so a wider pier loses length': ({ id, before, after }) =>
      id === 'clay-adhesion-and-weight' && after.hole.diameter > before.hole.diameter,
    'on a slope a wider pier has its downhill edge lower, and so less depth': ({ before, after }) =>
      before.site.slope > 0 && after.hole.diameter > before.hole.diameter,
    'a deeper pier may pass into a second soil, whose lesser value then holds for the whole length': ({ before, after }) =>
      before.site.lower !== null && after.hole.depth > before.hole.depth,
    'rock has no friction angle, so a pier that reaches it counts its weight alone': ({ before }) => isRock(before),
    'wood and fill under water weigh less than nothing: a deeper post floats more': ({ before, after }) =>
      before.site.waterTable !== null && after.hole.depth > before.hole.depth,
    'a wide mouth or a bell that stays as it is loses its step to a wider shaft': ({ before, after }) =>
      (before.hole.bell !== null || before.hole.flare !== null) && after.hole.diameter > before.hole.diameter,
  }

  it.each([
    ['6 in deeper', (spec: PierSpec): PierSpec => ({ ...spec, hole: { ...spec.hole, depth: metres(spec.hole.depth + 0.1524) } })],
    ['2 in wider', (spec: PierSpec): PierSpec => ({ ...spec, hole: { ...spec.hole, diameter: metres(spec.hole.diameter + 0.0508) } })],
  ])('%s is never weaker but where it is listed', (_, change) => {
    const used = new Set<string>()
    let held = 0
    ofEach((spec) => {
      const after = change(spec)
      if (!canBeBuilt(after)) return
      const before = values(derivePier(spec), isSoil)
      for (const id of fallen(before, values(derivePier(after), isSoil))) {
        const cause = Object.entries(exceptions).find(([, holds]) => holds({ before: spec, after, id }))
        expect(cause?.[0], `${id} fell, and nothing on the list says why`).toBeDefined()
        if (cause) used.add(cause[0])
      }
      held += before.size
    })
    expect(held).toBeGreaterThan(300)
    expect([...used]).not.toEqual([])
  })

  it('the clay exclusion is real: 6 in of clay left over one diameter, 4 in of it under a wider pier', () => {
    const clay = {
      kind: 'user',
      unitWeight: toSI(115, 'pcf'),
      frictionAngle: 0,
      cohesion: toSI(1000, 'psf'),
      allowableBearing: toSI(2000, 'psf'),
      lateral: toSI(100, 'psf/ft'),
      sideFriction: 0,
    } as unknown as Soil
    const narrow = { ...plainPier, site: { ...plainPier.site, soil: clay }, hole: { ...plainPier.hole, depth: inch(90) } }
    const wide = { ...narrow, hole: { ...narrow.hole, diameter: inch(26) } }
    const adhesion = (spec: PierSpec) => figure(spec, 'clay-adhesion-and-weight', 'clay-adhesion', 'lb')
    // 0.55 x 1,000 psf round 24 in over 6 in; round 26 in over 4 in.
    close(adhesion(narrow), 550 * 2 * Math.PI * 0.5, { abs: 0.5, rel: 0 })
    close(adhesion(wide), (550 * (26 / 12) * Math.PI * 4) / 12, { abs: 0.5, rel: 0 })
  })

  it('with the counted length fixed and level, dry, even ground, there is no exception', () => {
    ofEach((spec) => {
      const even = {
        ...spec,
        site: { ...spec.site, slope: 0 as typeof spec.site.slope, slopeHeight: null, lower: null, waterTable: null },
        hole: { ...spec.hole, bell: null, flare: null },
      }
      const wider = { ...even, hole: { ...even.hole, diameter: metres(even.hole.diameter + 0.0508) } }
      const deeper = { ...even, hole: { ...even.hole, depth: metres(even.hole.depth + 0.1524) } }
      if ('bags' in spec.fill || ![even, wider, deeper].every(canBeBuilt)) return
      const before = values(derivePier(even), isSoil)
      expect(fallen(before, values(derivePier(deeper), isSoil))).toEqual([])
      // The one exclusion that depends on the width itself.
      expect(fallen(before, values(derivePier(wider), isSoil)).filter((id) => id !== 'clay-adhesion-and-weight')).toEqual([])
    })
  })
})
