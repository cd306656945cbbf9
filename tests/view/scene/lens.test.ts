import fc from 'fast-check'
import { type Camera, OrthographicCamera, PerspectiveCamera, Vector3 } from 'three'
import { describe, expect, it } from 'vitest'
import { extentOf, framed } from '../../../src/view/scene/camera/framing.ts'
import { fieldOfView, focalPixels, lensPitch, type Pose, projectPoint, rayThrough } from '../../../src/view/scene/camera/lens.ts'
import { PictureCamera } from '../../../src/view/scene/camera/PictureCamera.ts'
import { close } from '../../close.ts'

const viewport = { width: 780, height: 620 }
const pose = (azimuth: number, pitch: number, perspective = 1): Pose => ({
  azimuth,
  pitch,
  distance: 5,
  target: [0.1, -0.4, 0.2],
  shift: [12, -7],
  perspective,
})
const anyPose = fc.record({
  azimuth: fc.double({ min: -7, max: 7, noNaN: true }),
  pitch: fc.double({ min: 0, max: Math.PI / 2, noNaN: true }),
  perspective: fc.oneof(fc.constantFrom(0, 1), fc.double({ min: 0, max: 1, noNaN: true })),
})
/** Where a camera of the renderer sees a point, in pixels. */
const seenBy = (camera: Camera, point: readonly [number, number, number]): readonly [number, number] => {
  const seen = new Vector3(...point).project(camera)
  return [((seen.x + 1) / 2) * viewport.width, ((1 - seen.y) / 2) * viewport.height]
}
const anyPoint = fc.tuple(...[0, 1, 2].map(() => fc.double({ min: -1.2, max: 1.2, noNaN: true }))) as fc.Arbitrary<[number, number, number]>

