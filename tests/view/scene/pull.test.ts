import type { Mesh as Body } from 'three'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { lettingGo } from '../../../src/core/derive/lettingGo.ts'
import { cutMeshes } from '../../../src/core/geometry/cutMeshes.ts'
import type { PierResult } from '../../../src/core/model/result.ts'
import type { Mesh } from '../../../src/core/model/solid.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { setChoice, setPart } from '../../../src/core/spec/edit.ts'
import { radians } from '../../../src/core/units/quantity.ts'
import { createSharedUniforms } from '../../../src/view/scene/materials/sharedUniforms.ts'
import { createLineSet } from '../../../src/view/scene/model/lineSet.ts'
import { type ModelView, PierModel, segments } from '../../../src/view/scene/model/PierModel.ts'
import type { ZoneObject } from '../../../src/view/scene/model/ZoneObject.ts'
import { bentZone, pullState, shownRise } from '../../../src/view/scene/pull/pullState.ts'
import { Rising } from '../../../src/view/scene/pull/Rising.ts'
import { close } from '../../close.ts'
import { meshVolume } from '../../meshFacts.ts'

const shared = createSharedUniforms()
const view: ModelView = {
  cut: { open: radians(1.9), facing: radians(1.5) },
  cutPost: false,
  quality: 'light',
  water: true,
  frost: true,
  soil: true,
}

type Edit = (document: PierDocument) => ReturnType<typeof setChoice>
const pier = (...edits: readonly Edit[]): PierResult =>
  derivePier(
    edits.reduce<PierDocument>((now, edit) => {
      const next = edit(now)
      if (!next.ok) throw new Error(JSON.stringify(next.issues))
      return next.value
    }, defaultDocument).spec,
  )
const pick =
  (path: string, choice: string): Edit =>
  (document) =>
    setChoice(document, path, choice)
const on =
  (path: string): Edit =>
  (document) =>
    setPart(document, path, true)

const piers: Readonly<Record<string, PierResult>> = {
  'mixed full height': pier(),
  'with bell and upright bars': pier(on('hole.bell'), on('verticalBars')),
  collar: pier(pick('fill.kind', 'mixed-collar')),
  bracket: pier(pick('fill.kind', 'mixed-bracket-pier')),
}

const cases = Object.entries(piers).flatMap(([name, result]) =>
  result.checks.flatMap((check) => {
    const way = lettingGo(result, check.id)
    return way ? [{ name: `${name}: ${check.id}`, result, way }] : []
  }),
)
/** How far up each vertex is drawn over its place [m]. */
const risen = ({ group }: ZoneObject, { positions }: Mesh): number[] => {
  const drawn = (group.children[0] as Body).geometry.getAttribute('position').array
  return Array.from({ length: positions.length / 3 }, (_, i) => (drawn[3 * i + 1] ?? 0) - (positions[3 * i + 1] ?? 0))
}

describe('[L4] what a pull moves in the picture', () => {
  it('covers every way that these piers have', () => {
    expect(new Set(cases.map(({ way }) => way.how)).size).toBeGreaterThanOrEqual(7)
  })

  it.each(cases)('$name: just what is listed goes up, and all else stays', ({ result, way }) => {
    const model = new PierModel(shared, createLineSet())
    model.setWay(way)
    model.show(result, view)
    expect(model.moved().displaced).toEqual([])
    const rise = shownRise(way.how, result.spec.hole.depth)
    model.setRise(rise)
    const { displaced, parted, bent } = model.moved()
    expect(displaced.sort()).toEqual([...way.moves].sort())
    expect(parted.sort()).toEqual(way.parts.map(({ zone }) => zone).sort())
    const bends = bentZone(way.how)
    expect(bent).toEqual(bends !== null && model.zones.has(bends) ? [bends] : [])
    for (const [id, { group }] of model.zones) close(group.position.y, way.moves.includes(id) ? rise : 0, { abs: 1e-12, rel: 0 })
    for (const { group } of model.riders.values()) close(group.position.y, rise, { abs: 1e-12, rel: 0 })
    for (const id of bent) {
      expect(way.stays).toContain(id)
      const object = model.zones.get(id)
      if (!object?.mesh) throw new Error(`${id} is not drawn`)
      const shares = risen(object, object.mesh)
      // Held in concrete or in its plates, carried along in the post.
      close(Math.min(...shares), 0, { abs: 1e-6, rel: 0 })
      close(Math.max(...shares), rise, { abs: 1e-6, rel: 0 })
    }
    model.dispose()
  })

  it.each(cases.filter(({ way }) => way.parts.length > 0))(
    '$name: the two pieces are closed, and as large together as the whole',
    ({ result, way }) => {
      const model = new PierModel(shared, createLineSet())
      model.setWay(way)
      model.show(result, view)
      const whole = cutMeshes(result.zones, view.cut, { segments, cutPost: false })
      for (const { zone } of way.parts) {
        const goes = model.riders.get(zone)?.mesh
        const stays = model.zones.get(zone)?.mesh
        const before = whole.get(zone)
        if (!goes || !stays || !before) throw new Error(`${zone} has no pieces`)
        const [a, b, all] = [goes, stays, before].map((mesh) => meshVolume(mesh)) as [number, number, number]
        close(a + b, all, { abs: 1e-12, rel: 1e-6 })
        expect(a).toBeGreaterThan(0)
        expect(b).toBeGreaterThan(0)
      }
      model.dispose()
    },
  )

  it('puts all back, and frees what it made, when the pull lets go', () => {
    const { result, way } = cases.find(({ way: { parts } }) => parts.length > 0) ?? { result: pier(), way: null }
    const model = new PierModel(shared, createLineSet())
    model.setWay(way)
    model.show(result, view)
    model.setRise(0.1)
    expect(model.riders.size).toBeGreaterThan(0)
    model.setWay(null)
    model.show(result, view)
    expect(model.riders.size).toBe(0)
    expect(model.moved()).toEqual({ displaced: [], parted: [], bent: [] })
    for (const { group } of model.zones.values()) expect(group.position.y).toBe(0)
  })
})

describe('[L4] what a pull comes to', () => {
  const first = pier()
  const allowable = first.uplift.allowable ?? 0

  it('moves nothing below what the path holds, and lets go there', () => {
    expect(pullState(first, null)).toEqual({ kind: 'none' })
    expect(pullState(first, 0)).toEqual({ kind: 'holding', share: 0 })
    expect(pullState(first, 0.5 * allowable)).toEqual({ kind: 'holding', share: 0.5 })
    expect(pullState(first, allowable * (1 - 1e-9)).kind).toBe('holding')
    const full = pullState(first, allowable)
    expect(full.kind === 'letting-go' && full.way.link).toBe(first.uplift.governing)
  })

  it('moves nothing, whatever the pull, where a link cannot be verified', () => {
    const dry = pier(pick('fill.kind', 'dry-bag-at-foot'))
    expect(dry.uplift.allowable).toBeNull()
    for (const pull of [0, 1e3, 1e9]) expect(pullState(dry, pull)).toEqual({ kind: 'unverified' })
  })

  it('rises from nothing to its end, or stands there at once where motion is not wanted', () => {
    const rising = new Rising()
    rising.begin(100, false)
    expect(rising.share).toBe(0)
    rising.frame(500)
    expect(rising.share).toBeGreaterThan(0)
    expect(rising.share).toBeLessThan(1)
    rising.frame(5000)
    expect([rising.share, rising.isRunning]).toEqual([1, false])
    rising.end()
    rising.begin(100, true)
    expect([rising.share, rising.isRunning]).toEqual([1, false])
  })
})
