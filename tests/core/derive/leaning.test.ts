import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { pierFrame } from '../../../src/core/derive/pierFrame.ts'
import { barLevels } from '../../../src/core/derive/placedZones.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import type { Zone } from '../../../src/core/model/zone.ts'
import { validateSpec } from '../../../src/core/spec/validate.ts'
import { fromSI, toSI } from '../../../src/core/units/factors.ts'
import { metres, radians, slope } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { ofEach } from './manyPiers.ts'
import { checkOf, entered, inch, plainPier, pound, stepOf } from './pierOf.ts'

const degrees = (value: number) => radians(toSI(value, 'deg'))
const leaning = (spec: PierSpec, angle: number): PierSpec => ({ ...spec, post: { ...spec.post, lean: degrees(angle) } })
const full: PierSpec = { ...plainPier, fill: { kind: 'mixed-full-height' } }
const zoneOf = (zones: readonly Zone[], id: string): Zone => zones.find((zone) => zone.id === id) ?? expect.fail(`no zone ${id}`)

describe('a post that leans', () => {
  it('is a part of its own, as large as a plumb one, and takes the same off what is round it', () => {
    const plumb = derivePier(full)
    const result = derivePier(leaning(full, 3))
    const post = zoneOf(result.zones, 'post')
    expect(zoneOf(plumb.zones, 'post').build).toBe('swept')
    expect(post.build).toBe('placed')
    close(post.volume.value, zoneOf(plumb.zones, 'post').volume.value, { abs: 0, rel: 1e-12 }, 'volume')
    const net = (of: typeof plumb, id: string) => of.quantities.find((line) => line.id === id)?.volume.value ?? Number.NaN
    close(net(result, 'post'), net(plumb, 'post'), { abs: 0, rel: 1e-12 }, 'post less its bars')
    // It stands on its lower edge, a little wood higher than a plumb one, and runs a little longer through the same depth.
    close(net(result, 'concrete'), net(plumb, 'concrete'), { abs: 0, rel: 2e-3 }, 'concrete')
    expect(net(result, 'concrete')).not.toBe(net(plumb, 'concrete'))
  })

  it('the hole is what is placed in it and what is left open, whatever leans', () => {
    let leaned = 0
    ofEach((spec) => {
      const { zones, hole, spec: own } = derivePier(spec)
      if (pierFrame(own).leaning) leaned++
      const inHole = zones.reduce((sum, zone) => sum + zone.inHole, 0)
      close(inHole + hole.void, hole.volume.value, { abs: 0, rel: 1e-9 })
      expect(hole.void).toBeGreaterThan(-1e-6 * hole.volume.value)
      const post = zoneOf(zones, 'post')
      if (post.build === 'placed') for (const taken of Object.values(post.displaces)) expect(taken).toBeGreaterThan(0)
    })
    expect(leaned).toBeGreaterThan(20)
  })

  it('a fill that ends at grade, the post in it and nothing else make up the hole', () => {
    const { zones, hole } = derivePier(
      leaning({ ...plainPier, fill: { kind: 'flowable-fill' }, bars: null, support: { kind: 'embedded', foot: inch(0) } }, 4),
    )
    const post = zoneOf(zones, 'post')
    const taken = post.build === 'placed' ? Object.values(post.displaces).reduce((sum, one) => sum + one, 0) : Number.NaN
    const net = derivePierNet(zones)
    close(net + taken, hole.volume.value, { abs: 0, rel: 1e-9 })
  })

  it('bags placed round it fill to a level with just their volume below', () => {
    const spec = leaning({ ...plainPier, fill: { kind: 'dry-bag-at-foot', bags: 2, bagSize: 80 }, bars: null }, 4)
    const mix = derivePier(spec).quantities.find(({ role }) => role === 'dry-mix')?.volume.value ?? Number.NaN
    const plumb = derivePier(leaning(spec, 0)).quantities.find(({ role }) => role === 'dry-mix')?.volume.value ?? Number.NaN
    close(mix, plumb, { abs: 0, rel: 1e-9 })
  })

  it('carries its bar with it, square to the post', () => {
    const frame = pierFrame(leaning(full, 5))
    const [bar] = derivePier(frame.spec).zones.filter(({ id }) => id === 'bars')
    const [solid] = bar?.build === 'placed' ? bar.solids : []
    if (solid?.kind !== 'rod') expect.fail('no bar')
    const dip = solid.from[1] - solid.to[1]
    close(dip, full.bars ? full.bars.length * Math.sin(degrees(5)) : Number.NaN, { abs: 1e-12, rel: 0 }, 'one end up, one down')
    close((solid.from[1] + solid.to[1]) / 2, barLevels(frame)[0] ?? Number.NaN, { abs: 1e-12, rel: 0 })
  })

  it('wood below grade is longer than on a plumb post by its slant', () => {
    const length = (angle: number) =>
      derivePier(leaning(full, angle)).exposure.lines.find(({ side }) => side === 'axis')?.belowGrade ?? Number.NaN
    // Level ground: from the middle of the foot, lifted by half the post's width times the sine, up to grade along the slant.
    const lifted = inch(5.5 / 2) * Math.sin(degrees(5))
    close(length(5), (length(0) - lifted) / Math.cos(degrees(5)), { abs: 1e-12, rel: 0 })
  })
})

