// @vitest-environment jsdom
import { createRoot, extend, flushSync, type ReconcilerRoot } from '@react-three/fiber'
import { type BufferGeometry, type Group, Mesh as Body, Group as Node, setConsoleFunction } from 'three'
import { LineSegments2 } from 'three/examples/jsm/lines/LineSegments2.js'
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { bracketKinds, fillKinds } from '../../../src/core/kinds/index.ts'
import type { PierResult } from '../../../src/core/model/result.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { metres, radians } from '../../../src/core/units/quantity.ts'
import { noWater } from '../../../src/view/scene/materials/sharedUniforms.ts'
import { drawnPier, type PierLook } from '../../../src/view/scene/pier/drawnPier.ts'
import { Pier } from '../../../src/view/scene/pier/Pier.tsx'
import { offsetOf, type PlacedPier } from '../../../src/view/scene/pier/placedPier.ts'
import { createCanvasKit, createPierKit } from '../../../src/view/scene/site/kit.ts'

extend({ Mesh: Body, Group: Node, LineSegments2 })

const kit = createPierKit(createCanvasKit())
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
  pier: drawnPier(result, looked, null),
  hidden: new Set(),
  lift,
  rise: 0,
})

/** Makes no picture, so that objects and buffers can be looked at without a graphics card. */
const drawsNothing = { render: () => undefined, setSize: () => undefined, setPixelRatio: () => undefined, dispose: () => undefined }

let root: ReconcilerRoot<HTMLCanvasElement>
let store: ReturnType<typeof root.render>
const show = (standing: PlacedPier, pointedAt: string | null = null): void => {
  flushSync(() => {
    store = root.render(<Pier standing={standing} kit={kit} isFull pointedAt={pointedAt} />)
  })
}
/** What is drawn of each part, in the order of the parts. */
const groups = (): Group[] =>
  store.getState().scene.children.filter((node): node is Group => node.type === 'Group' && node.children.length > 2)
const bodies = (): BufferGeometry[] => groups().map((group) => (group.children[0] as Body).geometry)
const geometriesOf = (group: Group): BufferGeometry[] => (group.children as Body[]).map(({ geometry }) => geometry)

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
    expect(groups()).toHaveLength(first.zones.length)
    expect(drawnPier(first, look, null).parts.map(({ zone }) => zone.id)).toEqual(first.zones.map(({ id }) => id))
  })

  it('drops what a change of method takes away, and frees it', () => {
    show(standingAs(first))
    let freed = 0
    for (const body of bodies()) body.addEventListener('dispose', () => freed++)
    const bare = derivePier({ ...defaultSpec, bars: null })
    show(standingAs(bare))
    expect(groups()).toHaveLength(bare.zones.length)
    expect(bare.zones.length).toBeLessThan(first.zones.length)
    expect(freed).toBeGreaterThan(0)
  })

  it('writes into the buffers it has while the cut is dragged', () => {
    const turned = (i: number): PlacedPier =>
      standingAs(first, { ...look, cut: { open: radians(0.6 + 0.012 * i), facing: radians(1.5 + 0.03 * i) } })
    show(turned(0))
    const before = bodies()
    let freed = 0
    for (const body of before) body.addEventListener('dispose', () => freed++)
    for (let i = 0; i < 100; i++) show(turned(i))
    expect(bodies()).toEqual(before)
    expect(freed).toBe(0)
  })

  it('frees every buffer that an edit outgrows, and all of them in the end', async () => {
    const made = new Set<BufferGeometry>()
    let freed = 0
    for (let i = 0; i < 60; i++) {
      const hole = {
        ...defaultSpec.hole,
        depth: metres(1.1 + 0.02 * i),
        bell: i % 2 === 0 ? null : { diameter: metres(0.75), height: metres(0.2) },
      }
      show(standingAs(derivePier({ ...defaultSpec, hole })))
      for (const geometry of groups().flatMap(geometriesOf))
        if (!made.has(geometry)) {
          made.add(geometry)
          geometry.addEventListener('dispose', () => freed++)
        }
    }
    const held = new Set(groups().flatMap(geometriesOf))
    expect(made.size - freed).toBe(held.size)
    flushSync(() => root.render(null))
    await expect.poll(() => freed).toBe(made.size)
  })

  it('groups outside faces and section faces, and covers every index', () => {
    const standing = standingAs(first)
    show(standing)
    for (const [i, geometry] of bodies().entries()) {
      const length = standing.pier.parts[i]?.mesh.indices.length
      expect(geometry.groups.map(({ materialIndex }) => materialIndex)).toEqual([0, 1])
      expect(geometry.groups.reduce((sum, { count }) => sum + count, 0)).toBe(length)
      expect(geometry.drawRange.count).toBe(length)
    }
  })

  it('wets the ground only when water is there and shown', () => {
    const wet = derivePier({ ...defaultSpec, site: { ...defaultSpec.site, waterTable: metres(0.7) } })
    show(standingAs(wet))
    expect(kit.shared.uWater.value).toBe(-0.7)
    show(standingAs(wet, { ...look, water: false }))
    expect(kit.shared.uWater.value).toBe(noWater)
    show(standingAs(first))
    expect(kit.shared.uWater.value).toBe(noWater)
  })

  it('lights one zone at a time', () => {
    const standing = standingAs(first)
    const litOnes = (pointedAt: string | null) => {
      show(standing, pointedAt)
      return standing.pier.parts.filter((_, i) => groups()[i]?.children[4]?.visible).map(({ zone }) => zone.id)
    }
    expect(litOnes('concrete')).toEqual(['concrete'])
    expect(litOnes('post')).toEqual(['post'])
    expect(litOnes(null)).toEqual([])
  })

  it('hides native ground without dropping it', () => {
    const standing = standingAs(first, { ...look, soil: false })
    show(standing)
    const shown = standing.pier.parts.filter((_, i) => groups()[i]?.visible).map(({ zone }) => zone.id)
    expect(shown).toContain('concrete')
    expect(shown).not.toContain('soil')
    expect(groups()).toHaveLength(first.zones.length)
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
    show(apart)
    expect(groups().map(({ position }) => position.y)).toEqual(apart.pier.parts.map((part) => offsetOf(apart, part).y))
    show({ ...apart, lift: 0 })
    for (const { position } of groups()) expect(position.toArray()).toEqual([0, 0, 0])
  })
})
