import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bracketKinds, fillKinds } from '../../../src/core/kinds/index.ts'
import type { Result } from '../../../src/core/model/issue.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { report } from '../../../src/core/derive/report/report.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { openingDocument } from '../../../src/core/spec/openingPier.ts'
import { setChoice, setField, setNumber, setPart } from '../../../src/core/spec/edit.ts'
import { fieldAt, visibleFields } from '../../../src/core/spec/fields.ts'
import { parseJob, writeJob } from '../../../src/core/spec/jobFile.ts'
import { linkContent } from '../../../src/core/spec/linkContent.ts'
import { documentFromContent } from '../../../src/core/spec/linkFields.ts'
import { originOf } from '../../../src/core/spec/origins.ts'
import { arbitraryPier } from '../../arbitraryPier.ts'

const done = (result: Result<PierDocument>): PierDocument => (result.ok ? result.value : expect.fail(JSON.stringify(result.issues)))
const filled = (document: PierDocument, id: string) => done(setChoice(document, 'fill.kind', id))
const held = (document: PierDocument, id: string) => done(setChoice(document, 'support.bracket.kind', id))
const typed = (document: PierDocument, path: string, text: string) => done(setField(document, path, text, 'us'))

/** The pier with every size of its fill and its support moved a step from where it starts, where that can be built. */
const moved = (document: PierDocument): PierDocument =>
  visibleFields(document.spec).reduce((pier, field) => {
    if (!/^(fill|support|bars)\./.test(field.path) || field.type !== 'number' || field.nullable) return pier
    const value = field.path.split('.').reduce<unknown>((node, key) => (node as Record<string, unknown>)[key], pier.spec)
    const next = setNumber(pier, field.path, Number(value) + field.step.us)
    return next.ok ? next.value : pier
  }, document)

const pairs = <T extends Readonly<{ id: string }>>(kinds: readonly T[]) =>
  kinds.flatMap((a) => kinds.flatMap((b) => (a.id === b.id ? [] : [[a.id, b.id] as const])))

describe('[K3] each fill and each bracket keeps its own values', () => {
  it.each(pairs(fillKinds))('%s, then %s, and back is the same pier', (a, b) => {
    const before = moved(filled(defaultDocument, a))
    const there = filled(before, b)
    const back = filled(there, a)
    expect(back.spec).toEqual(before.spec)
    expect(back.written).toEqual(before.written)
    for (const { path } of visibleFields(before.spec))
      if (path !== 'fill.kind') expect(originOf(back, path), path).toBe(originOf(before, path))
    // And there again: that one had values too.
    expect(filled(back, b).spec).toEqual(there.spec)
  })

  it.each(pairs(fillKinds))('the opening pier with %s, then %s, and back holds what it held', (a, b) => {
    const before = filled(openingDocument, a)
    const back = filled(filled(before, b), a)
    expect(back.spec).toEqual(before.spec)
    const told = ({ spec }: PierDocument) =>
      report(derivePier(spec)).map(({ id, verdict, value, ratio }) => ({ id, verdict, value, ratio }))
    expect(told(back)).toEqual(told(before))
  })

  it.each(pairs(bracketKinds))('%s, then %s, and back is the same pier', (a, b) => {
    const before = moved(held(filled(defaultDocument, 'mixed-bracket-pier'), a))
    const back = held(held(before, b), a)
    expect(back.spec).toEqual(before.spec)
  })

  it('every pair of fills of random piers, there and back', () => {
    fc.assert(
      fc.property(arbitraryPier(), fc.constantFrom(...fillKinds), (document, { id }) => {
        const there = setChoice(document, 'fill.kind', id)
        if (!there.ok) return
        expect(filled(there.value, document.spec.fill.kind).spec).toEqual(document.spec)
      }),
      { numRuns: 150, seed: 31 },
    )
  })

  it('a post that goes from one fill over a bracket to a third fill stands as it stood, with its bar', () => {
    const before = typed(typed(defaultDocument, 'support.foot', '9 in'), 'bars.length', '13 in')
    const third = filled(filled(before, 'mixed-bracket-pier'), 'mixed-collar')
    expect(third.spec.support).toEqual(before.spec.support)
    expect(third.spec.bars).toEqual(before.spec.bars)
    expect(third.written).toEqual(before.written)
    expect(third.origins).toEqual({})
  })

  it('a size that was changed meanwhile and belongs to all fills stays changed', () => {
    const collar = typed(filled(defaultDocument, 'mixed-collar'), 'bars.length', '12 in')
    const back = filled(typed(filled(collar, 'mixed-full-height'), 'bars.length', '11 in'), 'mixed-collar')
    expect(back.spec.bars?.length).toBeCloseTo(11 * 0.0254, 12)
  })

  it('what can no longer be built gives way as with a first choice', () => {
    const tall = typed(typed(filled(defaultDocument, 'mixed-collar'), 'fill.height', '36 in'), 'support.foot', '20 in')
    const shallow = done(setPart(filled(tall, 'mixed-full-height'), 'bars', false))
    const cut = typed(typed(shallow, 'support.foot', '4 in'), 'hole.depth', '30 in')
    const back = setChoice(cut, 'fill.kind', 'mixed-collar')
    expect(back.ok).toBe(true)
    expect(back.ok && back.value.spec.hole.depth).toBe(cut.spec.hole.depth)
  })

  it('holds nothing where there is nothing to keep, and nothing of a kind that is in use', () => {
    expect(defaultDocument.otherKinds).toEqual([])
    const there = filled(defaultDocument, 'dry-full-height')
    expect(there.otherKinds).toEqual([])
    const round = fillKinds.reduce((document, { id }) => filled(document, id), defaultDocument)
    expect(round.otherKinds.every(({ of, pier }) => of !== 'fill' || pier.fill?.kind !== round.spec.fill.kind)).toBe(true)
    expect(round.otherKinds.length).toBeLessThan(fillKinds.length + 2)
  })

  it('goes into the file, as typed, and out of it again; a link says nothing of it', () => {
    const collar = typed(filled(defaultDocument, 'mixed-collar'), 'fill.height', `1'-8"`)
    const there = filled(filled(collar, 'mixed-bracket-pier'), 'dry-bag-at-foot')
    const file = writeJob(there)
    expect(file).toContain(JSON.stringify(`1'-8"`))
    const opened = done(parseJob(file))
    expect(writeJob(opened)).toBe(file)
    const back = filled(opened, 'mixed-collar')
    expect(back.spec).toEqual(filled(there, 'mixed-collar').spec)
    expect(back.spec).toEqual(collar.spec)
    expect(back.written['fill.height']).toBe(`1'-8"`)
    const linked = done(documentFromContent(linkContent(there)))
    expect(linked.spec).toEqual(there.spec)
    expect(linked.otherKinds).toEqual([])
  })

  it.each([
    ['a part that is none', [{ of: 'fill', pier: { hole: {} } }], 'unknown-key'],
    ['a kind that is none', [{ of: 'fill', pier: { fill: { kind: 'foam' } } }], 'not-a-choice'],
    ['a size without a unit', [{ of: 'fill', pier: { fill: { kind: 'mixed-collar', height: 18 } } }], 'wrong-type'],
    ['no list', {}, 'wrong-type'],
  ])('a file with %s is refused', (_, otherKinds, code) => {
    const job = { ...(JSON.parse(writeJob(defaultDocument)) as object), otherKinds }
    expect(parseJob(JSON.stringify(job)).issues.map((issue) => issue.code)).toContain(code)
  })
})

