import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { lettingGo } from '../../../src/core/derive/lettingGo.ts'
import { cutMeshes } from '../../../src/core/geometry/cutMeshes.ts'
import type { PierResult } from '../../../src/core/model/result.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import { soundDocument } from '../../soundPier.ts'
import { setChoice, setPart } from '../../../src/core/spec/edit.ts'
import { radians } from '../../../src/core/units/quantity.ts'
import { drawnPier, type PierLook, segments } from '../../../src/view/scene/pier/drawnPier.ts'
import { alone, bodyOf, movedIn, offsetOf } from '../../../src/view/scene/pier/placedPier.ts'
import { bentZone, pullState, risenAfter, riseTime, shownRise } from '../../../src/view/scene/pull/pullState.ts'
import { close } from '../../close.ts'
import { meshVolume } from '../../meshFacts.ts'

const look: PierLook = {
  cut: { open: radians(1.9), facing: radians(1.5) },
  cutPost: false,
  water: true,
  frost: true,
  soil: true,
  wetness: false,
}
const hidden: ReadonlySet<string> = new Set()

type Edit = (document: PierDocument) => ReturnType<typeof setChoice>
const pier = (...edits: readonly Edit[]): PierResult =>
  derivePier(
    edits.reduce<PierDocument>((now, edit) => {
      const next = edit(now)
      if (!next.ok) throw new Error(JSON.stringify(next.issues))
      return next.value
    }, soundDocument).spec,
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
describe('[L4] what a pull moves in the picture', () => {
  it('covers every way that these piers have', () => {
    expect(new Set(cases.map(({ way }) => way.how)).size).toBeGreaterThanOrEqual(7)
  })

  it.each(cases)('$name: just what is listed goes up, and all else stays', ({ result, way }) => {
    const standing = { ...alone, pier: drawnPier(result, look, way), hidden, lift: 0, rise: 0 }
    expect(movedIn(standing)).toEqual({ displaced: [], parted: [], bent: [] })
    const rise = shownRise(way.how, result.spec.hole.depth)
    const risen = { ...standing, rise }
    const { displaced, parted, bent } = movedIn(risen)
    expect(displaced.sort()).toEqual([...way.moves].sort())
    expect(parted.sort()).toEqual(way.parts.map(({ zone }) => zone).sort())
    const bends = bentZone(way.how)
    expect(bent).toEqual(bends !== null && bodyOf(standing.pier, bends) ? [bends] : [])
    for (const part of standing.pier.parts) {
      expect(offsetOf(standing, part)).toEqual({ x: 0, y: 0, z: 0 })
      expect(offsetOf(risen, part)).toEqual({ x: 0, y: part.isPiece || way.moves.includes(part.zone.id) ? rise : 0, z: 0 })
    }
    for (const id of bent) {
      expect(way.stays).toContain(id)
      const shares = bodyOf(standing.pier, id)?.share ?? []
      // Held in concrete or in its plates, carried along in the post.
      expect(Math.min(...shares)).toBe(0)
      expect(Math.max(...shares)).toBe(1)
    }
  })

  it.each(cases.filter(({ way }) => way.parts.length > 0))(
    '$name: the two pieces are closed, and as large together as the whole',
    ({ result, way }) => {
      const { parts } = drawnPier(result, look, way)
      const whole = cutMeshes(result.zones, look.cut, { segments, cutPost: false })
      for (const { zone } of way.parts) {
        const [stays, goes] = [false, true].map((isPiece) => parts.find((part) => part.zone.id === zone && part.isPiece === isPiece)?.mesh)
        const before = whole.get(zone)
        if (!goes || !stays || !before) throw new Error(`${zone} has no pieces`)
        const [a, b, all] = [goes, stays, before].map((mesh) => meshVolume(mesh)) as [number, number, number]
        close(a + b, all, { abs: 1e-12, rel: 1e-6 })
        expect(a).toBeGreaterThan(0)
        expect(b).toBeGreaterThan(0)
      }
    },
  )
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

  it('rises from nothing to its end', () => {
    expect(risenAfter(0)).toBe(0)
    expect(risenAfter(riseTime / 2)).toBeCloseTo(0.5, 9)
    expect(risenAfter(riseTime)).toBe(1)
    expect(risenAfter(5 * riseTime)).toBe(1)
  })
})
