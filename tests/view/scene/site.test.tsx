// @vitest-environment jsdom
import { createRoot, extend, flushSync, type ReconcilerRoot } from '@react-three/fiber'
import { type BufferAttribute, type BufferGeometry, type Material, Mesh as Body, setConsoleFunction } from 'three'
import { LineSegments2 } from 'three/examples/jsm/lines/LineSegments2.js'
import type { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js'
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { bracketKinds, fillKinds } from '../../../src/core/kinds/index.ts'
import type { PierResult } from '../../../src/core/model/result.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { metres, radians } from '../../../src/core/units/quantity.ts'
import { noWater } from '../../../src/view/scene/materials/sharedUniforms.ts'
import { drawnPier, type PierLook } from '../../../src/view/scene/pier/drawnPier.ts'
import { alone, offsetOf, onSite, type PlacedPier } from '../../../src/view/scene/pier/placedPier.ts'
import { Bodies } from '../../../src/view/scene/site/Bodies.tsx'
import type { BodyGeometry } from '../../../src/view/scene/site/buffers.ts'
import { createCanvasKit, createSiteKit } from '../../../src/view/scene/site/kit.ts'
import { Lines } from '../../../src/view/scene/site/Lines.tsx'
import { close } from '../../close.ts'

extend({ Mesh: Body, LineSegments2 })

const kit = createSiteKit(createCanvasKit())
const look: PierLook = {
  cut: { open: radians(1.9), facing: radians(1.5) },
  cutPost: false,
  water: true,
  frost: true,
  soil: true,
  wetness: false,
}
const first = derivePier(defaultSpec)
const standingAs = (result: PierResult, looked: PierLook = look, lift = 0): PlacedPier => ({
  ...alone,
  pier: drawnPier(result, looked, null),
  hidden: new Set(),
  lift,
  rise: 0,
})
/** Piers in rows of eight, each turned a little farther, their cuts open toward the same side. */
const inRows = (results: readonly PierResult[]): PlacedPier[] =>
  results.map((result, i) => {
    const turn = 0.1 * (i % 5)
    const cut = { ...look.cut, facing: radians(look.cut.facing - turn) }
    return { ...standingAs(result, { ...look, cut }), at: [2.4 * (i % 8), 0.1 * i, 3 * Math.floor(i / 8)], turn }
  })

/** Makes no picture, so that objects and buffers can be looked at without a graphics card. */
const drawsNothing = { render: () => undefined, setSize: () => undefined, setPixelRatio: () => undefined, dispose: () => undefined }

let root: ReconcilerRoot<HTMLCanvasElement>
let store: ReturnType<typeof root.render>
const show = (places: PlacedPier | readonly PlacedPier[], pointedAt: string | null = null): void => {
  const all = 'pier' in places ? [places] : places
  flushSync(() => {
    store = root.render(
      <>
        <Bodies places={all} kit={kit} isFull={false} pointedAt={pointedAt} />
        <Lines places={all} kit={kit} pointedAt={pointedAt} />
      </>,
    )
  })
}
const drawn = (): Body[] => store.getState().scene.children as Body[]
/** Bodies, a mesh for each look. */
const meshes = (): (Body & { geometry: BodyGeometry })[] => drawn().filter(({ material }) => Array.isArray(material)) as never
const geometries = (): Set<BufferGeometry> => new Set(drawn().map(({ geometry }) => geometry))
/** What is written of each part that is shown, with the geometry it is in. */
const spots = () => meshes().flatMap(({ geometry }) => (geometry.spots ?? []).map((spot) => ({ ...spot, geometry })))
const ids = (): string[] => spots().map(({ body }) => body.part.zone.id)
const values = (geometry: BufferGeometry, name: string, vertex: number): number[] => {
  const attribute = geometry.getAttribute(name) as BufferAttribute
  return Array.from({ length: attribute.itemSize }, (_, k) => attribute.getComponent(vertex, k))
}
/** Draws that a frame takes, the shadow left out. */
const draws = (): number => drawn().reduce((sum, { visible, geometry }) => sum + (visible ? Math.max(1, geometry.groups.length) : 0), 0)
const watchFreed = (all: Iterable<BufferGeometry>, freed: Set<BufferGeometry>): void => {
  for (const geometry of all) geometry.addEventListener('dispose', () => freed.add(geometry))
}
const deeper = (i: number, bell = i % 2 === 0): PierSpec => ({
  ...defaultSpec,
  hole: { ...defaultSpec.hole, depth: metres(1.1 + 0.02 * i), bell: bell ? null : { diameter: metres(0.75), height: metres(0.2) } },
})

// The renderer's clock is said to be out of date with each root: nothing of ours.
beforeAll(() => setConsoleFunction((kind, message) => (/THREE\.Clock/.test(message) ? undefined : console[kind as 'warn'](message))))

beforeEach(() => {
  root = createRoot(document.createElement('canvas'))
  root.configure({ gl: drawsNothing as never, frameloop: 'never', size: { width: 100, height: 100, top: 0, left: 0 } })
})
afterEach(() => root.unmount())

describe('[V5] the pier as drawn bodies', () => {
  it('has one body a zone', () => {
    show(standingAs(first))
    expect(new Set(ids())).toEqual(new Set(first.zones.map(({ id }) => id)))
    expect(ids()).toHaveLength(first.zones.length)
    expect(drawnPier(first, look, null).parts.map(({ zone }) => zone.id)).toEqual(first.zones.map(({ id }) => id))
  })

  it('drops what a change of method takes away, and frees it', () => {
    show(standingAs(first))
    const freed = new Set<BufferGeometry>()
    watchFreed(geometries(), freed)
    const bare = derivePier({ ...defaultSpec, bars: null })
    show(standingAs(bare))
    expect(ids()).toHaveLength(bare.zones.length)
    expect(bare.zones.length).toBeLessThan(first.zones.length)
    expect(freed.size).toBeGreaterThan(0)
  })

  it('writes into the buffers it has while the cut is dragged', () => {
    const turned = (i: number): PlacedPier =>
      standingAs(first, { ...look, cut: { open: radians(0.6 + 0.012 * i), facing: radians(1.5 + 0.03 * i) } })
    show(turned(0))
    const before = meshes().map(({ geometry }) => geometry)
    const freed = new Set<BufferGeometry>()
    watchFreed(before, freed)
    for (let i = 0; i < 100; i++) show(turned(i))
    expect(meshes().map(({ geometry }) => geometry)).toEqual(before)
    expect(freed.size).toBe(0)
  })

  it('frees every buffer that an edit outgrows, and all of them in the end', async () => {
    const made = new Set<BufferGeometry>()
    const freed = new Set<BufferGeometry>()
    for (let i = 0; i < 60; i++) {
      show(standingAs(derivePier(deeper(i))))
      watchFreed(
        [...geometries()].filter((geometry) => !made.has(geometry)),
        freed,
      )
      for (const geometry of geometries()) made.add(geometry)
    }
    expect(made.size - freed.size).toBe(geometries().size)
    flushSync(() => root.render(null))
    await expect.poll(() => freed.size).toBe(made.size)
  })

  it('groups outside faces and section faces, and covers every index', () => {
    show(standingAs(first))
    for (const { geometry } of meshes()) {
      const parts = (geometry.spots ?? []).map(({ body }) => body.part.mesh)
      const length = parts.reduce((sum, { indices }) => sum + indices.length, 0)
      expect(geometry.groups[0]?.count).toBe(parts.reduce((sum, { outsideCount }) => sum + outsideCount, 0))
      expect(geometry.groups.reduce((sum, { count }) => sum + count, 0)).toBe(length)
      expect(geometry.drawRange.count).toBe(length)
    }
    for (const { geometry, body, vertex, outside, section } of spots()) {
      const { indices, outsideCount } = body.part.mesh
      const written = (from: number, count: number) => Array.from(geometry.index?.array.slice(from, from + count) ?? [], (v) => v - vertex)
      expect([...written(outside, outsideCount), ...written(section, indices.length - outsideCount)]).toEqual([...indices])
    }
  })

  it('wets the ground only when water is there and shown', () => {
    const water = () => new Set(spots().map(({ geometry, vertex }) => values(geometry, 'own', vertex)[1]?.toFixed(4)))
    const wet = derivePier({ ...defaultSpec, site: { ...defaultSpec.site, waterTable: metres(0.7) } })
    show(standingAs(wet))
    expect([...water()]).toEqual(['-0.7000'])
    show(standingAs(wet, { ...look, water: false }))
    expect([...water()]).toEqual([noWater.toFixed(4)])
    show(standingAs(first))
    expect([...water()]).toEqual([noWater.toFixed(4)])
  })

  it('lights one zone at a time', () => {
    const standing = standingAs(first)
    const litLines = () => drawn().filter(({ material, visible }) => material === kit.lines.lit && visible)
    const litNumber = (material: Material): number => {
      const shader = { uniforms: {} as Record<string, { value: number }>, vertexShader: '', fragmentShader: '' }
      material.onBeforeCompile(shader as never, drawsNothing as never)
      return shader.uniforms.uLit?.value ?? Number.NaN
    }
    const litOnes = (pointedAt: string | null) => {
      show(standing, pointedAt)
      expect(litLines()).toHaveLength(pointedAt === null ? 0 : 1)
      return meshes().flatMap(({ geometry, material }) =>
        (geometry.spots ?? [])
          .filter(({ vertex }) => values(geometry, 'own', vertex)[3] === litNumber((material as Material[])[0] as Material))
          .map(({ body }) => body.part.zone.id),
      )
    }
    expect(litOnes('concrete')).toEqual(['concrete'])
    expect(litOnes('post')).toEqual(['post'])
    expect(litOnes(null)).toEqual([])
  })

  it('hides native ground without dropping it', () => {
    show(standingAs(first))
    const before = geometries()
    show(standingAs(first, { ...look, soil: false }))
    expect(ids()).toContain('concrete')
    expect(ids()).not.toContain('soil')
    expect(geometries()).toEqual(before)
  })
})

describe('[V6] the pier taken apart', () => {
  it.each(fillKinds.map((kind) => [kind.id, kind] as const))('lifts what lies higher further, and puts it back: %s', (_, kind) => {
    const bracket = bracketKinds[0]?.defaults
    if (!bracket) throw new Error('there is no bracket kind')
    const support: PierSpec['support'] =
      kind.support === 'bracket' ? { kind: 'bracket', bracket, standOff: metres(0.0254) } : defaultSpec.support
    const result = derivePier({ ...defaultSpec, fill: kind.defaults, bars: null, support })
    const apart = standingAs(result, look, 1)
    const height = (id: string): number =>
      apart.pier.parts.filter(({ zone }) => zone.id === id).map((part) => offsetOf(apart, part).y)[0] ?? Number.NaN
    expect(height('soil')).toBe(0)
    const tops = result.zones.filter(({ role }) => role !== 'soil').map(({ id }) => height(id))
    expect(Math.min(...tops)).toBeGreaterThan(0)
    expect(height('post')).toBe(Math.max(...tops))
    const lifts = () =>
      spots().map(({ geometry, vertex }) => (values(geometry, 'position', vertex)[1] ?? 0) - (values(geometry, 'place', vertex)[1] ?? 0))
    show(apart)
    for (const [i, { body }] of spots().entries()) close(lifts()[i] ?? 0, offsetOf(apart, body.part).y, { abs: 1e-6, rel: 0 })
    show({ ...apart, lift: 0 })
    expect(new Set(lifts())).toEqual(new Set([0]))
  })
})

describe('[V16] many piers on one site', () => {
  const forty = inRows(Array.from({ length: 40 }, (_, i) => derivePier(deeper(i % 10))))

  it('take as many draws as one with all that is in them', () => {
    const different = forty.slice(0, 2)
    show(different)
    const few = draws()
    const held = geometries().size
    show(forty.slice(0, 4))
    expect(draws()).toBe(few)
    show(forty)
    expect(draws()).toBe(few)
    expect(geometries().size).toBe(held)
    expect(ids()).toHaveLength(forty.reduce((sum, { pier }) => sum + pier.parts.length, 0))
  })

  it('stand at their places, turned, bodies and lines alike', () => {
    show(forty)
    for (const { geometry, body, vertex } of spots()) {
      const { positions } = body.part.mesh
      const at = onSite(body.standing, [positions[0] ?? 0, positions[1] ?? 0, positions[2] ?? 0])
      values(geometry, 'position', vertex).forEach((value, k) => {
        close(value, at[k] ?? Number.NaN, { abs: 1e-5, rel: 0 })
      })
    }
    const outlines = drawn().find(({ material }) => material === kit.lines.cut)?.geometry as LineSegmentsGeometry
    const corners = new Set<string>()
    const key = (point: ArrayLike<number>) => Array.from(point, (value) => value.toFixed(3)).join()
    for (const standing of forty)
      for (const { mesh } of standing.pier.parts)
        for (let i = 0; i < mesh.outline.length; i += 3)
          corners.add(key(onSite(standing, [mesh.outline[i] ?? 0, mesh.outline[i + 1] ?? 0, mesh.outline[i + 2] ?? 0]).map(Math.fround)))
    const starts = outlines.getAttribute('instanceStart')
    for (let i = 0; i < outlines.instanceCount; i += 97) {
      const start = [starts.getX(i), starts.getY(i), starts.getZ(i)]
      expect(corners.has(key(start)), String(start)).toBe(true)
    }
  })

  it('are written anew only where one is edited', () => {
    show(forty)
    const ranges = () => meshes().map(({ geometry }) => geometry.getAttribute('position') as BufferAttribute)
    for (const attribute of ranges()) attribute.clearUpdateRanges()
    const [edited] = inRows([derivePier({ ...deeper(0), hole: { ...deeper(0).hole, depth: metres(1.13) } })])
    if (!edited) throw new Error('there is no pier')
    show([edited, ...forty.slice(1)])
    for (const { geometry } of meshes()) {
      const own = (geometry.spots ?? []).filter(({ body }) => body.standing === edited)
      const count = own.reduce((sum, { body }) => sum + body.part.mesh.positions.length, 0)
      const written = (geometry.getAttribute('position') as BufferAttribute).updateRanges.reduce((sum, range) => sum + range.count, 0)
      expect(written).toBe(count)
    }
  })

  it('hold what they held after two hundred edits, and nothing in the end', async () => {
    const made = new Set<BufferGeometry>()
    const freed = new Set<BufferGeometry>()
    const results = Array.from({ length: 12 }, (_, i) => derivePier(deeper(i)))
    const look = (): void => {
      watchFreed(
        [...geometries()].filter((geometry) => !made.has(geometry)),
        freed,
      )
      for (const geometry of geometries()) made.add(geometry)
    }
    let places = forty.slice(0, 12)
    show(places)
    look()
    const held = geometries().size
    for (let i = 0; i < 200; i++) {
      const [next] = inRows([results[(7 * i) % 12] as PierResult])
      places = places.map((standing, k) => (k === i % 12 && next ? { ...standing, pier: next.pier } : standing))
      show(places)
      look()
    }
    expect(geometries().size).toBe(held)
    expect(made.size - freed.size).toBe(held)
    flushSync(() => root.render(null))
    await expect.poll(() => freed.size).toBe(made.size)
  })
})
