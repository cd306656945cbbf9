import { describe, expect, it } from 'vitest'
import fc from 'fast-check'
import { referenceLife } from '../../../src/core/engineering/life/referenceLife.ts'
import { lifeEvidence } from '../../../src/core/engineering/tables/lifeEvidence.ts'
import { referenceRows } from '../../../src/core/engineering/tables/referenceRows.ts'
import { bracketKinds, fillKinds } from '../../../src/core/kinds/index.ts'
import { outOfBounds } from '../../../src/core/spec/bounds.ts'
import { defaultDocument, defaultSpec } from '../../../src/core/spec/defaults.ts'
import { fieldAt, allFields, visibleFields } from '../../../src/core/spec/fields.ts'
import { deepFreeze, valueAt, withValueAt } from '../../../src/core/spec/path.ts'
import { fieldGroups, type FieldNode } from '../../../src/core/fields/node.ts'
import { issueCodes } from '../../../src/core/spec/issueCodes.ts'
import { shortText } from '../../../src/core/spec/jobFile.ts'
import { linkedFields } from '../../../src/core/spec/linkContent.ts'
import { pierFields } from '../../../src/core/spec/pier/pier.ts'
import { validateSpec } from '../../../src/core/spec/validate.ts'
import { parseQuantity } from '../../../src/core/units/parse.ts'
import { arbitraryPier } from '../../arbitraryPier.ts'
import releasedKeys from './releasedKeys.json' with { type: 'json' }

const numbers = allFields.flatMap((field) => (field.type === 'number' ? [field] : []))
const paths = [...new Set(allFields.map((field) => field.path))]

