import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pierFrame } from '../../../src/core/derive/pierFrame.ts'
import { pierZones } from '../../../src/core/derive/pierZones.ts'
import { cornersBelow } from '../../../src/core/geometry/clipBelow.ts'
import { level, plane, type Surface } from '../../../src/core/geometry/surface.ts'
import { cylinderUnderPlane } from './closedForms.ts'
import { crossings, integratedBelow, signChanges, volumeBelow } from '../../../src/core/geometry/volumeBelow.ts'
import { type Corner, corner, cornerPoint, heightAlong } from '../../../src/core/geometry/corner.ts'
import { axis, circle } from '../../../src/core/geometry/radial.ts'
import { anyPier } from '../../anyPier.ts'
import { close } from '../../close.ts'

const share = (low: number, high: number) => fc.integer({ min: 0, max: 1000 }).map((part) => low + ((high - low) * part) / 1000)
const anySurface: fc.Arbitrary<Surface> = fc.oneof(
  share(-2.5, 0.4).map(level),
  fc.tuple(share(-2, 0.2), share(-0.4, 0.4), share(-0.4, 0.4)).map(([a, gx, gz]) => plane(a, gx, gz)),
)

describe('[G4] what lies below a surface', () => {
  it('in closed form is what integrating gives', () => {
    const seen = { exact: 0, none: 0, integrated: 0 }
    fc.assert(
      fc.property(anyPier, anySurface, (spec, surface) => {
        for (const zone of pierZones(pierFrame(spec))) {
          if (zone.build !== 'swept') continue
          const below = cornersBelow(zone.corners, surface)
          if (below === null) seen.integrated++
          else if (below.length === 0) seen.none++
          else seen.exact++
          const want = integratedBelow(zone.corners, surface, zone.breaks)
          close(volumeBelow(zone.corners, surface, zone.breaks), want, { abs: 1e-12, rel: 1e-10 }, zone.id)
        }
      }),
      { numRuns: 250, seed: 4 },
    )
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(100)
  })

  it('of a cylinder under a plane is the named solid', () => {
    const cylinder = (r: number, h: number): Corner[] => [
      corner(axis, level(0), level(0)),
      corner(circle(r), level(0), 'upright'),
      corner(circle(r), level(h), level(h)),
      corner(axis, level(h), 'upright'),
    ]
    for (const [r, dc, s] of [
      [0.3, 0.5, 0.4],
      [0.3, 0.05, 0.4],
    ] as const)
      close(volumeBelow(cylinder(r, 2), plane(dc, s, 0)), cylinderUnderPlane(r, dc, s).volume, { abs: 0, rel: 1e-9 })
  })

  it('corners pass through a plane where sampling the turn finds that they do', () => {
    let found = 0
    fc.assert(
      fc.property(anyPier, anySurface, (spec, surface) => {
        for (const zone of pierZones(pierFrame(spec))) {
          if (zone.build !== 'swept') continue
          for (const one of zone.corners) {
            const turn = (angle: number) => ((angle % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI)
            const sampled = signChanges((cos, sin) => {
              const [r, y] = cornerPoint(one, cos, sin)
              return y - heightAlong(surface, r, cos, sin)
            }).map(turn)
            const exact = crossings([one], surface).map(turn)
            found += sampled.length
            const isNear = (a: number, b: number) => Math.abs(Math.sin((a - b) / 2)) < 1e-7
            expect(sampled.filter((angle) => !exact.some((other) => isNear(angle, other)))).toEqual([])
          }
        }
      }),
      { numRuns: 60, seed: 9 },
    )
    expect(found).toBeGreaterThan(100)
  })
})
