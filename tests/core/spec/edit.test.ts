import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bracketKinds, fillKind, fillKinds } from '../../../src/core/kinds/index.ts'
import type { Result } from '../../../src/core/model/issue.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { setChoice, setField, setNumber, setPart } from '../../../src/core/spec/edit.ts'
import { visibleFields } from '../../../src/core/spec/fields.ts'
import { valueAt } from '../../../src/core/spec/path.ts'
import { validateSpec } from '../../../src/core/spec/validate.ts'
import { arbitraryPier } from '../../arbitraryPier.ts'

const done = (result: Result<PierDocument>): PierDocument => {
  if (!result.ok) expect.fail(JSON.stringify(result.issues))
  return result.value
}
const codes = (result: Result<PierDocument>) => (result.ok ? [] : result.issues.map((issue) => issue.code))
const bracketPier = done(setChoice(defaultDocument, 'fill.kind', 'mixed-bracket-pier'))

describe('typing a value', () => {
  it.each([
    ['24', 'us', 0.6096, '24 in'],
    ['24 in', 'us', 0.6096, '24 in'],
    [` 2'-0" `, 'us', 0.6096, `2'-0"`],
    ['600', 'metric', 0.6, '600 mm'],
    ['0.6 m', 'us', 0.6, '0.6 m'],
    ['0,6 m', 'metric', 0.6, '0,6 m'],
  ] as const)('%j in %s', (text, system, value, written) => {
    const next = done(setField(defaultDocument, 'hole.diameter', text, system))
    expect(next.spec.hole.diameter).toBe(value)
    expect(next.written).toEqual({ 'hole.diameter': written })
    expect(Object.isFrozen(next.spec.hole)).toBe(true)
    expect(next.spec.site).toBe(defaultDocument.spec.site)
  })

  it('takes a bare number in the unit that its field is told in: feet for a span, a plain number for a factor', () => {
    const roofed = done(setPart(defaultDocument, 'loads.estimate', true))
    for (const [text, system, value, written] of [
      ['30', 'us', 30 * 0.3048, '30 ft'],
      ['9.5', 'metric', 9.5, '9.5 m'],
      ['360 in', 'us', 360 * 0.0254, '360 in'],
    ] as const) {
      const next = done(setField(roofed, 'loads.estimate.span', text, system))
      expect(next.spec.loads.estimate?.span).toBeCloseTo(value, 12)
      expect(next.written['loads.estimate.span']).toBe(written)
    }
    expect(done(setField(roofed, 'loads.estimate.topographic', '1.2', 'us')).spec.loads.estimate?.topographic).toBe(1.2)
    expect(codes(setField(roofed, 'loads.estimate.topographic', '0.5', 'us'))).toEqual(['below-minimum'])
  })

  it.each([
    ['', 'empty'],
    ['abc', 'not-a-number'],
    ['4', 'below-minimum'],
    ['60', 'above-maximum'],
    ['24 psi', 'wrong-unit'],
    ['9', 'bar-longer-than-hole'],
  ])('%j is refused as %s, and nothing is lost', (text, code) => {
    const before = JSON.stringify(defaultDocument)
    const result = setField(defaultDocument, 'hole.diameter', text, 'us')
    expect(codes(result)).toContain(code)
    expect(JSON.stringify(defaultDocument)).toBe(before)
    expect(result).not.toHaveProperty('value')
    if (!result.ok) for (const issue of result.issues) expect(issue.severity).toBe('error')
  })

  it('tells where a value that is refused may be', () => {
    const [issue] = setField(defaultDocument, 'hole.diameter', '4', 'us').issues
    expect(issue).toEqual({
      code: 'below-minimum',
      severity: 'error',
      path: 'hole.diameter',
      got: 0.1016,
      limit: 0.2032,
      quantity: 'length',
    })
    const [unit] = setField(defaultDocument, 'site.slope', '5 in', 'us').issues
    expect(unit).toEqual({
      code: 'wrong-unit',
      severity: 'error',
      path: 'site.slope',
      got: '5 in',
      limit: '%, deg, H:V',
      quantity: 'slope',
    })
  })

  it('clears a value that may be none', () => {
    const wet = done(setField(defaultDocument, 'site.waterTable', '30', 'us'))
    expect(wet.spec.site.waterTable).toBeCloseTo(0.762, 12)
    const dry = done(setField(wet, 'site.waterTable', ' ', 'us'))
    expect(dry.spec.site.waterTable).toBeNull()
    expect(dry.written).toEqual({})
    expect(codes(setField(wet, 'site.frostDepth', '', 'us'))).toEqual(['empty'])
  })

  it.each([
    'hole.bell.diameter',
    'support.standOff',
    'fill.height',
    'hole',
    'hole.bell',
    'fill.kind',
    '__proto__',
    'hole.__proto__',
    'support.kind',
    '',
  ])('at %j is no input of this pier', (path) => expect(codes(setField(defaultDocument, path, '10 in', 'us'))).toEqual(['not-a-field']))

  it('gives warnings with the document', () => {
    const result = setField(defaultDocument, 'hole.depth', '40 in', 'us')
    expect(result.ok).toBe(true)
    expect(result.issues).toMatchObject([{ code: 'frost-below-bearing', severity: 'warning', path: 'hole.depth' }])
  })

  it('drops the typed text when a slider moves the value', () => {
    const typed = done(setField(defaultDocument, 'hole.depth', '50 in', 'us'))
    expect(done(setNumber(typed, 'hole.depth', 1.3)).written).toEqual({})
    expect(codes(setNumber(typed, 'hole.depth', Number.NaN))).toEqual(['not-finite'])
    expect(codes(setNumber(typed, 'hole.depth', null))).toEqual(['not-finite'])
  })
})

