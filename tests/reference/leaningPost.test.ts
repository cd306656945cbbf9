import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { leaningPost, leaningSolid, postBetween, reachAt } from '../../src/core/geometry/leaningPost.ts'
import { placedMesh } from '../../src/core/geometry/placedMesh.ts'
import { placedVolume } from '../../src/core/geometry/placed.ts'
import { circle, radiusAlong, rectangle } from '../../src/core/geometry/radial.ts'
import { level, plane } from '../../src/core/geometry/surface.ts'
import { placedVolumeBelow } from '../../src/core/geometry/volumeBelow.ts'
import { close } from '../close.ts'
import { meshVolume } from '../meshFacts.ts'
import { solidKit } from './bodies.ts'
import { solidPart } from './solidPier.ts'

/** Posts as they come, leaning up to 5 degrees any way, with a level, a slope and a cone through them. */
const leaning = fc.record({
  width: fc.double({ min: 0.09, max: 0.2, noNaN: true }),
  depth: fc.double({ min: 0.09, max: 0.2, noNaN: true }),
  foot: fc.double({ min: -3, max: -0.4, noNaN: true }),
  above: fc.double({ min: 0.4, max: 4, noNaN: true }),
  lean: fc.double({ min: 0.005, max: (5 * Math.PI) / 180, noNaN: true }),
  toward: fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
  share: fc.double({ min: 0.05, max: 1, noNaN: true }),
  fall: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
})
const posts = fc.sample(leaning, { numRuns: 60, seed: 411 })
const kit = await solidKit(256)

describe('[G5] a leaning post agrees with a general solid library', () => {
  it.each(posts.map((post, i) => [i + 1, post] as const))('post %i', (_, { width, depth, foot, above, lean, toward, share, fall }) => {
    const post = leaningPost(rectangle(width, depth), foot, above - foot, lean, toward)
    const solid = leaningSolid(post)
    const body = solidPart(kit, solid)
    const whole = width * depth * (above - foot)
    const exact = { abs: 1e-9, rel: 1e-6 }
    close(placedVolume([solid]).value, whole, { abs: 1e-12, rel: 1e-12 }, 'its own volume')
    close(body.volume(), whole, exact, 'the library')
    close(meshVolume(placedMesh([solid])), whole, exact, 'mesh')

    const low = body.boundingBox().min[1]
    close(low, foot, { abs: 1e-6, rel: 0 }, 'lowest edge')
    const high = body.boundingBox().max[1]
    const at = foot + share * (high - foot)
    const under = kit.underPlane(body, at, 0, 0).volume()
    close(placedVolumeBelow([solid], at), under, exact, 'below a level')
    close(postBetween(post, null, level(at)), under, { abs: 2e-6, rel: 1e-4 }, 'integrated below a level')

    const grade = kit.underPlane(body, 0, fall, fall / 2).volume()
    close(postBetween(post, null, plane(0, fall, fall / 2)), grade, exact, 'below a slope')
    close(postBetween(post, level(-0.2), plane(0, fall, fall / 2)), grade - kit.underPlane(body, -0.2, 0, 0).volume(), exact, 'between')

    const cone = kit.and(body, kit.underCone(0.05, -fall, 0, 5, -4)).volume()
    close(postBetween(post, null, { a: 0.05, m: -fall, gx: 0, gz: 0 }), cone, { abs: 2e-6, rel: 1e-4 }, 'below a cone')

    kit.free()
  })

  it('leans a round post too, and reaches as far as its corners do', () => {
    const post = leaningPost(circle(0.1), -1, 2, 0.05, 1)
    close(postBetween(post, null, level(0)), Math.PI * 0.01 * ((1 - 0.1 * Math.sin(0.05)) / Math.cos(0.05)), { abs: 0, rel: 1e-9 })
    expect(reachAt(post, 0)).toBeGreaterThan(radiusAlong(circle(0.1), 1, 0) + 0.04)
    const square = leaningPost(rectangle(0.14, 0.14), -1, 3, 0.03, 0)
    const corners = leaningSolid(square)
    if (corners.kind !== 'prism') throw new Error('a sawn post is a prism')
    const farthest = Math.max(
      ...corners.from.map((p, i) => {
        const q = corners.to[i] ?? p
        const t = (0.5 - p[1]) / (q[1] - p[1])
        return Math.hypot(p[0] + t * (q[0] - p[0]), p[2] + t * (q[2] - p[2]))
      }),
    )
    close(reachAt(square, 0.5), farthest, { abs: 1e-12, rel: 1e-12 })
  })
})
