import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pierFrame } from '../../../src/core/derive/pierFrame.ts'
import { pierZones } from '../../../src/core/derive/pierZones.ts'
import { cornerPoint } from '../../../src/core/geometry/corner.ts'
import { cutMeshes } from '../../../src/core/geometry/cutMeshes.ts'
import { holeCorners, holeProfile } from '../../../src/core/geometry/holeProfile.ts'
import { breakAngles, polygonMoment, sweptSurface, sweptVolume } from '../../../src/core/geometry/measure.ts'
import { gaussLegendre, integrateTurn } from '../../../src/core/geometry/quadrature.ts'
import { sectionPolygons } from '../../../src/core/geometry/section.ts'
import { capCrown, coneCrownLessRect, cylinderUnderPlane, frustum } from './closedForms.ts'
import { plane } from '../../../src/core/geometry/surface.ts'
import type { Cut } from '../../../src/core/model/solid.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { metres } from '../../../src/core/units/quantity.ts'
import { anyPier } from '../../anyPier.ts'
import { close } from '../../close.ts'
import { meshArea } from '../../meshFacts.ts'

const zonesOf = (spec: PierSpec) => pierZones(pierFrame(spec))

describe('[G4] closed forms, and what else agrees with them', () => {
  it('an exact volume is what integrating the polygon gives', () => {
    let exact = 0
    fc.assert(
      fc.property(anyPier, (spec) => {
        for (const zone of zonesOf(spec)) {
          if (zone.build !== 'swept' || zone.volume.method !== 'closed form') continue
          exact++
          const integrated = integrateTurn(
            (cos, sin) => polygonMoment(zone.corners.map((c) => cornerPoint(c, cos, sin))),
            breakAngles(zone.corners),
          )
          close(zone.volume.value, integrated, { abs: 1e-13, rel: 1e-11 }, zone.id)
        }
      }),
      { numRuns: 500, seed: 12 },
    )
    expect(exact).toBeGreaterThan(1500)
  })

  it('fills the hole: zones and void make the hole, to a part in 1e9', () => {
    fc.assert(
      fc.property(anyPier, (spec) => {
        const frame = pierFrame(spec)
        const hole = sweptVolume(holeCorners(frame.profile)).value
        const zones = pierZones(frame)
        const filled = zones.reduce((sum, zone) => sum + (zone.build === 'swept' ? zone.inHole : 0), 0)
        const hasLowTop = spec.top.rim < 0 || spec.top.shape === 'dished'
        if (!hasLowTop) close(filled, hole, { abs: 0, rel: 1e-9 })
        else expect(filled).toBeLessThanOrEqual(hole * (1 + 1e-9))
      }),
      { numRuns: 600, seed: 31 },
    )
  })

  it('doubling every length makes eight times the volume and four times the area', () => {
    const profile = (k: number) =>
      holeProfile(
        {
          diameter: metres(0.5 * k),
          depth: metres(1.2 * k),
          bell: { diameter: metres(0.8 * k), height: metres(0.25 * k) },
          flare: { diameter: metres(0.62 * k), depth: metres(0.3 * k) },
          base: null,
        },
        plane(0, -0.21, 0.13),
      )
    const [one, two] = [holeCorners(profile(1)), holeCorners(profile(2))]
    close(sweptVolume(two).value / sweptVolume(one).value, 8, { abs: 1e-12, rel: 0 })
    close(sweptSurface(two).value / sweptSurface(one).value, 4, { abs: 1e-6, rel: 0 })
  })

  it('a mesh converges on the area of the boundary', () => {
    const zones = zonesOf(fc.sample(anyPier, { numRuns: 3, seed: 8 })[2] ?? expect.fail('no pier'))
    const meshes = cutMeshes(zones, { open: 0, facing: 0 } as Cut, { segments: 512, cutPost: true })
    for (const zone of zones) {
      const mesh = meshes.get(zone.id)
      if (zone.build === 'swept' && mesh) close(meshArea(mesh), zone.surface.value, { abs: 1e-5, rel: 2e-4 }, zone.id)
    }
  })

  it('the section polygons have the area of the cut faces', () => {
    fc.assert(
      fc.property(anyPier, fc.integer({ min: 0, max: 359 }), (spec, turn) => {
        const facing = (turn * Math.PI) / 180
        const zones = zonesOf(spec)
        const meshes = cutMeshes(zones, { open: Math.PI, facing: facing + Math.PI / 2 } as Cut, { segments: 16, cutPost: true })
        const polygons = sectionPolygons(zones, facing, { cutPost: true })
        for (const zone of zones) {
          const mesh = meshes.get(zone.id)
          if (zone.build !== 'swept' || !mesh) continue
          const drawn = polygons.filter((polygon) => polygon.zone === zone.id).reduce((sum, polygon) => sum + shoelace(polygon.points), 0)
          close(drawn, meshArea(mesh, mesh.outsideCount), { abs: 2e-6, rel: 2e-6 }, zone.id)
        }
      }),
      { numRuns: 200, seed: 3 },
    )
  })
})

/** Positive for anticlockwise points. */
function shoelace(points: readonly (readonly [number, number])[]): number {
  return points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length] ?? p
    return sum + (p[0] * q[1] - q[0] * p[1]) / 2
  }, 0)
}

describe('named solids, checked against the general integrals', () => {
  it('Gauss–Legendre is exact for polynomials up to degree 2n - 1', () => {
    const { nodes, weights } = gaussLegendre(6)
    const integral = (power: number) => nodes.reduce((sum, x, i) => sum + (weights[i] ?? 0) * x ** power, 0)
    for (let power = 0; power <= 11; power++) close(integral(power), power % 2 ? 0 : 2 / (power + 1), { abs: 1e-14, rel: 0 }, `x^${power}`)
  })

  it('cylinder under a plane, past the base as well: against slices', () => {
    for (const [r, dc, s] of [
      [1, 5, 1 / 3],
      [1.5, 0.5, 0.5],
      [0.3, 0.001, 2],
    ] as const) {
      const slices = 200_000
      let volume = 0
      for (let i = 0; i < slices; i++) {
        const x = -r + (2 * r * (i + 0.5)) / slices
        volume += 2 * Math.sqrt(r * r - x * x) * Math.max(0, dc + s * x) * ((2 * r) / slices)
      }
      close(cylinderUnderPlane(r, dc, s).volume, volume, { abs: 1e-12, rel: 1e-6 })
    }
  })

  it('frustum, cone crown and cap at their limits', () => {
    close(frustum(1, 1, 2).volume, 2 * Math.PI, { abs: 1e-14, rel: 0 })
    close(frustum(2, 0, 3).side, Math.PI * 2 * Math.hypot(3, 2), { abs: 1e-13, rel: 0 })
    close(capCrown(1, 1).volume, (2 / 3) * Math.PI, { abs: 1e-14, rel: 0 })
    close(coneCrownLessRect(1, 0.5, 1e-9, 1e-9), Math.PI / 6, { abs: 1e-12, rel: 0 })
  })
})
