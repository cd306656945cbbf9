import { describe, expect, test } from 'vitest'
import { deriveMoisture } from '../../../../src/core/derive/moisture/deriveMoisture.ts'
import { type PierFrame, pierFrame } from '../../../../src/core/derive/pierFrame.ts'
import { reachAlong } from '../../../../src/core/geometry/leaningPost.ts'
import { gaussLegendre, turnPoints } from '../../../../src/core/geometry/quadrature.ts'
import { cornerAngles, radiusAlong } from '../../../../src/core/geometry/radial.ts'
import { heightAt } from '../../../../src/core/geometry/surface.ts'
import type { PierSpec } from '../../../../src/core/model/spec.ts'
import { bracketKinds } from '../../../../src/core/kinds/index.ts'
import { defaultSpec } from '../../../../src/core/spec/defaults.ts'
import { toSI } from '../../../../src/core/units/factors.ts'
import { metres, slope } from '../../../../src/core/units/quantity.ts'
import { ofEach } from '../manyPiers.ts'
import { inch, plainPier } from '../pierOf.ts'

const crowned: PierSpec = { ...plainPier, top: { shape: 'crowned', rise: inch(1.5), rim: inch(2), heaped: metres(0) } }
const sloping: PierSpec = { ...crowned, site: { ...crowned.site, slope: slope(0.08) } }
const lineOf = (spec: PierSpec) => deriveMoisture(spec).top.line
const endOf = (spec: PierSpec) => lineOf(spec).at(-1) ?? expect.fail('no line')

/** Half the post across, along the fall [m]. */
const postFace = (spec: PierSpec) => radiusAlong(pierFrame(spec).postOutline, Math.cos(spec.site.downhill), Math.sin(spec.site.downhill))

describe('[W8] the way of rain', () => {
  test('over a crown it runs down, over the rim and onto the ground downhill', () => {
    const line = lineOf(sloping)
    const [r, y] = endOf(sloping)
    expect(r).toBeGreaterThan(sloping.hole.diameter / 2)
    expect(y).toBeCloseTo(-sloping.site.slope * r, 12)
    line.forEach(([, height], i) => {
      expect(height).toBeLessThanOrEqual(line[i - 1]?.[1] ?? Number.POSITIVE_INFINITY)
    })
  })

  test('a rim lowered below uphill grade sends it to the post, on top of the concrete', () => {
    const low: PierSpec = { ...sloping, top: { ...sloping.top, rim: inch(-1) } }
    const { top } = deriveMoisture(low)
    expect(top.path).toMatchObject({ end: 'post', reasons: ['rim-below-uphill-grade'], fromUphill: true })
    const [start] = top.line
    expect(start?.[0]).toBeLessThan(-low.hole.diameter / 2)
    const [r, y] = endOf(low)
    expect(r).toBeCloseTo(-postFace(low), 12)
    const frame = pierFrame(low)
    expect(y).toBeCloseTo(frame.end.kind === 'top' ? heightAt(frame.end.surface, -r, 0) : Number.NaN, 12)
  })

  test('a swale uphill takes that sheet water, and the way ends in it', () => {
    const low: PierSpec = { ...sloping, top: { ...sloping.top, rim: inch(-1) }, water: { ...sloping.water, swale: 'yes' } }
    const { top } = deriveMoisture(low)
    expect(top.path).toMatchObject({ end: 'ground', reasons: [], fromUphill: false })
    const [r, y] = endOf(low)
    expect(r).toBeLessThan(-low.hole.diameter / 2)
    expect(y).toBeLessThan(-low.site.slope * r)
    expect(top.runoff).toBeNull()
  })

  test('a dish, a level top and a heap each end at the post, with their own reason', () => {
    const of = (top: Partial<PierSpec['top']>) => deriveMoisture({ ...sloping, top: { ...sloping.top, ...top } }).top
    expect(of({ shape: 'dished' }).path.reasons).toEqual(['top-slopes-in'])
    expect(of({ shape: 'flat' }).path.reasons).toEqual(['top-is-level'])
    expect(of({ heaped: inch(3) }).path.reasons).toEqual(['heaped-over'])
    for (const top of [of({ shape: 'dished' }), of({ shape: 'flat' }), of({ heaped: inch(3) })])
      expect(Math.abs(top.line.at(-1)?.[0] ?? 0)).toBeCloseTo(postFace(sloping), 12)
  })

  test('whatever the pier: at the post when it says so, else beyond the hole', () => {
    ofEach((spec) => {
      const { path, line } = deriveMoisture(spec).top
      const frame = pierFrame(spec)
      const r = Math.abs(line.at(-1)?.[0] ?? Number.NaN)
      const rim = frame.profile.shaftRadius
      if (path.end === 'ground') expect(r).toBeGreaterThan(rim)
      else if (frame.leaning) expect(r).toBeCloseTo(Math.abs(leaningFace(frame, line.at(-1) ?? [0, 0], -postFace(spec))), 9)
      else expect(r).toBeCloseTo(Math.min(frame.bracketSite ? frame.innerRadius : postFace(spec), rim), 9)
      expect(line.length).toBeGreaterThan(1)
    })
  })
})

