import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bracketKinds, fillKinds } from '../../../src/core/kinds/index.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { setField } from '../../../src/core/spec/edit.ts'
import { parseJob, writeJob } from '../../../src/core/spec/jobFile.ts'
import { deepestNesting, largestText } from '../../../src/core/spec/jobText.ts'
import { assertGapless, migrated, migrations } from '../../../src/core/spec/migrate.ts'
import { schemaVersion } from '../../../src/core/spec/schemaVersion.ts'
import { jobJsonSchema } from '../../../src/core/spec/schema.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import { arbitraryPier } from '../../arbitraryPier.ts'
import { close } from '../../close.ts'

const folder = new URL('../../../public/examples/', import.meta.url)
const examples = readdirSync(folder).map((name) => [name, readFileSync(new URL(name, folder), 'utf8')] as const)
const opened = (text: string): PierDocument => {
  const read = parseJob(text)
  if (!read.ok) expect.fail(JSON.stringify(read.issues))
  return read.value
}
const codes = (text: string) => parseJob(text).issues.map((issue) => issue.code)

describe('job file', () => {
  it.each(examples)('%s comes back byte for byte where somebody typed', (_, text) => {
    const again = writeJob(opened(text))
    const quantities = text.match(/"[^"]*": "(?:\d|½|−|-)(?:[^"\\]|\\.)*"/g) ?? []
    expect(quantities.length).toBeGreaterThan(10)
    for (const quantity of quantities) expect(again).toContain(quantity)
    expect(writeJob(opened(again))).toBe(again)
  })

  it('of the first pier opens as that pier', () => expect(opened(writeJob(defaultDocument)).spec).toEqual(defaultDocument.spec))

  it('brings back random piers: name and note as they were, values within 1e-12, texts as typed', () => {
    fc.assert(
      fc.property(arbitraryPier(), (document) => {
        const text = writeJob(document)
        const back = opened(text)
        expect([back.name, back.note]).toEqual([document.name, document.note])
        expect(back.written).toMatchObject(document.written)
        sameNumbers(back.spec, document.spec, 1e-12)
        expect(writeJob(back)).toBe(text)
      }),
      { numRuns: 200 },
    )
  })

  it('keeps a typed text only while it reads as the value', () => {
    const typed = setField(defaultDocument, 'hole.depth', `4'-2 1/2"`, 'us')
    if (!typed.ok) expect.fail('refused')
    expect(writeJob(typed.value)).toContain(JSON.stringify(`4'-2 1/2"`))
    const moved = setField(typed.value, 'hole.depth', '50', 'us')
    if (!moved.ok) expect.fail('refused')
    expect(writeJob(moved.value)).toContain('"depth": "50 in"')
    expect(moved.value.written).toEqual({ 'hole.depth': '50 in' })
  })

  it('is read with a byte order mark', () => expect(opened(`\ufeff${writeJob(defaultDocument)}`).spec).toEqual(defaultDocument.spec))

  it('shows markup in name and note as the text it is', () => {
    const name = '<img src=x onerror=alert(1)>'
    expect(opened(writeJob({ ...defaultDocument, name })).name).toBe(name)
  })
})

const metricTwin = (name: string) => examples.find(([one]) => one === name)?.[1] ?? ''
describe('one pier in two spellings', () => {
  it('gives the same SI values to 1e-9', () => {
    const us = opened(metricTwin('boat-shelter-mixed.json'))
    const metric = opened(metricTwin('boat-shelter-mixed-metric.json'))
    sameNumbers(metric.spec, us.spec, 1e-9)
    expect(metric.written).not.toEqual(us.written)
  })
})

describe('hostile text', () => {
  it('of 50 MB is refused before anything reads it', () => {
    expect(codes(`{"pierglass":1,"note":"${'x'.repeat(50_000_000)}"}`)).toEqual(['file-too-large'])
    expect(codes('['.repeat(50_000_000))).toEqual(['file-too-large'])
  })

  it.each([
    ['lists', '['.repeat(10_000)],
    ['lists that close', '['.repeat(10_000) + ']'.repeat(10_000)],
    ['objects', '{"a":'.repeat(10_000)],
    ['objects in the pier', `{"pierglass":1,"pier":${'{"hole":'.repeat(10_000)}1${'}'.repeat(10_000)}}`],
    ['one level too many', `${'['.repeat(deepestNesting + 1)}${']'.repeat(deepestNesting + 1)}`],
  ])('nested too deep is refused: %s', (_, text) => expect(codes(text)).toEqual(['file-too-deep']))

  it('with brackets inside a text is not nested', () =>
    expect(opened(writeJob({ ...defaultDocument, note: '['.repeat(1000) })).note).toHaveLength(1000))

  it.each([
    ['one long text', `{"pierglass":1,"note":"${'x'.repeat(largestText - 30)}"}`],
    ['one long text of escapes', `{"pierglass":1,"note":"${'\\n'.repeat(largestText / 2 - 30)}"}`],
    ['one long text without an end', `{"pierglass":1,"note":"${'x'.repeat(largestText - 40)}`],
    ['spaces', ' '.repeat(largestText)],
    ['digits', '1'.repeat(largestText)],
    ['quotes', '"'.repeat(largestText)],
    ['backslashes', '\\'.repeat(largestText)],
    ['many keys', `{${Array.from({ length: 20_000 }, (_, i) => `"k${i}":1`).join(',')}}`],
    ['many keys in the pier', `{"pierglass":1,"pier":{${Array.from({ length: 20_000 }, (_, i) => `"k${i}":1`).join(',')}}}`],
  ])('as large as may be is refused without a crash: %s', (_, text) => expect(parseJob(text).ok).toBe(false))

  it('leaves no mark on any object', () => {
    parseJob(
      '{"pierglass":1,"__proto__":{"polluted":1},"pier":{"__proto__":{"polluted":1},"hole":{"constructor":{"prototype":{"polluted":1}}}}}',
    )
    expect('polluted' in {}).toBe(false)
  })

  it('of any kind never throws', () => {
    const jsonish = fc.oneof(
      fc.string(),
      fc.json(),
      fc.jsonValue().map((value) => JSON.stringify({ pierglass: 1, pier: value })),
      fc.jsonValue().map((value) => JSON.stringify({ pierglass: value })),
    )
    fc.assert(
      fc.property(jsonish, (text) => !parseJob(text).ok),
      { numRuns: 1000 },
    )
  })

  it('made by changing one value of a good job never throws, and names that value or what depends on it', () => {
    const good = JSON.parse(writeJob(defaultDocument)) as { pier: Record<string, Record<string, unknown>> }
    const leaves = Object.entries(good.pier).flatMap(([group, inner]) =>
      typeof inner === 'object' && inner !== null ? Object.keys(inner).map((key) => [group, key] as const) : [],
    )
    fc.assert(
      fc.property(fc.constantFrom(...leaves), fc.jsonValue(), ([group, key], value) => {
        const job = structuredClone(good)
        const holder = job.pier[group]
        if (holder) holder[key] = value
        const read = parseJob(JSON.stringify(job))
        return read.ok || read.issues.length > 0
      }),
      { numRuns: 1000 },
    )
  })
})

describe('versions', () => {
  it('lead from the first to the newest without a gap', () => {
    expect(() => assertGapless(migrations, schemaVersion)).not.toThrow()
    const step = (old: unknown) => old
    expect(() => assertGapless({ 1: step, 2: step }, 3)).not.toThrow()
    for (const chain of [{ 1: step }, { 2: step }, { 1: step, 3: step }, { 1: step, 2: step, 3: step }, { 0: step, 1: step }]) {
      expect(() => assertGapless(chain, 3)).toThrow('assertGapless')
    }
  })

  it('are taken one after the other', () => {
    const add = (mark: string) => (old: unknown) => ({ ...(old as object), [mark]: true })
    const chain = { 1: add('a'), 2: add('b') }
    expect(migrated({ pierglass: 1 }, chain, 3)).toEqual({ ok: true, data: { pierglass: 3, a: true, b: true } })
    expect(migrated({ pierglass: 2 }, chain, 3)).toEqual({ ok: true, data: { pierglass: 3, b: true } })
    expect(migrated({ pierglass: 3 }, chain, 3)).toEqual({ ok: true, data: { pierglass: 3 } })
    expect(migrated({ pierglass: 4 }, chain, 3)).toMatchObject({ ok: false, issue: { code: 'newer-schema', got: 4, limit: 3 } })
    expect(() => migrated({ pierglass: 1 }, { 2: add('b') }, 3)).toThrow('migrated')
  })

  const released = new URL('released/', import.meta.url)
  const fixtures = readdirSync(released)
  it('have a fixture each', () => {
    const versions = Array.from({ length: schemaVersion }, (_, i) => `version-${i + 1}.json`)
    expect(fixtures.sort()).toEqual(versions)
  })
  it.each(fixtures)('%s still opens', (name) => {
    const text = readFileSync(new URL(name, released), 'utf8')
    expect(text).toContain(`"pierglass": ${name.replace(/\D/g, '')}`)
    expect(opened(text).name).not.toBe('')
  })
})

describe('JSON Schema', () => {
  const schema = JSON.stringify(jobJsonSchema())
  it('names every kind, closes every object and wants texts for quantities', () => {
    for (const kind of [...fillKinds, ...bracketKinds]) expect(schema).toContain(`"const":"${kind.id}"`)
    const objects = schema.match(/"type":"object"/g)?.length ?? 0
    expect(objects).toBeGreaterThan(20)
    // Only where values came from is told by path, and so has keys of its own.
    const byPath = schema.match(/"additionalProperties":\{/g)?.length ?? 0
    expect(byPath).toBe(2)
    expect(schema.match(/"additionalProperties":false/g)).toHaveLength(objects - byPath)
    expect(schema).toContain(
      '"diameter":{"type":"string","description":"length with its unit (in, ft, yd, mm, cm, m), 8 in to 48 in (203 mm to 1.22 m)"}',
    )
  })
})

/** Same keys and texts, numbers close. */
function sameNumbers(got: unknown, want: unknown, rel: number, path = ''): void {
  if (typeof want === 'number' && typeof got === 'number') close(got, want, { abs: 1e-15, rel }, path)
  else if (typeof want === 'object' && want !== null && typeof got === 'object' && got !== null) {
    expect(Object.keys(got).sort()).toEqual(Object.keys(want).sort())
    for (const [key, value] of Object.entries(want)) sameNumbers((got as Record<string, unknown>)[key], value, rel, `${path}.${key}`)
  } else expect(got, path).toEqual(want)
}