describe('switching a part', () => {
  it.each(['hole.bell', 'hole.flare', 'hole.base', 'site.lower', 'verticalBars'])('%s on and off again', (path) => {
    const on = done(setPart(defaultDocument, path, true))
    expect(valueAt(on.spec, path)).not.toBeNull()
    expect(done(setPart(on, path, true)).spec).toEqual(on.spec)
    expect(valueAt(done(setPart(on, path, false)).spec, path)).toBeNull()
  })

  it('raises the foot out of a base', () => {
    const low = done(setField(defaultDocument, 'support.foot', '0 in', 'us'))
    const based = done(setPart(low, 'hole.base', true))
    expect(based.spec.support).toEqual({ kind: 'embedded', foot: based.spec.hole.base?.thickness })
  })

  it('makes a bar as long as the hole allows with cover', () => {
    const wide = done(setPart(done(setNumber(defaultDocument, 'hole.diameter', 0.762)), 'bars', false))
    const barred = done(setPart(wide, 'bars', true))
    expect(barred.spec.bars?.length).toBeCloseTo(24 * 0.0254, 12)
    expect(validateSpec(barred.spec)).toEqual([])
  })

  it('offers no bar to a bracket', () => expect(codes(setPart(bracketPier, 'bars', true))).toEqual(['not-a-field']))

  it('says why a part has no place, and leaves the pier alone', () => {
    const bag = done(setChoice(defaultDocument, 'fill.kind', 'dry-bag-at-foot'))
    expect(codes(setPart(bag, 'verticalBars', true))).toEqual(['vertical-bars-too-short'])
  })
})

describe('choosing', () => {
  it('another fill brings its values and its support in one step, and drops the bars where a bracket comes in', () => {
    expect(bracketPier.spec.fill).toEqual(fillKind('mixed-bracket-pier').defaults)
    expect(bracketPier.spec.support.kind).toBe('bracket')
    expect(bracketPier.spec.bars).toBeNull()
    const back = done(setChoice(bracketPier, 'fill.kind', 'mixed-collar'))
    expect(back.spec.support).toEqual(defaultDocument.spec.support)
    expect(back.spec.fill).toEqual(fillKind('mixed-collar').defaults)
  })

  it('the same again changes nothing', () => {
    for (const field of visibleFields(defaultDocument.spec)) {
      if (field.type !== 'choice') continue
      const same = done(setChoice(defaultDocument, field.path, valueAt(defaultDocument.spec, field.path) as string | number))
      expect(same.spec).toEqual(defaultDocument.spec)
    }
  })

  it('own soil values start at those of the class, and sand comes back', () => {
    const clay = done(setChoice(defaultDocument, 'site.soil.class', 'clay'))
    const own = done(setChoice(clay, 'site.soil.kind', 'user'))
    expect(own.spec.site.soil).toMatchObject({ kind: 'user', allowableBearing: expect.closeTo(1500 * 47.88025898, 4), sideFriction: 0 })
    expect(done(setChoice(own, 'site.soil.kind', 'presumptive')).spec.site.soil).toEqual({ kind: 'presumptive', class: 'sand' })
  })

  it('a crown has a rise', () => {
    const flat = done(setNumber(done(setChoice(defaultDocument, 'top.shape', 'crowned')), 'top.rise', 0))
    expect(done(setChoice(flat, 'top.shape', 'dished')).spec.top.rise).toBeGreaterThan(0)
  })

  it('what nobody offers is refused', () => {
    expect(codes(setChoice(defaultDocument, 'fill.kind', 'foam'))).toEqual(['not-a-choice'])
    expect(codes(setChoice(defaultDocument, 'fill.kind', 'toString'))).toEqual(['not-a-choice'])
    expect(codes(setChoice(defaultDocument, 'concrete.bagSize', '80'))).toEqual(['not-a-choice'])
    expect(codes(setChoice(defaultDocument, 'support.bracket.kind', 'side-plates'))).toEqual(['not-a-field'])
  })

  it.each(bracketKinds.map((kind) => kind.id))('%s brings its own sizes', (id) => {
    const next = done(setChoice(bracketPier, 'support.bracket.kind', id))
    expect(next.spec.support).toMatchObject({ bracket: bracketKinds.find((kind) => kind.id === id)?.defaults })
  })

  it('any fill after any other works out for nearly every pier; where not, only a measured size stands in the way', () => {
    const piers = fc.sample(arbitraryPier(), { numRuns: 150, seed: 21 })
    const measured = /^(post\.|hole\.|site\.|fill\.bags|support\.bracket\.kind)/
    let refused = 0
    for (const pier of piers) {
      for (const kind of fillKinds) {
        const result = setChoice(pier, 'fill.kind', kind.id)
        if (result.ok) {
          expect(result.value.spec.support.kind).toBe(kind.support)
          expect(result.value.spec.hole).toBe(pier.spec.hole)
          expect(result.value.spec.post).toBe(pier.spec.post)
          expect(result.value.spec.site).toBe(pier.spec.site)
        } else {
          refused++
          for (const issue of result.issues) expect(`${issue.path} (${issue.code})`).toMatch(measured)
        }
      }
    }
    expect(refused / (piers.length * fillKinds.length)).toBeLessThan(0.03)
  })
})
