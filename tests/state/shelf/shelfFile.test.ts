import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { writeJob } from '../../../src/core/spec/writeJob.ts'
import { largestShelf, readShelf, writeShelf } from '../../../src/state/shelf/shelfFile.ts'
import { recordOf, shelved } from '../../../src/state/shelf/shelfRecord.ts'
import { arbitraryPier } from '../../arbitraryPier.ts'

let ids = 0
const read = (text: string) => readShelf(text, 5, () => `new${++ids}`)
const kept = (id: string, document = defaultDocument) => shelved(recordOf(document, { id, revision: 3, made: 1, changed: 2 }))
const codes = (text: string) => read(text).issues.map((issue) => `${issue.code} ${issue.path}`)

describe('[M4] all saved piers go into one file and come back byte for byte', () => {
  it('come back word for word, byte for byte', () => {
    fc.assert(
      fc.property(fc.array(arbitraryPier(), { maxLength: 4 }), (documents) => {
        const text = writeShelf(documents.map((document, i) => kept(`p${i}`, document)))
        const back = read(text)
        expect(back.issues).toEqual([])
        expect(back.piers.map(({ document }) => writeJob(document))).toEqual(documents.map(writeJob))
        expect(back.piers.map(({ document }) => document.written)).toEqual(documents.map(({ written }) => written))
        const again = back.piers.map(({ id, made, changed, document }) => shelved(recordOf(document, { id, revision: 1, made, changed })))
        expect(writeShelf(again)).toBe(text)
      }),
      { numRuns: 25 },
    )
  })

  it('take along what can not be read here', () => {
    const newer = { ...recordOf(defaultDocument, { id: 'n', revision: 1, made: 1, changed: 1 }), schema: 9 }
    const back = read(writeShelf([kept('a'), shelved(newer)]))
    expect(back.asFound).toEqual([newer])
    expect(back.piers.map(({ id }) => id)).toEqual(['a'])
  })

  it('may be one job file', () => {
    const back = read(writeJob({ ...defaultDocument, name: 'One' }))
    expect(back.piers[0]?.document.name).toBe('One')
  })

  it('leave out a pier that can not be read, and name it', () => {
    const file = JSON.parse(writeShelf([kept('a'), kept('b'), kept('c')])) as { piers: { job: { pier: { hole: { depth: string } } } }[] }
    const [, second] = file.piers
    if (second) second.job.pier.hole.depth = '900 in'
    const back = read(JSON.stringify(file))
    expect(back.piers.map(({ id }) => id)).toEqual(['a', 'c'])
    expect(back.issues).toMatchObject([{ code: 'above-maximum', path: 'piers.2.hole.depth' }])
  })

  it.each([
    ['no JSON', '{', ['not-a-shelf ']],
    ['a list', '[]', ['not-a-shelf ']],
    ['no piers', '{"pierglassShelf":1}', ['not-a-shelf ']],
    ['a later version', '{"pierglassShelf":2,"piers":[]}', ['newer-shelf ']],
    ['no version', '{"pierglassShelf":"x","piers":[]}', ['not-a-shelf ']],
    ['a pier that is none', '{"pierglassShelf":1,"piers":[7]}', ['not-a-shelf-entry piers.1']],
    ['a pier without a job', '{"pierglassShelf":1,"piers":[{}]}', ['not-a-job piers.1.pierglass']],
    ['something found, without an id', '{"pierglassShelf":1,"piers":[{"asFound":{}}]}', ['not-a-shelf-entry piers.1']],
    ['a prototype', '{"pierglassShelf":1,"piers":[{"__proto__":{"job":{}}}]}', ['not-a-job piers.1.pierglass']],
    ['too much', `"${'x'.repeat(largestShelf)}"`, ['file-too-large ']],
  ])('that are %s give no pier and say why', (_, text, want) => {
    expect(codes(text)).toEqual(want)
    expect(read(text).piers).toEqual([])
  })

  it('never break the reader, however deep or odd', () => {
    const deep = `{"pierglassShelf":1,"piers":[{"job":${'['.repeat(10_000)}${']'.repeat(10_000)}}]}`
    expect(read(deep).piers).toEqual([])
    expect(read(deep).issues.length).toBeGreaterThan(0)
    fc.assert(
      fc.property(fc.json(), (json) => {
        const { piers } = read(`{"pierglassShelf":1,"piers":[${json}]}`)
        return piers.length === 0
      }),
      { numRuns: 300 },
    )
    expect({} as Record<string, unknown>).toEqual({})
  })
})
