import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { lettingGo, leastYieldMode } from '../../../src/core/derive/lettingGo.ts'
import { bracketKinds, fillKinds } from '../../../src/core/kinds/index.ts'
import type { PierResult } from '../../../src/core/model/result.ts'
import type { PierDocument, PierSpec } from '../../../src/core/model/spec.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { setChoice, setField, setPart } from '../../../src/core/spec/edit.ts'
import { arbitraryPier } from '../../arbitraryPier.ts'
import { close } from '../../close.ts'
import { soundPier } from '../../soundPier.ts'

const inches = 0.0254
const chainGroups = ['uplift-post', 'uplift-connection', 'uplift-concrete', 'uplift-soil']
const upLinks = (result: PierResult) =>
  result.checks.filter((check) => chainGroups.includes(check.group) && check.counted !== 'upper bound')

type Edit = (document: PierDocument) => ReturnType<typeof setChoice>
const edited = (...edits: readonly Edit[]): PierResult => {
  const document = edits.reduce<PierDocument>((now, edit) => {
    const next = edit(now)
    if (!next.ok) throw new Error(JSON.stringify(next.issues))
    return next.value
  }, defaultDocument)
  return derivePier(document.spec)
}
const pick =
  (path: string, choice: string): Edit =>
  (document) =>
    setChoice(document, path, choice)
const on =
  (path: string): Edit =>
  (document) =>
    setPart(document, path, true)
const type =
  (path: string, text: string): Edit =>
  (document) =>
    setField(document, path, text, 'us')

/** Upright bars that reach their development length past a connection 15 in over the bottom of the concrete. */
const upright = [on('verticalBars'), pick('verticalBars.size', '#3'), pick('verticalBars.grade', '40')]

/** What goes and what stays, in a line for each link: "how: goes | parts | stays". */
const states = (result: PierResult): Record<string, string> =>
  Object.fromEntries(
    upLinks(result).flatMap(({ id }) => {
      const found = lettingGo(result, id)
      if (!found) return []
      const parts = found.parts.map((part) => `${part.zone} ${part.across}`)
      return [[id, `${found.how}: ${found.moves.join(' ')} | ${parts.join(', ')} | ${found.stays.join(' ')}`]]
    }),
  )

