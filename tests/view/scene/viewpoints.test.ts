import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { cutMeshes } from '../../../src/core/geometry/cutMeshes.ts'
import type { PierResult } from '../../../src/core/model/result.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { setChoice } from '../../../src/core/spec/edit.ts'
import { radians } from '../../../src/core/units/quantity.ts'
import type { Viewpoint } from '../../../src/state/appState.ts'
import { extentOf, framed } from '../../../src/view/scene/camera/framing.ts'
import { projectPoint } from '../../../src/view/scene/camera/lens.ts'
import { partExtent, pierExtent } from '../../../src/view/scene/camera/pierExtent.ts'
import { aimAt } from '../../../src/view/scene/camera/viewpoints.ts'
import { close } from '../../close.ts'

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

describe('[V14] drafting views are drawn without perspective', () => {
  const result = derivePier(defaultDocument.spec)
  const { zones, spec } = result
  const inch = 0.0254
  /** A named view of the pier, cut open by so much [rad]. */
  const shot = (name: Viewpoint, open: number) => {
    const meshes = cutMeshes(zones, { open: radians(open), facing: radians(facing) }, { segments: 48, cutPost: false })
    const extent = pierExtent(result, (id) => meshes.get(id) ?? null)
    const aim = aimAt(name, extent, facing, spec.site.downhill, false)
    const pose = framed(aim, viewport, safe)
    return { aim, at: (x: number, y: number, z: number) => projectPoint(pose, viewport, [x, y, z]) }
  }

  it('is asked of a 20 in hole with a 6x6 post', () => {
    close(spec.hole.diameter, 20 * inch, { abs: 1e-9, rel: 0 })
    expect(spec.post.section).toBe('6x6')
  })

  // 5 1/2 in is the dressed size of a 6x6 (American Softwood Lumber Standard PS 20, from memory); 5.5 / 20 = 0.275 by definition.
  it('shows a 5 1/2 in post 27.5 % as wide as a 20 in hole in the plan, whatever their heights, with all of the hole in view', () => {
    const { aim, at } = shot('plan', 0)
    const [dx, dz] = [Math.sin(aim.azimuth), -Math.cos(aim.azimuth)]
    const wide = (half: number, y: number): number => at(half * dx, y, half * dz)[0] - at(-half * dx, y, -half * dz)[0]
    for (const top of [0, 0.5, 3]) close(wide(2.75 * inch, top) / wide(10 * inch, -spec.hole.depth), 0.275, { abs: 1e-9, rel: 0 })
    for (let i = 0; i < 24; i++) {
      const theta = (i * Math.PI) / 12
      const [x, y] = at(10 * inch * Math.cos(theta), 0, 10 * inch * Math.sin(theta))
      expect(x).toBeGreaterThan(safe.left)
      expect(x).toBeLessThan(safe.right)
      expect(y).toBeGreaterThan(safe.top)
      expect(y).toBeLessThan(safe.bottom)
    }
  })

  it('looks straight down in the plan: what stands over a point hides it', () => {
    const { at } = shot('plan', 0)
    const [low, high] = [at(0.3, -1.2, 0.2), at(0.3, 2, 0.2)]
    close(low[0], high[0], { abs: 1e-6, rel: 0 })
    close(low[1], high[1], { abs: 1e-6, rel: 0 })
  })

  it('lets no foot of a post poke below the hole in the section: equal heights are equally high', () => {
    const { at } = shot('section', Math.PI)
    const bottom = at(0, -spec.hole.depth, 0)[1]
    for (const out of [-0.3, -0.07, 0.07, 0.3])
      close(at(out * Math.cos(facing), -spec.hole.depth, out * Math.sin(facing))[1], bottom, { abs: 1e-9, rel: 0 })
  })

  it.each(['section', 'uphill', 'downhill', 'plan'] as const)('keeps sizes whatever their distance: %s', (name) => {
    const { aim, at } = shot(name, 1.9)
    const [ca, sa] = [Math.cos(aim.azimuth), Math.sin(aim.azimuth)]
    const width = (out: number): number => at(out * ca + 0.1 * sa, 0, out * sa - 0.1 * ca)[0] - at(out * ca, 0, out * sa)[0]
    close(width(-1), width(1), { abs: 1e-9, rel: 0 })
  })

  it.each(['three-quarter', 'close-up'] as const)('keeps perspective: %s', (name) => {
    expect(shot(name, 1.9).aim.perspective).toBe(1)
  })
})

describe('[V2] a close-up of the open link', () => {
  it.each(cases)('$name: all of its part is in view', ({ result, where }) => {
    const meshes = cutMeshes(result.zones, { open: radians(1.9), facing: radians(facing) }, { segments: 48, cutPost: false })
    const meshOf = (id: string) => meshes.get(id) ?? null
    const part = partExtent(where, meshOf)
    if (!part) throw new Error('not drawn')
    const aim = aimAt('close-up', pierExtent(result, meshOf), facing, 0, false, part)
    const pose = framed(aim, viewport, safe)
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
