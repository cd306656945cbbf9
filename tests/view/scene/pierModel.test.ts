import type { Mesh as Body } from 'three'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { bracketKinds, fillKinds } from '../../../src/core/kinds/index.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { metres, radians } from '../../../src/core/units/quantity.ts'
import { createSharedUniforms, noWater } from '../../../src/view/scene/materials/sharedUniforms.ts'
import { createLineSet } from '../../../src/view/scene/model/lineSet.ts'
import { type ModelView, PierModel } from '../../../src/view/scene/model/PierModel.ts'

const shared = createSharedUniforms()
const view: ModelView = {
  cut: { open: radians(1.9), facing: radians(1.5) },
  cutPost: false,
  quality: 'full',
  water: true,
  frost: true,
  soil: true,
}
const newModel = () => new PierModel(shared, createLineSet())
const first = derivePier(defaultSpec)

describe('[V5] the pier as drawn bodies', () => {
  it('has one body a zone', () => {
    const model = newModel()
    model.show(first, view)
    expect([...model.zones.keys()]).toEqual(first.zones.map(({ id }) => id))
  })

  it('drops what a change of method takes away, and frees it', () => {
    const model = newModel()
    model.show(first, view)
    let freed = 0
    for (const { group } of model.zones.values()) (group.children[0] as Body).geometry.addEventListener('dispose', () => freed++)
    const bare = derivePier({ ...defaultSpec, bars: null })
    model.show(bare, view)
    expect([...model.zones.keys()]).toEqual(bare.zones.map(({ id }) => id))
    expect(freed).toBeGreaterThan(0)
  })

  it('writes into the buffers it has while the cut is dragged', () => {
    const model = newModel()
    model.show(first, { ...view, cut: { open: radians(0.6), facing: radians(1.5) } })
    const geometries = () => [...model.zones.values()].map(({ group }) => (group.children[0] as Body).geometry)
    const before = geometries()
    let freed = 0
    for (const geometry of before) geometry.addEventListener('dispose', () => freed++)
    for (let i = 0; i < 300; i++) model.show(first, { ...view, cut: { open: radians(0.6 + 0.004 * i), facing: radians(1.5 + 0.01 * i) } })
    expect(geometries()).toEqual(before)
    expect(freed).toBe(0)
  })

  it('frees every buffer that an edit outgrows', () => {
    const model = newModel()
    const made = new Set<unknown>()
    let freed = 0
    for (let i = 0; i < 120; i++) {
      const hole = {
        ...defaultSpec.hole,
        depth: metres(1.1 + 0.01 * i),
        bell: i % 2 === 0 ? null : { diameter: metres(0.75), height: metres(0.2) },
      }
      model.show(derivePier({ ...defaultSpec, hole }), view)
      for (const { group } of model.zones.values())
        for (const child of group.children as Body[])
          if (!made.has(child.geometry)) {
            made.add(child.geometry)
            child.geometry.addEventListener('dispose', () => freed++)
          }
    }
    const held = new Set([...model.zones.values()].flatMap(({ group }) => (group.children as Body[]).map(({ geometry }) => geometry)))
    expect(made.size - freed).toBe(held.size)
    model.dispose()
    expect(freed).toBe(made.size)
  })

  it('groups outside faces and section faces, and covers every index', () => {
    const model = newModel()
    model.show(first, view)
    for (const { group, mesh } of model.zones.values()) {
      const { geometry } = group.children[0] as Body
      expect(geometry.groups.map(({ materialIndex }) => materialIndex)).toEqual([0, 1])
      expect(geometry.groups.reduce((sum, { count }) => sum + count, 0)).toBe(mesh?.indices.length)
      expect(geometry.drawRange.count).toBe(mesh?.indices.length)
    }
  })

  it('wets the ground only when water is there and shown', () => {
    const model = newModel()
    const wet = derivePier({ ...defaultSpec, site: { ...defaultSpec.site, waterTable: metres(0.7) } })
    model.show(wet, view)
    expect(shared.uWater.value).toBe(-0.7)
    model.show(wet, { ...view, water: false })
    expect(shared.uWater.value).toBe(noWater)
    model.show(first, view)
    expect(shared.uWater.value).toBe(noWater)
  })

  it('lights one zone at a time', () => {
    const model = newModel()
    model.show(first, view)
    const litOnes = () => [...model.zones.values()].filter(({ group }) => group.children[4]?.visible).map(({ id }) => id)
    model.setPointed('concrete')
    expect(litOnes()).toEqual(['concrete'])
    model.setPointed('post')
    expect(litOnes()).toEqual(['post'])
    model.setPointed(null)
    expect(litOnes()).toEqual([])
  })

  it('hides native ground without dropping it', () => {
    const model = newModel()
    model.show(first, { ...view, soil: false })
    expect(model.zones.get('soil')?.group.visible).toBe(false)
    expect(model.zones.get('concrete')?.group.visible).toBe(true)
  })
})

describe('[V6] the pier taken apart', () => {
  it.each(fillKinds.map((kind) => [kind.id, kind] as const))('lifts what lies higher further, and puts it back: %s', (_, kind) => {
    const bracket = bracketKinds[0]?.defaults
    if (!bracket) throw new Error('there is no bracket kind')
    const support: PierSpec['support'] =
      kind.support === 'bracket' ? { kind: 'bracket', bracket, standOff: metres(0.0254) } : defaultSpec.support
    const result = derivePier({ ...defaultSpec, fill: kind.defaults, bars: null, support })
    const model = newModel()
    model.show(result, view)
    model.setLift(1)
    expect(model.heightLifted('soil')).toBe(0)
    const tops = result.zones.filter(({ role }) => role !== 'soil').map(({ id }) => model.heightLifted(id))
    expect(Math.min(...tops)).toBeGreaterThan(0)
    expect(model.heightLifted('post')).toBe(Math.max(...tops))
    model.setLift(0)
    for (const { id } of result.zones) expect(model.heightLifted(id)).toBe(0)
  })
})