describe('[L4] how each link would let go, state by state', () => {
  it('mixed concrete, full height', () =>
    expect(states(edited())).toEqual({
      'post-net-tension': 'post-pulls-apart:  | post level | topsoil soil concrete bars',
      'post-tear-out': 'post-end-tears: post |  | topsoil soil concrete bars',
      'bar-through-post': 'bar-bends: post |  | topsoil soil concrete bars',
      'bar-shear': 'bar-shears: post | bars post-faces | topsoil soil concrete',
      'concrete-breakout': 'concrete-cone: post bars | concrete cone | topsoil soil',
      'friction-and-weight': 'pier-slides: post bars concrete |  | topsoil soil',
    }))

  it('the same with a bell, upright bars, mulch on top and a stone bed', () =>
    expect(
      states(
        edited(
          on('hole.bell'),
          ...upright,
          on('hole.base'),
          type('support.foot', '12 in'),
          type('bars.aboveFoot', '12 in'),
          type('top.heaped', '3 in'),
        ),
      ),
    ).toMatchObject({
      'concrete-tension': 'pier-parts: post bars heap | concrete level, vertical-bars level | topsoil soil base',
      'concrete-breakout': 'concrete-cone: post bars heap | concrete cone | topsoil soil base vertical-bars',
      'friction-and-weight': 'pier-heaves-soil: post bars vertical-bars heap concrete | topsoil cone, soil cone | base',
      'cone-over-ledge': 'pier-lifts-cone: post bars vertical-bars heap concrete | topsoil cone, soil cone | base',
      'breakout-of-ledge': 'base-breaks-out: post bars vertical-bars heap concrete | topsoil cone, soil cone | base',
    }))

  it('by every other way to count the grip of the ground the pier slides too', () => {
    const deep = [type('hole.depth', '120 in'), type('site.frostDepth', '12 in'), type('site.blows', '15')]
    const own = [pick('site.soil.kind', 'user'), type('site.soil.cohesion', '1500 psf'), type('site.soil.sideFriction', '200 psf')]
    const slides = Object.entries({ ...states(edited(...deep)), ...states(edited(...deep, ...own)) }).filter(([id]) =>
      /friction|adhesion/.test(id),
    )
    expect(slides.length).toBeGreaterThanOrEqual(4)
    for (const [id, state] of slides) expect(state, id).toBe('pier-slides: post bars concrete |  | topsoil soil')
  })

  it('a collar goes with the soil that was put back on it', () =>
    expect(states(edited(pick('fill.kind', 'mixed-collar'), type('fill.height', '20 in')))).toMatchObject({
      'friction-and-weight': 'pier-slides: post bars concrete backfill |  | topsoil soil',
      'cone-over-ledge': 'pier-lifts-cone: post bars concrete backfill | topsoil cone, soil cone | ',
      'concrete-breakout': 'concrete-cone: post bars backfill | concrete cone | topsoil soil',
    }))

  it('a bracket: the post leaves the bolts, or the legs leave the concrete', () =>
    expect(states(edited(pick('fill.kind', 'mixed-bracket-pier')))).toEqual({
      'post-net-tension': 'post-pulls-apart:  | post level | topsoil soil concrete bracket-legs bracket-seat bracket-plates bolts',
      'post-tear-out': 'post-end-tears: post |  | topsoil soil concrete bracket-legs bracket-seat bracket-plates bolts',
      'bracket-bolts': 'bolts-bend: post |  | topsoil soil concrete bracket-legs bracket-seat bracket-plates bolts',
      'bracket-legs-hold': 'legs-pull-out: post bracket-legs bracket-seat bracket-plates bolts |  | topsoil soil concrete',
      'concrete-breakout': 'concrete-cone: post bracket-legs bracket-seat bracket-plates bolts | concrete cone | topsoil soil',
      'friction-and-weight': 'pier-slides: post bracket-legs bracket-seat bracket-plates bolts concrete |  | topsoil soil',
    }))

  it.each(['side-plates', 'knife-plate'])('%s: flat legs have no state of their own until the bracket is rated', (kind) => {
    const flat = [pick('fill.kind', 'mixed-bracket-pier'), pick('support.bracket.kind', kind)]
    expect(states(edited(...flat))).not.toHaveProperty('bracket-legs-hold')
    expect(states(edited(...flat, type('support.bracket.rating', '2000 lb')))).toMatchObject({
      'bracket-legs-hold': 'bracket-gives: post bolts bracket-plates |  | topsoil soil concrete bracket-legs bracket-seat',
    })
  })

  it('a base plate goes with the pier too', () =>
    expect(states(edited(pick('fill.kind', 'mixed-bracket-pier'), pick('support.bracket.kind', 'base-plate')))).toMatchObject({
      'friction-and-weight': 'pier-slides: post bracket-seat bracket-base bracket-plates anchors bolts concrete |  | topsoil soil',
    }))

  it.each(fillKinds.filter((kind) => kind.counting.connection.counted === 'not counted').map((kind) => kind.id))(
    '%s: no state for a link that can not be verified, and none governs',
    (id) => {
      const result = edited(pick('fill.kind', id))
      expect(result.uplift.governing).toBeNull()
      for (const check of upLinks(result)) expect(lettingGo(result, check.id) === null).toBe(check.allowable === null)
      expect(lettingGo(result, 'friction-and-weight')).toBeNull()
    },
  )

  it('mix placed dry that cores speak for, without a bar: it parts at the end of the post', () => {
    const noBar: Edit = (document) => setPart(document, 'bars', false)
    const cored = edited(pick('fill.kind', 'dry-full-height'), type('support.foot', '18 in'), noBar, ...upright, on('concrete.cores'))
    const found = lettingGo(cored, 'concrete-tension')
    expect(found).toMatchObject({ how: 'pier-parts', moves: ['post'], stays: ['topsoil', 'soil'] })
    const part = found?.parts[0]
    if (part?.across !== 'level') throw new Error('no level')
    close(part.level, 18 * inches - cored.spec.hole.depth, { abs: 1e-12, rel: 0 }, 'foot of the post')
  })

  it('every kind has been tried', () => {
    expect(fillKinds.length).toBe(7)
    expect(bracketKinds.length).toBe(4)
  })
})

