import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { cutMeshes } from '../../../src/core/geometry/cutMeshes.ts'
import type { PierResult } from '../../../src/core/model/result.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { setChoice } from '../../../src/core/spec/edit.ts'
import { radians } from '../../../src/core/units/quantity.ts'
import { extentOf, framed } from '../../../src/view/scene/camera/framing.ts'
import { partExtent, pierExtent } from '../../../src/view/scene/camera/pierExtent.ts'
import { aimAt } from '../../../src/view/scene/camera/viewpoints.ts'

const facing = 1.5
const viewport = { width: 900, height: 700 }
const safe = { left: 60, top: 20, right: 840, bottom: 660 }
const bracket = setChoice(defaultDocument, 'fill.kind', 'mixed-bracket-pier')
if (!bracket.ok) throw new Error('no bracket')

const piers: Readonly<Record<string, PierResult>> = {
  'bar at the foot': derivePier(defaultDocument.spec),
  bracket: derivePier(bracket.value.spec),
}
const cases = Object.entries(piers).flatMap(([name, result]) =>
  result.checks
    .filter((check) => check.group.startsWith('uplift') && !check.where.includes('post'))
    .map((check) => ({ name: `${name}: ${check.id}`, result, where: check.where })),
)

describe('[V2] a close-up of the open link', () => {
  it.each(cases)('$name: all of its part is in view', ({ result, where }) => {
    const meshes = cutMeshes(result.zones, { open: radians(1.9), facing: radians(facing) }, { segments: 48, cutPost: false })
    const meshOf = (id: string) => meshes.get(id) ?? null
    const part = partExtent(where, meshOf)
    if (!part) throw new Error('not drawn')
    const aim = aimAt('close-up', pierExtent(result, meshOf), facing, 0, false, part)
    const pose = framed(aim.points, aim.azimuth, aim.pitch, viewport, safe)
    const positions = where.flatMap((id) => [...(meshOf(id)?.positions ?? [])])
    const points = Array.from(
      { length: positions.length / 3 },
      (_, i) => [0, 1, 2].map((k) => positions[3 * i + k] ?? 0) as [number, number, number],
    )
    const box = extentOf(points, pose, viewport)
    expect(box.left).toBeGreaterThanOrEqual(safe.left)
    expect(box.right).toBeLessThanOrEqual(safe.right)
    expect(box.top).toBeGreaterThanOrEqual(safe.top)
    expect(box.bottom).toBeLessThanOrEqual(safe.bottom)
    // It is looked at through the opening of the cut.
    expect(Math.abs(aim.azimuth - facing)).toBeLessThan(1.9 / 2)
  })

  it('without an open link it shows the top, which leaves a bar at the foot out', () => {
    const result = derivePier(defaultDocument.spec)
    const meshes = cutMeshes(result.zones, { open: radians(1.9), facing: radians(facing) }, { segments: 48, cutPost: false })
    const extent = pierExtent(result, (id) => meshes.get(id) ?? null)
    const lowest = Math.min(...aimAt('close-up', extent, facing, 0, false).points.map(([, y]) => y))
    expect(lowest).toBeGreaterThan(partExtent(['bars'], (id) => meshes.get(id) ?? null)?.high ?? Infinity)
  })
})
