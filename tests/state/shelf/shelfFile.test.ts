import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { writeJob } from '../../../src/core/spec/writeJob.ts'
import { largestShelf, readShelf, writeShelf } from '../../../src/state/storage/shelfFile.ts'
import { shelved } from '../../../src/state/storage/record.ts'
import { arbitraryPier } from '../../arbitraryPier.ts'
import { pierRecord } from './parts.ts'

let ids = 0
const read = async (text: string) => {
  const file = await readShelf(text, { now: 5, newId: () => `new${++ids}` })
  return { ...file, piers: file.piers.map((one) => ({ ...one, document: one.document as PierDocument })) }
}
const kept = (id: string, document = defaultDocument) => shelved(pierRecord(document, { id, revision: 3, made: 1, changed: 2 }))
const codes = async (text: string) => (await read(text)).issues.map((issue) => `${issue.code} ${issue.path}`)

describe('[M4] all saved piers go into one file and come back byte for byte', () => {
  it('come back word for word, byte for byte', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(arbitraryPier(), { maxLength: 4 }), async (documents) => {
        const text = writeShelf(documents.map((document, i) => kept(`p${i}`, document)))
        const back = await read(text)
        expect(back.issues).toEqual([])
        expect(back.piers.map(({ document }) => writeJob(document))).toEqual(documents.map(writeJob))
        expect(back.piers.map(({ document }) => document.written)).toEqual(documents.map(({ written }) => written))
        const again = back.piers.map(({ id, made, changed, document }) => shelved(pierRecord(document, { id, revision: 1, made, changed })))
        expect(writeShelf(again)).toBe(text)
      }),
      { numRuns: 25 },
    )
  })

  it('take along what can not be read here', async () => {
    const newer = { ...pierRecord(defaultDocument, { id: 'n', revision: 1, made: 1, changed: 1 }), schema: 9 }
    const back = await read(writeShelf([kept('a'), shelved(newer)]))
    expect(back.asFound).toEqual([newer])
    expect(back.piers.map(({ id }) => id)).toEqual(['a'])
  })

  it('may be one job file', async () => {
    const back = await read(writeJob({ ...defaultDocument, name: 'One' }))
    expect(back.piers[0]?.document.name).toBe('One')
  })

  it('leave out a pier that can not be read, and name it', async () => {
    const file = JSON.parse(writeShelf([kept('a'), kept('b'), kept('c')])) as { piers: { job: { pier: { hole: { depth: string } } } }[] }
    const [, second] = file.piers
    if (second) second.job.pier.hole.depth = '900 in'
    const back = await read(JSON.stringify(file))
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
  ])('that are %s give no pier and say why', async (_, text, want) => {
    expect(await codes(text)).toEqual(want)
    expect((await read(text)).piers).toEqual([])
  })

  it('never break the reader, however deep or odd', async () => {
    const deep = `{"pierglassShelf":1,"piers":[{"job":${'['.repeat(10_000)}${']'.repeat(10_000)}}]}`
    expect((await read(deep)).piers).toEqual([])
    expect((await read(deep)).issues.length).toBeGreaterThan(0)
    await fc.assert(
      fc.asyncProperty(fc.json(), async (json) => {
        const { piers } = await read(`{"pierglassShelf":1,"piers":[${json}]}`)
        return piers.length === 0
      }),
      { numRuns: 300 },
    )
    expect({} as Record<string, unknown>).toEqual({})
  })
})