describe('[L4] what the states rest on', () => {
  const spec: PierSpec = soundPier
  const result = derivePier(spec)
  const bar = (spec.bars?.aboveFoot ?? 0) + 8 * inches - spec.hole.depth

  it('parts the pier and the cone at the bar, and the post there too', () => {
    for (const link of ['concrete-tension', 'concrete-breakout', 'post-net-tension']) {
      const part = lettingGo(result, link)?.parts[0]
      if (!part || part.across === 'post-faces') throw new Error(link)
      close(part.level, bar, { abs: 1e-12, rel: 0 }, link)
    }
  })

  it('starts the soil cone at the edge of the bell, on the slope of its rule', () => {
    const belled = edited(on('hole.bell'))
    const part = lettingGo(belled, 'cone-over-ledge')?.parts.find((one) => one.zone === 'soil')
    if (part?.across !== 'cone') throw new Error('no cone')
    const bell = belled.spec.hole.bell
    close(part.radius, (bell?.diameter ?? 0) / 2, { abs: 1e-12, rel: 0 }, 'radius')
    close(part.level, -belled.spec.hole.depth + (bell?.height ?? 0), { abs: 1e-9, rel: 0 }, 'level')
    // Rural Utilities Service practice takes 30 degrees from the vertical: tan 30 = 0.57735 (any table of tangents).
    close(part.spread, 0.57735, { abs: 5e-6, rel: 0 }, 'spread')
  })

  it('a wide foot that comes up takes the soil right over it along, straight up, at no more than its own width', () => {
    const belled = edited(on('hole.bell'))
    const found = lettingGo(belled, 'friction-and-weight')
    expect(found?.parts.map((part) => part.zone)).toEqual(['topsoil', 'soil'])
    for (const part of found?.parts ?? []) {
      if (part.across !== 'cone') throw new Error('no round')
      close(part.radius, (belled.spec.hole.bell?.diameter ?? 0) / 2, { abs: 1e-12, rel: 0 }, 'radius')
      expect(part.spread).toBe(0)
    }
    expect(lettingGo(edited(), 'friction-and-weight')?.parts).toEqual([])
  })

  it('soil that lies wholly under the ledge stays', () => {
    const layered = edited(on('hole.bell'), on('site.lower'), type('site.lower.from', '60 in'))
    const found = lettingGo(layered, 'cone-over-ledge')
    expect(found?.stays).toContain('soil-lower')
    const high = lettingGo(edited(on('hole.bell'), on('site.lower'), type('site.lower.from', '20 in')), 'cone-over-ledge')
    expect(high?.parts.map((part) => part.zone)).toContain('soil-lower')
  })

  it('names the yield mode that is least', () => {
    const check = result.checks.find((one) => one.id === 'bar-through-post')
    if (!check) throw new Error('no bar')
    const least = [...check.worked].filter((one) => one.id.startsWith('yield-mode')).sort((a, b) => a.value - b.value)[0]
    expect(least?.id).toBe(`yield-mode-${leastYieldMode(check)}`)
    const one = (id: string, value: number) => ({ ...(least ?? expect.fail()), id, value })
    expect(leastYieldMode({ ...check, worked: [one('yield-mode-Im', 3), one('yield-mode-Is', 2), one('yield-mode-IV', 2.5)] })).toBe('Is')
    const bears = { ...result, checks: [{ ...check, worked: [one('yield-mode-Im', 1), one('yield-mode-IV', 2)] }] }
    expect(lettingGo(bears, 'bar-through-post')?.how).toBe('wood-bears')
    const crushes = { ...result, checks: [{ ...check, worked: [one('yield-mode-Im', 2), one('yield-mode-Is', 1)] }] }
    expect(lettingGo(crushes, 'bar-through-post')?.moves).toEqual(['post', 'bars'])
    expect(leastYieldMode({ ...check, worked: [] })).toBeNull()
  })

  it('an id that is no link has no state', () => expect(lettingGo(result, 'frost-depth')).toBeNull())

  it('of random piers: every link that has a capacity has a state, and every zone is in it once', () => {
    let seen = 0
    fc.assert(
      fc.property(arbitraryPier(), ({ spec: any }) => {
        const pier = derivePier(any)
        for (const check of upLinks(pier)) {
          const found = lettingGo(pier, check.id)
          if (check.allowable === null) {
            expect(found).toBeNull()
            continue
          }
          seen++
          expect(found, check.id).not.toBeNull()
          const ids = [...(found?.moves ?? []), ...(found?.stays ?? []), ...(found?.parts ?? []).map((part) => part.zone)]
          expect([...ids].sort()).toEqual(pier.zones.map((zone) => zone.id).sort())
          const goes = new Set([...(found?.moves ?? []), ...(found?.parts ?? []).map((part) => part.zone)])
          expect(goes.has('post')).toBe(true)
        }
        if (pier.uplift.governing !== null) expect(lettingGo(pier, pier.uplift.governing)).not.toBeNull()
      }),
      { numRuns: 150, seed: 11 },
    )
    expect(seen).toBeGreaterThan(300)
  })
})