/** Place of a leaning post's face at the level of a point, `at` from the middle of its foot, by the geometry of a turned rectangle. */
function leaningFace({ leaning, foot }: PierFrame, [, y]: readonly [number, number], at: number): number {
  if (!leaning) return Number.NaN
  const half = reachAlong(leaning.outline, leaning.toward)
  const { lean } = leaning
  return half * (1 - Math.cos(lean)) + (y - foot - half * Math.sin(lean)) * Math.tan(lean) + at / Math.cos(lean)
}

/** Volume between the dish and a level, by Gauss points over the turn, parted at the post's corners, and over radii out to the rim. */
function voidOver(spec: PierSpec, level: number): number {
  const frame = pierFrame(spec)
  const { end, profile, postOutline } = frame
  if (end.kind !== 'top') return 0
  const { surface } = end
  const { nodes, weights } = gaussLegendre(8)
  const alongRadius = (a: number, b: number, theta: number): number =>
    nodes.reduce((sum, node, j) => {
      const r = (a + b) / 2 + (node * (b - a)) / 2
      return sum + ((b - a) / 2) * (weights[j] ?? 0) * (level - heightAt(surface, r, theta)) * r
    }, 0)
  return turnPoints(cornerAngles(postOutline)).reduce((sum, { cos, sin, weight }) => {
    const from = frame.bracketSite ? 0 : radiusAlong(postOutline, cos, sin)
    const flat = Math.max(surface.flatWithin ?? 0, from)
    const theta = Math.atan2(sin, cos)
    return sum + weight * (alongRadius(from, flat, theta) + alongRadius(flat, profile.shaftRadius, theta))
  }, 0)
}

const bracket = bracketKinds[0]?.defaults ?? expect.fail('no bracket')

describe('[W12] water that a dish holds', () => {
  const dish: PierSpec = { ...sloping, top: { shape: 'dished', rise: inch(1.25), rim: inch(1), heaped: metres(0) } }
  const square: PierSpec = { ...dish, post: { ...dish.post, section: '6x6' } }
  const cases: readonly (readonly [string, PierSpec])[] = [
    ['round a square post', square],
    ['round a post with two sides', { ...dish, post: { ...dish.post, section: '6x8' } }],
    ['round a pole', { ...dish, post: { ...dish.post, section: 'round-8' } }],
    ['in a pit', { ...square, top: { ...square.top, rim: inch(-4) } }],
    [
      'under a bracket',
      { ...square, fill: { kind: 'mixed-bracket-pier' }, bars: null, support: { kind: 'bracket', standOff: inch(1), bracket } },
    ],
  ]
  test.each(cases)('%s: equal to the void over the top', (_, spec) => {
    const { top } = deriveMoisture(spec)
    const rim = spec.site.slope * (spec.hole.diameter / 2) + spec.top.rim
    expect(top.pondedVolume).toBeGreaterThan(1e-3)
    expect(Math.abs(top.pondedVolume - voidOver(spec, rim + top.path.overRim))).toBeLessThan(1e-9)
    expect(top.ponded?.value).toBe(top.pondedVolume)
  })

  test('a crown holds none', () => {
    expect(deriveMoisture(crowned).top).toMatchObject({ ponded: null, pondedVolume: 0, pond: null })
  })

  test.each(cases)('%s: its bed and its level bound that volume', (_, spec) => {
    const { pond, pondedVolume } = deriveMoisture(spec).top
    if (!pond) return expect.fail('no pond')
    const { postOutline, bracketSite, profile } = pierFrame(spec)
    const bedAt = (r: number): number => {
      const i = pond.bed.findIndex(([at]) => at <= r)
      const [[r1, y1], [r2, y2]] = [pond.bed[Math.max(0, i - 1)] ?? [0, 0], pond.bed[Math.max(1, i)] ?? [0, 0]]
      return r1 === r2 ? y1 : y1 + ((r - r1) / (r2 - r1)) * (y2 - y1)
    }
    const steps = 400
    const volume = turnPoints(cornerAngles(postOutline)).reduce((sum, { cos, sin, weight }) => {
      const from = bracketSite ? 0 : radiusAlong(postOutline, cos, sin)
      const dr = (profile.shaftRadius - from) / steps
      let strip = 0
      for (let i = 0; i < steps; i++) {
        const r = from + (i + 0.5) * dr
        strip += (pond.level - bedAt(r)) * r * dr
      }
      return sum + weight * strip
    }, 0)
    expect(volume).toBeCloseTo(pondedVolume, 6)
  })
})

