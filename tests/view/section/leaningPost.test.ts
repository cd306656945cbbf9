import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { lettingGo } from '../../../src/core/derive/lettingGo.ts'
import { shiftAt } from '../../../src/core/geometry/leaningPost.ts'
import { planAngles } from '../../../src/core/geometry/planAngles.ts'
import { placedMesh } from '../../../src/core/geometry/placedMesh.ts'
import { postOf } from '../../../src/core/geometry/postOf.ts'
import { sectionPolygons } from '../../../src/core/geometry/section.ts'
import type { PlacedZone } from '../../../src/core/model/zone.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { toSI } from '../../../src/core/units/factors.ts'
import { metres, radians } from '../../../src/core/units/quantity.ts'
import { hardEdges } from '../../../src/view/scene/pier/hardEdges.ts'
import { postBounds } from '../../../src/view/scene/pier/drawnPier.ts'
import { partZone } from '../../../src/view/scene/pull/partZone.ts'
import { alongPost, postRadius } from '../../../src/view/section/postEdge.ts'
import { sectionAnchors } from '../../../src/view/section/sectionAnchors.ts'
import type { AnnotationInput } from '../../../src/view/section/annotate.ts'
import { close } from '../../close.ts'
import { meshVolume } from '../../meshFacts.ts'

const lean = radians(toSI(4, 'deg'))
const upright = derivePier(defaultSpec)
const result = derivePier({ ...defaultSpec, post: { ...defaultSpec.post, lean } })
const leaning = postOf(result.zones)?.leaning ?? expect.fail('it does not lean')
const zone = result.zones.find((one): one is PlacedZone => one.id === 'post' && one.build === 'placed') ?? expect.fail('no post')

describe('a leaning post in the picture', () => {
  it('is as wide as it was sawn, and so is a plumb one', () => {
    for (const { zones } of [result, upright]) {
      expect(postBounds(zones)?.width).toBeCloseTo(toSI(5.5, 'in'), 12)
      expect(postBounds(zones)?.depth).toBeCloseTo(toSI(5.5, 'in'), 12)
    }
    expect(postRadius(result, 0)).toBe(postRadius(upright, 0))
    expect(postOf(upright.zones)?.leaning).toBeNull()
  })

  it('is whole in the section, its top farther over than its foot', () => {
    const [post] = sectionPolygons(result.zones, 0, { cutPost: false }).filter((one) => one.zone === 'post')
    const middle = (end: 'low' | 'high') => {
      const points = [...(post?.points ?? [])].sort((p, q) => p[1] - q[1])
      const two = end === 'low' ? points.slice(0, 2) : points.slice(-2)
      return two.reduce((sum, p) => sum + p[0], 0) / 2
    }
    expect(post?.cut).toBe(false)
    expect(middle('high') - middle('low')).toBeCloseTo((defaultSpec.post.heightAboveGrade + metres(toSI(42, 'in'))) * Math.sin(lean), 9)
  })

  it('carries marks on its faces with it; a plumb post leaves the sight as it was', () => {
    const sight = { point: (theta: number, r: number, y: number) => [r * Math.cos(theta), y] as const }
    const seen = (of: typeof result) => alongPost({ result: of, sight } as unknown as AnnotationInput).sight
    expect(seen(upright)).toBe(sight)
    for (const y of [-1, 0, 1]) {
      expect(seen(result).point(0, 0.07, y)[0]).toBeCloseTo(0.07 + shiftAt(leaning, y), 12)
      expect(seen(result).point(Math.PI, 0.07, y)[0]).toBeCloseTo(-0.07 + shiftAt(leaning, y), 12)
      expect(seen(result).point(Math.PI / 2, 0.07, y)[0]).toBeCloseTo(0, 12)
    }
  })

  it('is named where it is, near the ground', () => {
    const places = sectionAnchors(zone, 0, -1.2)
    expect(places.length).toBe(3)
    for (const [theta, r, y] of places) {
      expect(y).toBeLessThanOrEqual(0.25)
      expect(r * Math.cos(theta)).toBeCloseTo(shiftAt(leaning, y), 9)
    }
  })

  it('is pulled apart into two pieces that are the post together', () => {
    const angles = planAngles([], { open: radians(0), facing: radians(0) }, 24)
    const mesh = placedMesh(zone.solids)
    const pieces = partZone(
      zone,
      { mesh, edges: hardEdges(zone, angles) },
      { zone: 'post', across: 'level', level: metres(-0.5) },
      angles,
      0.07,
    )
    if (!pieces) expect.fail('it does not part')
    const [goes, stays] = [meshVolume(pieces.goes.mesh), meshVolume(pieces.stays.mesh)]
    close(goes + stays, meshVolume(mesh), { abs: 0, rel: 1e-6 })
    expect(stays).toBeGreaterThan(0.1 * goes)
    expect(lettingGo(result, 'post-net-tension')?.how).toBe(lettingGo(upright, 'post-net-tension')?.how)
  })
})
