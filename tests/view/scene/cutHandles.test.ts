import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { level } from '../../../src/core/geometry/surface.ts'
import type { Cut } from '../../../src/core/model/solid.ts'
import { radians } from '../../../src/core/units/quantity.ts'
import type { Pose } from '../../../src/view/scene/camera/lens.ts'
import { draggedCut, handleAngle, shortWay } from '../../../src/view/scene/handles/handlePlaces.ts'
import { angleDragged, handlePixels } from '../../../src/view/scene/handles/handlePlaces.ts'
import { close } from '../../close.ts'

const cut = (open: number, facing: number): Cut => ({ open: radians(open), facing: radians(facing) })
const extent = {
  half: 0.8,
  bottom: -1.4,
  grade: level(0),
  groundTop: 0,
  holeRadius: 0.25,
  holeBottom: -1.2,
  pierTop: 0.1,
  postTop: 3,
  lifted: 0,
}
const viewport = { width: 780, height: 700 }
const pose = (azimuth: number, pitch: number, perspective = 1): Pose => ({
  azimuth,
  pitch,
  distance: 5,
  target: [0, -0.6, 0],
  shift: [0, 0],
  perspective,
})

describe('[V4] dragging the cut', () => {
  it.each([['left'], ['right']] as const)('moves the %s side alone', (handle) => {
    const before = cut(1.5, 0.7)
    const after = draggedCut(before, handle, handle === 'left' ? 0.4 : -0.4)
    const other = handle === 'left' ? 'right' : 'left'
    close(handleAngle(after, other), handleAngle(before, other), { abs: 1e-12, rel: 0 })
    close(after.open, 1.9, { abs: 1e-12, rel: 0 })
  })

  it('turns the whole by its middle', () => {
    expect(draggedCut(cut(1.5, 0.7), 'turn', -0.4)).toEqual(cut(1.5, 0.7 - 0.4))
  })

  it('ends at whole and at 300 degrees, with the other side where it was', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5.2, noNaN: true }),
        fc.double({ min: -20, max: 20, noNaN: true }),
        fc.constantFrom('left', 'right'),
        (open, by, handle) => {
          const before = cut(open, 1)
          const after = draggedCut(before, handle, by)
          expect(after.open).toBeGreaterThanOrEqual(0)
          expect(after.open).toBeLessThanOrEqual((300 * Math.PI) / 180)
          const other = handle === 'left' ? 'right' : 'left'
          close(handleAngle(after, other), handleAngle(before, other), { abs: 1e-9, rel: 0 })
        },
      ),
    )
  })

  it('knows the short way round', () => {
    close(shortWay(0.1, 6.2), 6.2 - 2 * Math.PI - 0.1, { abs: 1e-12, rel: 0 })
    close(shortWay(6.2, 0.1), 2 * Math.PI - 6.1, { abs: 1e-12, rel: 0 })
  })

  it.each([1, 0])('follows the pointer over the ground when that is seen from above, in perspective %d', (perspective) => {
    const above = pose(Math.PI / 2, 0.8, perspective)
    const from = handlePixels(cut(1.8, Math.PI / 2), extent, above, viewport, 52).left
    const to = handlePixels(cut(2.2, Math.PI / 2), extent, above, viewport, 52).left
    if (!from || !to) throw new Error('a handle is out of the picture')
    close(angleDragged(from, to, cut(1.8, Math.PI / 2), 'left', extent, above, viewport), 0.2, { abs: 1e-9, rel: 0 })
  })

  it('follows the pointer across the screen when the ground is seen edge on', () => {
    const by = angleDragged([300, 200], [260, 200], cut(Math.PI, Math.PI / 2), 'left', extent, pose(Math.PI / 2, 0.1), viewport)
    expect(by).toBeGreaterThan(0.05)
  })

  it('keeps the two sides of a whole block apart, and hides what is out of the picture', () => {
    const { left, right } = handlePixels(cut(0, Math.PI / 2), extent, pose(Math.PI / 2, 0.4), viewport, 52)
    if (!left || !right) throw new Error('a handle is out of the picture')
    expect(Math.hypot(left[0] - right[0], left[1] - right[1])).toBeGreaterThanOrEqual(44)
    expect(handlePixels(cut(1, 0), extent, { ...pose(Math.PI / 2, 0.4), distance: 0.9 }, viewport, 52).right).toBeNull()
  })
})
