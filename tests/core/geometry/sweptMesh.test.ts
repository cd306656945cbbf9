import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { cutMeshes, specialAngles } from '../../../src/core/geometry/cutMeshes.ts'
import { planAngles } from '../../../src/core/geometry/planAngles.ts'
import type { Cut } from '../../../src/core/model/solid.ts'
import { anyPier } from '../../anyPier.ts'
import { close } from '../../close.ts'
import { isAllFinite, meshVolume, unpairedEdges } from '../../meshFacts.ts'
import { meshBound } from './meshBound.ts'

const degrees = Math.PI / 180
const anyCut: fc.Arbitrary<Cut> = fc
  .record({ open: fc.oneof(fc.constant(0), fc.constant(180), fc.integer({ min: 1, max: 300 })), facing: fc.integer({ min: 0, max: 359 }) })
  .map(({ open, facing }) => ({ open: open * degrees, facing: facing * degrees }) as Cut)
const whole = { open: 0, facing: 0 } as Cut

describe('[G1] every mesh is closed, faces outward and is finite', () => {
  const runs = 2000
  it(`holds over ${runs} piers of every kind, cut anywhere`, { timeout: 240_000 }, () => {
    let meshes = 0
    fc.assert(
      fc.property(anyPier, anyCut, fc.constantFrom(16, 36), fc.boolean(), (spec, cut, segments, cutPost) => {
        const { zones } = derivePier(spec)
        for (const [id, mesh] of cutMeshes(zones, cut, { segments, cutPost })) {
          meshes++
          expect(isAllFinite(mesh), `${id} finite`).toBe(true)
          expect(unpairedEdges(mesh), `${id} open edges`).toBe(0)
          if (mesh.indices.length > 0) expect(meshVolume(mesh), `${id} outward`).toBeGreaterThan(0)
          expect(mesh.outsideCount % 3).toBe(0)
        }
      }),
      { numRuns: runs, seed: 4021 },
    )
    expect(meshes).toBeGreaterThan(4 * runs)
  })
})

describe('[G1] round a post that leans', () => {
  const leaning = fc.tuple(anyPier, fc.integer({ min: 1, max: 10 })).map(([spec, halves]) => ({
    ...spec,
    post: { ...spec.post, lean: ((halves / 2) * degrees) as typeof spec.post.lean },
  }))
  it('holds over 300 piers, and each zone holds what is left when the post is taken off', () => {
    let leaned = 0
    fc.assert(
      fc.property(leaning, anyCut, (spec, cut) => {
        const { zones, quantities } = derivePier(spec)
        for (const [id, mesh] of cutMeshes(zones, cut, { segments: 24, cutPost: false })) {
          expect(isAllFinite(mesh), `${id} finite`).toBe(true)
          expect(unpairedEdges(mesh), `${id} open edges`).toBe(0)
          if (mesh.indices.length > 0) expect(meshVolume(mesh), `${id} outward`).toBeGreaterThan(0)
        }
        if (zones.some((zone) => zone.id === 'post' && zone.build === 'placed')) leaned++
        for (const { id, volume } of quantities) expect(volume.value, id).toBeGreaterThan(-1e-9)
      }),
      { numRuns: 300, seed: 512 },
    )
    expect(leaned).toBeGreaterThan(150)
  })
})

describe('[G2] a mesh holds what the closed form says, within the bound of its own segments', () => {
  it('holds for swept zones of 400 piers at 24 and 96 segments', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(anyPier, fc.constantFrom(24, 96), (spec, segments) => {
        const { zones } = derivePier(spec)
        const { widestStep } = planAngles(specialAngles(zones), whole, segments)
        const meshes = cutMeshes(zones, whole, { segments, cutPost: true })
        for (const zone of zones) {
          const mesh = meshes.get(zone.id)
          if (zone.build !== 'swept' || !mesh) continue
          const bound = meshBound(zone.corners, zone.breaks, widestStep)
          // Positions are single precision: every face may lie half a step of its largest coordinate off.
          const rounding = 2 ** -24 * Math.max(...mesh.positions.map(Math.abs)) * zone.surface.value
          expect(Math.abs(meshVolume(mesh) - zone.volume.value), `${zone.id} of ${spec.fill.kind}`).toBeLessThanOrEqual(bound + rounding)
        }
      }),
      { numRuns: 400, seed: 77 },
    )
  })

  it('falls fourfold when the segments double', () => {
    const { zones } = derivePier(fc.sample(anyPier, { numRuns: 1, seed: 5 })[0] ?? expect.fail('no pier'))
    const error = (segments: number) => {
      const meshes = cutMeshes(zones, whole, { segments, cutPost: true })
      return zones.reduce((sum, zone) => {
        const mesh = meshes.get(zone.id)
        return zone.build === 'swept' && zone.role === 'soil' && mesh ? sum + Math.abs(meshVolume(mesh) - zone.volume.value) : sum
      }, 0)
    }
    close(error(48) / error(96), 4, { abs: 0.35, rel: 0 })
  })
})

describe('[G3] cutting takes away just what it shows taken away', () => {
  it('kept and removed sectors add to the whole', () => {
    fc.assert(
      fc.property(anyPier, fc.integer({ min: 10, max: 300 }), fc.integer({ min: 0, max: 359 }), (spec, open, facing) => {
        const { zones } = derivePier(spec)
        const cut = { open: open * degrees, facing: facing * degrees } as Cut
        const rest = { open: 2 * Math.PI - cut.open, facing: cut.facing + Math.PI } as Cut
        const sides = [cut.facing + cut.open / 2, cut.facing - cut.open / 2]
        const options = { segments: 32, cutPost: true }
        const [kept, removed] = [cutMeshes(zones, cut, options), cutMeshes(zones, rest, options)]
        // The whole, on the same angles: its zones are given the cut's sides as break angles.
        const marked = zones.map((zone) => (zone.build === 'swept' ? { ...zone, breaks: [...zone.breaks, ...sides] } : zone))
        const uncut = cutMeshes(marked, whole, options)
        for (const zone of zones) {
          const [a, b, all] = [kept, removed, uncut].map((meshes) => meshes.get(zone.id))
          if (zone.build !== 'swept' || !a || !b || !all) continue
          close(meshVolume(a) + meshVolume(b), meshVolume(all), { abs: 1e-7, rel: 2e-6 }, zone.id)
        }
      }),
      { numRuns: 150, seed: 9 },
    )
  })
})