const derivePierNet = (zones: readonly Zone[]): number => {
  const taken = (id: string) => zones.reduce((sum, zone) => sum + (zone.build === 'placed' ? (zone.displaces[id] ?? 0) : 0), 0)
  return zones
    .filter((zone) => zone.build === 'swept' && zone.inHole > 0)
    .reduce((sum, zone) => sum + zone.volume.value - taken(zone.id), 0)
}

describe('what a lean does to the numbers', () => {
  it('two degrees over 42 in are 1.47 in, beside the 0.63 in of drilled piers held by the ground', () => {
    const spec = leaning({ ...full, hole: { ...full.hole, depth: inch(48) }, support: { kind: 'embedded', foot: inch(6) } }, 2)
    const check = checkOf(derivePier(spec), 'post-plumb')
    expect(fromSI(stepOf(check, 'lean-offset').value, 'in')).toBeCloseTo(42 * 0.0349208, 4)
    expect(fromSI(stepOf(check, 'plumb-allowance').value, 'in')).toBeCloseTo(0.63, 9)
    expect(check.counted).toBe("engineer's judgement")
    expect(derivePier(leaning(spec, 0)).checks.some(({ id }) => id === 'post-plumb')).toBe(false)
  })

  it('4,000 lb on a post that leans 3 degrees push 210 lb sideways, on top of the 400 lb that push already', () => {
    const loads = entered({ gravity: pound(4000), lateral: pound(400) })
    const { demand } = derivePier(leaning({ ...full, loads }, 3))
    expect(fromSI(demand.lateral?.value ?? 0, 'lb')).toBeCloseTo(400 + 4000 * 0.05240778, 3)
    expect(derivePier({ ...full, loads }).demand.lateral?.value).toBe(pound(400))
  })

  it('leaves less room beside the post and less cover at one end of the bar', () => {
    const [plumb, askew] = [derivePier(full), derivePier(leaning(full, 3))]
    for (const id of ['post-clearance', 'bar-end-cover'])
      expect(checkOf(askew, id).allowable?.value).toBeLessThan(checkOf(plumb, id).allowable?.value ?? Number.NaN)
  })
})

describe('a lean that the hole has no room for', () => {
  const narrow: PierSpec = {
    ...full,
    site: { ...full.site, slope: slope(0) },
    hole: { ...full.hole, diameter: inch(12), depth: inch(72) },
    bars: null,
  }

  it('is refused with the most that fits, and that most is built', () => {
    const [issue] = validateSpec(leaning(narrow, 5)).filter(({ code }) => code === 'post-leans-into-wall')
    expect(issue?.path).toBe('post.lean')
    expect(issue?.got).toBe(degrees(5))
    const limit = issue?.limit
    if (typeof limit !== 'number') expect.fail('no limit')
    expect(limit).toBeGreaterThan(0)
    expect(limit).toBeLessThan(degrees(5))
    const lean = (by: number): PierSpec => ({ ...narrow, post: { ...narrow.post, lean: radians(limit + by) } })
    const refused = (spec: PierSpec) => validateSpec(spec).some(({ code }) => code === 'post-leans-into-wall')
    expect(refused(lean(-1e-6))).toBe(false)
    expect(refused(lean(1e-4))).toBe(true)
  })

  it('a post on a bracket has no lean of its own: what was set stays and does nothing', () => {
    const spec: PierSpec = { ...leaning(full, 4), bars: null, support: { kind: 'embedded', foot: metres(0.1) } }
    expect(pierFrame(spec).leaning).not.toBeNull()
    expect(pierFrame({ ...spec, fill: { kind: 'mixed-bracket-pier' }, support: bracketed }).leaning).toBeNull()
  })
})

const bracketed: PierSpec['support'] = {
  kind: 'bracket',
  standOff: inch(1),
  bracket: { kind: 'side-plates', plateThickness: inch(0.25), boltDiameter: inch(0.625), boltCount: 2, embedment: inch(12), rating: null },
}