describe('[K4] each input knows where its value came from', () => {
  const origin = (document: PierDocument, path: string) => originOf(document, path)

  it('the first pier assumes everything, and says nothing of it', () => {
    for (const { path } of visibleFields(defaultDocument.spec)) expect(origin(defaultDocument, path)).toBe('assumed')
    expect(defaultDocument.origins).toEqual({})
    expect(writeJob(defaultDocument)).not.toContain('origins')
  })

  it('what a person gives is typed, even where it is what was there', () => {
    const deeper = typed(defaultDocument, 'hole.depth', '50 in')
    expect(origin(deeper, 'hole.depth')).toBe('typed')
    expect(deeper.origins).toEqual({})
    const same = typed(defaultDocument, 'hole.depth', '48 in')
    expect(origin(same, 'hole.depth')).toBe('typed')
    expect(same.origins).toEqual({ 'hole.depth': 'typed' })
    expect(typed(same, 'hole.depth', '50 in').origins).toEqual({})
  })

  it('what is read off the drawing says so', () => {
    const drawn = typed(done(setPart(defaultDocument, 'callout', true)), 'callout.diameter', '18 in')
    expect(origin(drawn, 'callout.diameter')).toBe('drawing')
    const loaded = typed(done(setPart(drawn, 'loads.entered', true)), 'loads.entered.uplift', '900 lb')
    expect(origin(loaded, 'loads.entered.uplift')).toBe('drawing')
    expect(origin(loaded, 'loads.entered.gravity')).toBe('assumed')
  })

  it('what a change moves is assumed, whatever it was', () => {
    const set = typed(defaultDocument, 'support.foot', '9 in')
    const bag = filled(set, 'dry-bag-at-foot')
    expect(bag.spec.support).toEqual({ kind: 'embedded', foot: 0 })
    expect(origin(bag, 'support.foot')).toBe('assumed')
    expect(origin(bag, 'fill.kind')).toBe('typed')
    const wide = done(setPart(typed(defaultDocument, 'hole.diameter', '24 in'), 'hole.bell', true))
    expect(origin(wide, 'hole.bell')).toBe('typed')
    expect(origin(wide, 'hole.bell.diameter')).toBe('assumed')
    expect(origin(wide, 'hole.diameter')).toBe('typed')
  })

  it('goes into the file only where the value does not tell it, and comes out again', () => {
    const file = writeJob(filled(typed(defaultDocument, 'hole.depth', '48 in'), 'dry-bag-at-foot'))
    expect((JSON.parse(file) as { origins: unknown }).origins).toEqual({ 'hole.depth': 'typed', 'support.foot': 'assumed' })
    expect(writeJob(done(parseJob(file)))).toBe(file)
  })

  it('may be that nobody knows', () => {
    const job = { ...(JSON.parse(writeJob(defaultDocument)) as object), origins: { 'site.frostDepth': 'not-known' } }
    const read = done(parseJob(JSON.stringify(job)))
    expect(origin(read, 'site.frostDepth')).toBe('not-known')
    expect(origin(typed(read, 'hole.depth', '50 in'), 'site.frostDepth')).toBe('not-known')
    expect(origin(typed(read, 'site.frostDepth', '40 in'), 'site.frostDepth')).toBe('typed')
  })

  it.each([
    [{ 'hole.width': 'typed' }, 'unknown-key'],
    [{ 'hole.depth': 'guessed' }, 'not-a-choice'],
  ])('a file that says %j is refused', (origins, code) => {
    const job = { ...(JSON.parse(writeJob(defaultDocument)) as object), origins }
    expect(parseJob(JSON.stringify(job)).issues.map((issue) => issue.code)).toContain(code)
  })

  it('is known of every input that any pier has', () => {
    fc.assert(
      fc.property(arbitraryPier(), (document) => {
        for (const { path } of visibleFields(document.spec)) expect(fieldAt(document.spec, path) && originOf(document, path)).toBeTruthy()
      }),
      { numRuns: 40 },
    )
  })
})