describe('[V1] the lens', () => {
  it('sets the target where it is told, whatever the pitch', () => {
    for (const pitch of [0, 0.15, 0.4, 0.7, 1.2, 1.55]) {
      const [x, y, depth] = projectPoint(pose(1, pitch), viewport, [0.1, -0.4, 0.2])
      close(x, 390 + 12, { abs: 1e-9, rel: 0 })
      close(y, 310 - 7, { abs: 1e-9, rel: 0 })
      expect(depth).toBeGreaterThan(3)
    }
  })

  it('keeps uprights upright at a shallow pitch', () => {
    const [low] = projectPoint(pose(0.3, 0.3), viewport, [0.9, -1, 0.5])
    const [high] = projectPoint(pose(0.3, 0.3), viewport, [0.9, 1, 0.5])
    close(low, high, { abs: 1e-9, rel: 0 })
    const [tiltedLow] = projectPoint(pose(0.3, 1), viewport, [0.9, -1, 0.5])
    const [tiltedHigh] = projectPoint(pose(0.3, 1), viewport, [0.9, 1, 0.5])
    expect(Math.abs(tiltedLow - tiltedHigh)).toBeGreaterThan(5)
  })

  it('puts the reader’s right on the right and what is higher higher', () => {
    const front = pose(Math.PI / 2, 0.2)
    expect(projectPoint(front, viewport, [1, 0, 0])[0]).toBeGreaterThan(projectPoint(front, viewport, [-1, 0, 0])[0])
    expect(projectPoint(front, viewport, [0, 1, 0])[1]).toBeLessThan(projectPoint(front, viewport, [0, -1, 0])[1])
  })

  it('sends a sight line through a pixel back to the point seen there', () => {
    fc.assert(
      fc.property(anyPose, anyPoint, ({ azimuth, pitch, perspective }, point) => {
        const at = pose(azimuth, pitch, perspective)
        const [px, py] = projectPoint(at, viewport, point)
        const ray = new Float64Array(6)
        rayThrough(at, viewport, px, py, ray)
        const [ex, ey, ez, dx, dy, dz] = ray as unknown as [number, number, number, number, number, number]
        const along = ((point[0] - ex) * dx + (point[1] - ey) * dy + (point[2] - ez) * dz) / (dx * dx + dy * dy + dz * dz)
        close(ex + along * dx, point[0], { abs: 1e-9, rel: 0 })
        close(ey + along * dy, point[1], { abs: 1e-9, rel: 0 })
        close(ez + along * dz, point[2], { abs: 1e-9, rel: 0 })
      }),
      { numRuns: 300 },
    )
  })

  it('draws where labels, handles and sight lines look, in any perspective', () => {
    const camera = new PictureCamera()
    fc.assert(
      fc.property(anyPose, anyPoint, ({ azimuth, pitch, perspective }, point) => {
        const at = pose(azimuth, pitch, perspective)
        camera.take(at, viewport, 5)
        const [x, y] = seenBy(camera, point)
        const [px, py] = projectPoint(at, viewport, point)
        close(x, px, { abs: 1e-4, rel: 0 })
        close(y, py, { abs: 1e-4, rel: 0 })
      }),
      { numRuns: 300 },
    )
  })

  // Two cameras of the renderer, set up by its own means, are the outside check of our projection.
  it('agrees with a perspective camera that is shifted to keep uprights upright', () => {
    fc.assert(
      fc.property(anyPose, anyPoint, ({ azimuth, pitch }, point) => {
        const at = pose(azimuth, Math.min(pitch, 1.5))
        const camera = new PerspectiveCamera((fieldOfView * 180) / Math.PI, viewport.width / viewport.height, 0.1, 50)
        const out = at.distance * Math.cos(at.pitch)
        camera.position.set(
          at.target[0] + out * Math.cos(azimuth),
          at.target[1] + at.distance * Math.sin(at.pitch),
          at.target[2] + out * Math.sin(azimuth),
        )
        const lens = lensPitch(at.pitch)
        camera.lookAt(
          new Vector3(-Math.cos(azimuth) * Math.cos(lens), -Math.sin(lens), -Math.sin(azimuth) * Math.cos(lens)).add(camera.position),
        )
        const drop = focalPixels(viewport.height) * Math.tan(at.pitch - lens)
        const { width, height } = viewport
        camera.setViewOffset(width, height, -at.shift[0], drop - at.shift[1], width, height)
        camera.updateMatrixWorld()
        const [px, py] = projectPoint(at, viewport, point)
        const [x, y] = seenBy(camera, point)
        close(x, px, { abs: 1e-6, rel: 0 })
        close(y, py, { abs: 1e-6, rel: 0 })
      }),
      { numRuns: 200 },
    )
  })

  it.each([
    ['level', 0],
    ['from above', 0.9],
    ['straight down', Math.PI / 2],
  ])('agrees with an orthographic camera: %s', (_, pitch) => {
    fc.assert(
      fc.property(fc.double({ min: -7, max: 7, noNaN: true }), anyPoint, (azimuth, point) => {
        const at = { ...pose(azimuth, pitch, 0), shift: [0, 0] as const }
        const half = at.distance * Math.tan(fieldOfView / 2)
        const wide = (half * viewport.width) / viewport.height
        const camera = new OrthographicCamera(-wide, wide, half, -half, 0.1, 50)
        const out = 9 * Math.cos(pitch)
        camera.position.set(out * Math.cos(azimuth), 9 * Math.sin(pitch), out * Math.sin(azimuth)).add(new Vector3(...at.target))
        camera.up.set(-Math.cos(azimuth) * Math.sin(pitch), Math.cos(pitch), -Math.sin(azimuth) * Math.sin(pitch))
        camera.lookAt(new Vector3(...at.target))
        camera.updateMatrixWorld()
        const [px, py] = projectPoint(at, viewport, point)
        const [x, y] = seenBy(camera, point)
        close(x, px, { abs: 1e-6, rel: 0 })
        close(y, py, { abs: 1e-6, rel: 0 })
      }),
      { numRuns: 100 },
    )
  })

  it('steps from perspective to orthographic without a jump', () => {
    const seen = (share: number): number => projectPoint(pose(1, 0.4, share), viewport, [0.9, -1, 0.8])[0]
    const whole = Math.abs(seen(1) - seen(0))
    expect(whole).toBeGreaterThan(20)
    for (let i = 0; i < 100; i++) expect(Math.abs(seen((i + 1) / 100) - seen(i / 100))).toBeLessThan(whole / 50)
  })

  it('has the field of view it says', () => {
    close(focalPixels(620) * Math.tan(fieldOfView / 2), 310, { abs: 1e-9, rel: 0 })
  })
})

describe('[V2] framing', () => {
  const points = [-1, 1].flatMap((x) => [-1.4, 0.6].flatMap((y) => [-1, 1].map((z) => [x, y, z] as const)))
  const safe = { left: 150, top: 10, right: 600, bottom: 540 }

  it.each([
    ['square on', 1.57, 0, 0],
    ['three-quarter', 0.9, 0.4, 1],
    ['plan', 1.57, Math.PI / 2, 0],
  ])('fits the pier into its room and fills it: %s', (_, azimuth, pitch, perspective) => {
    const extent = extentOf(points, framed({ points, azimuth, pitch, perspective }, viewport, safe), viewport)
    expect(extent.left).toBeGreaterThanOrEqual(safe.left - 0.5)
    expect(extent.right).toBeLessThanOrEqual(safe.right + 0.5)
    expect(extent.top).toBeGreaterThanOrEqual(safe.top - 0.5)
    expect(extent.bottom).toBeLessThanOrEqual(safe.bottom + 0.5)
    const share = Math.max((extent.right - extent.left) / (safe.right - safe.left), (extent.bottom - extent.top) / (safe.bottom - safe.top))
    expect(share).toBeGreaterThan(0.99)
  })
})