describe('[W12] wood over a dish', () => {
  const onBracket = (standOff: number, top: Partial<PierSpec['top']> = {}): PierSpec => ({
    ...plainPier,
    fill: { kind: 'mixed-bracket-pier' },
    bars: null,
    support: { kind: 'bracket', standOff: inch(standOff), bracket },
    top: { shape: 'dished', rise: inch(1.5), rim: inch(2), heaped: metres(0), ...top },
  })
  const lowest = (spec: PierSpec) => deriveMoisture(spec).profile.at(-1) ?? expect.fail('no wood')

  test('stands in its water where the dish is deeper than the stand-off, and stays wet there', () => {
    const spec = onBracket(1)
    const end = lowest(spec)
    expect(end).toMatchObject({ touch: 'dish', wetness: 'stays-wet', waterAndAir: true })
    // Half an inch: what the dish is deeper than the stand-off.
    expect(end.to - end.from).toBeCloseTo(inch(0.5), 12)
    expect(end.to).toBe(deriveMoisture(spec).top.pond?.level)
  })

  test('is clear of that water on a stand-off as high as the dish is deep, though not of splashes', () => {
    expect(lowest(onBracket(1.5))).toMatchObject({ touch: 'splash-band', wetness: 'wet-at-times' })
    // Splashes reach 300 mm over what the rain falls on. Source: timber-splash-guide, by tables/lotDrainage.
    expect(lowest(onBracket(11.7)).touch).toBe('splash-band')
    expect(lowest(onBracket(11.9))).toMatchObject({ touch: 'air', wetness: 'dries-out' })
  })

  test('a crown leaves it no water to stand in, on any stand-off', () => {
    for (const standOff of [0.5, 1, 3]) expect(lowest(onBracket(standOff, { shape: 'crowned' })).touch).toBe('splash-band')
  })

  test('a post that goes down through it stands in water up to the rim', () => {
    const { profile, top } = deriveMoisture({ ...plainPier, top: { shape: 'dished', rise: inch(1.5), rim: inch(2), heaped: metres(0) } })
    const inDish = profile.filter(({ touch }) => touch === 'dish')
    expect(inDish.map(({ side }) => side).sort()).toEqual(['axis', 'downhill', 'uphill'])
    for (const { to, wetness } of inDish) {
      expect(to).toBe(top.pond?.level)
      expect(wetness).toBe('stays-wet')
    }
  })
})

describe('the ground round the pier', () => {
  test('[trap 10] level ground misses the 5 % of the rule, 6 in within 10 ft reaches it', () => {
    const level = deriveMoisture(crowned).top.fall
    expect(level).toMatchObject({ reached: false })
    expect(level.asked.value).toBeCloseTo(0.05, 12)
    const graded = deriveMoisture({ ...sloping, water: { ...sloping.water, fall: slope(0.05) } }).top.fall
    expect(graded.reached).toBe(true)
    expect(deriveMoisture(sloping).top.fall.worked.value).toBeCloseTo(-0.08, 12)
  })

  test('splashes reach 300 mm over the concrete, 150 mm over gravel', () => {
    const reach = (around: PierSpec['water']['around']) => {
      const { splash } = deriveMoisture({ ...crowned, water: { ...crowned.water, around } }).top
      return splash.to - splash.from
    }
    expect(reach('ground')).toBeCloseTo(toSI(300, 'mm'), 12)
    expect(reach('gravel')).toBeCloseTo(toSI(150, 'mm'), 12)
  })

  test('sheet water comes on a slope alone; a texture says when water stands in the rain', () => {
    expect(deriveMoisture(crowned).top.runoff).toBeNull()
    const rate = deriveMoisture(sloping).top.runoff?.value
    expect(rate).toBeCloseTo(defaultSpec.water.rain * crowned.hole.diameter * toSI(10, 'ft'), 12)
    const ponding = (texture: PierSpec['water']['texture']) =>
      deriveMoisture({ ...sloping, water: { ...sloping.water, texture } }).top.ponding?.value ?? null
    expect(ponding(null)).toBeNull()
    expect(ponding('sand')).toBeNull()
    expect(ponding('clay')).toBeLessThan(ponding('loam') ?? 0)
  })
})