describe('the table of fields', () => {
  it('offers every row of evidence in the ground that gives a life', () => {
    const inGround = lifeEvidence.filter((row) => row.contact === 'in-ground' && referenceLife(row) !== null)
    expect([...referenceRows]).toEqual(inGround.map((row) => row.id))
  })

  it('stands in building order', () => {
    const order = allFields.map((field) => fieldGroups.indexOf(field.group))
    expect(order).toEqual([...order].sort((a, b) => a - b))
    expect(order).not.toContain(-1)
  })

  it.each(numbers.map((field) => [field.path, field] as const))('%s has bounds and steps that make sense', (_, field) => {
    const { min, max, step } = field
    expect(min).toBeLessThan(max)
    for (const size of [step.us, step.metric]) {
      expect(size).toBeGreaterThan(0)
      expect(size).toBeLessThanOrEqual(max - min)
    }
  })

  it('has choices, each once', () => {
    for (const field of allFields) if (field.type === 'choice') expect(new Set(field.choices).size).toBe(field.choices.length)
    for (const field of allFields) if (field.type === 'choice') expect(field.choices.length).toBeGreaterThan(field.nullable ? 0 : 1)
  })

  it('shows one field for each path, and every value of a pier but its support has one', () => {
    fc.assert(
      fc.property(arbitraryPier(), ({ spec }) => {
        const shown = visibleFields(spec).map((field) => field.path)
        expect(new Set(shown).size).toBe(shown.length)
        const known = new Set([...paths, 'support.kind', 'judgement', 'callout.number', 'callout.date', 'callout.notes'])
        for (const leaf of leaves(spec)) expect(known).toContain(leaf)
        for (const path of shown) expect(valueAt(spec, path)).not.toBeUndefined()
      }),
      { numRuns: 300 },
    )
  })

  it('refuses every value just beyond a bound, and takes the bound itself', () => {
    for (const field of visibleFields(defaultSpec)) {
      if (field.type !== 'number') continue
      const by = Math.max(Math.abs(field.max), 1) * 1e-6
      const at = (value: number) => outOfBounds(withValueAt(defaultSpec, field.path, value)).map((issue) => `${issue.code} ${issue.path}`)
      expect(at(field.min)).toEqual([])
      expect(at(field.max)).toEqual([])
      expect(at(field.min - by)[0]).toBe(`below-minimum ${field.path}`)
      expect(at(field.max + by)[0]).toBe(`above-maximum ${field.path}`)
      for (const odd of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
        expect(at(odd)).toEqual([`not-finite ${field.path}`])
      expect(at(-0)).toEqual(at(0))
    }
  })

  it('refuses a length that is next to nothing', () => {
    const codes = (value: number) => outOfBounds(withValueAt(defaultSpec, 'site.topsoil', value)).map((issue) => issue.code)
    expect(codes(1e-9)).toEqual(['next-to-nothing'])
    expect(codes(0)).toEqual([])
    expect(codes(1e-3)).toEqual([])
  })

  it('looks at values that are kept while they are not shown', () => {
    const flat = withValueAt(withValueAt(defaultSpec, 'top.shape', 'flat'), 'top.rise', 50)
    expect(fieldAt(flat, 'top.rise')).toBeUndefined()
    expect(outOfBounds(flat).map((issue) => issue.path)).toEqual(['top.rise'])
  })

  it('starts from a pier without a word to say against it', () => {
    expect(validateSpec(defaultSpec)).toEqual([])
    expect(Object.isFrozen(defaultDocument.spec.site.soil)).toBe(true)
  })
})

describe('the declarations', () => {
  it('say of every field where it is asked, and behind a field that there is', () => {
    const known = new Set(paths)
    for (const { after } of nodes(pierFields)) if (after !== undefined) expect(known).toContain(after)
  })

  it('of kinds that share a path share its key and its silent value', () => {
    for (const path of paths) {
      const alike = allFields.filter((field) => field.path === path).map(({ link, silent }) => `${link} ${silent}`)
      expect(new Set(alike).size, path).toBe(1)
    }
  })

  it.each([...fillKinds, ...bracketKinds].map((kind) => [kind.id, kind] as const))(
    '%s starts with a value of each field of its own',
    (id, kind) => {
      expect(Object.keys(kind.defaults)).toEqual(['kind', ...Object.keys(kind.fields)])
      expect(kind.defaults.kind).toBe(id)
    },
  )
})

describe('what a link says', () => {
  it('has a key of its own for each field', () => {
    expect(linkedFields.map(({ path }) => path).sort()).toEqual([...paths].sort())
    expect(new Set(linkedFields.map(({ link }) => link)).size).toBe(linkedFields.length)
    for (const { link } of linkedFields) expect(link).toMatch(/^[a-z]{2}$/)
  })

  it('and what it leaves out is for ever: keys, silent values and order are those of every release', () => {
    const released = new Set(releasedKeys.map(([, key]) => key))
    expect(linkedFields.filter(({ link }) => released.has(link)).map(({ path, link, silent }) => [path, link, silent])).toEqual(
      releasedKeys,
    )
  })

  it('is silent about texts that a file would write in the same way', () => {
    for (const { path, silent } of linkedFields) {
      const field = numbers.find((one) => one.path === path)
      if (field === undefined || typeof silent !== 'string') continue
      const reading = parseQuantity(silent, field.quantity)
      expect(reading.ok && shortText(reading.value, field.quantity)).toBe(silent)
    }
  })
})

describe('paths', () => {
  it('reach own keys only', () => {
    expect(valueAt(defaultSpec, 'hole.diameter')).toBe(0.508)
    for (const path of ['hole.bell.diameter', 'hole.constructor', '__proto__', 'hole.__proto__.x', 'nothing.at.all', '']) {
      expect(valueAt(defaultSpec, path)).toBeUndefined()
    }
  })
  it('copy what they change and share the rest', () => {
    const next = withValueAt(defaultSpec, 'hole.diameter', 1)
    expect(next.hole.diameter).toBe(1)
    expect(defaultSpec.hole.diameter).toBe(0.508)
    expect(next.site).toBe(defaultSpec.site)
    expect(() => withValueAt(defaultSpec, 'hole.bell.diameter', 1)).toThrow('withValueAt')
  })
})

describe('freezing', () => {
  it('goes all the way down', () => {
    const data = deepFreeze({ a: { b: [{ c: 1 }] } })
    expect(Object.isFrozen(data.a.b[0])).toBe(true)
  })
})

describe('issue codes', () => {
  it('are each there once, in kebab case', () => {
    expect(new Set(issueCodes).size).toBe(issueCodes.length)
    for (const code of issueCodes) expect(code).toMatch(/^[a-z]+(-[a-z0-9]+)*$/)
  })
})

function leaves(node: unknown, path = ''): string[] {
  if (typeof node !== 'object' || node === null) return [path]
  return Object.entries(node).flatMap(([key, value]) => leaves(value, path === '' ? key : `${path}.${key}`))
}

function nodes(node: FieldNode): FieldNode[] {
  const held =
    node.type === 'either' ? node.kinds.map((kind) => kind.fields) : node.type === 'group' || node.type === 'part' ? [node.fields] : []
  return [node, ...held.flatMap((shape) => Object.values(shape).flatMap(nodes))]
}
