import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { defaultDocument, defaultSpec } from '../../../src/core/spec/defaults.ts'
import { writeJob } from '../../../src/core/spec/writeJob.ts'
import { thumbnailOf } from '../../../src/core/documents/readPier.ts'
import { recordVersion } from '../../../src/state/storage/port.ts'
import { isThumbnail, openRecord, shelved } from '../../../src/state/storage/record.ts'
import { arbitraryPier } from '../../arbitraryPier.ts'
import { pier, pierRecord } from './parts.ts'

const facts = { id: 'a', revision: 1, made: 1, changed: 2 }
const record = pierRecord({ ...defaultDocument, name: 'Gate <b>post</b>', note: 'ask' }, facts)

describe('[M1] a saved pier comes back as it was', () => {
  it('comes back as it was, typed texts and words too', () => {
    fc.assert(
      fc.property(arbitraryPier(), (document) => {
        const back = openRecord(pier, pierRecord(document, facts))
        if (!back.ok) expect.fail(JSON.stringify(back.issues))
        expect(back.value.written).toEqual(document.written)
        expect(writeJob(back.value)).toBe(writeJob(document))
      }),
      { numRuns: 60 },
    )
  })

  it('survives the copying of a browser store', () => {
    const copied: unknown = structuredClone(record)
    expect(shelved(copied)).toMatchObject({ kind: 'whole', name: 'Gate <b>post</b>', note: 'ask', record })
  })

  it('is a section of a few numbers that can be drawn', () => {
    expect(isThumbnail(record.thumbnail)).toBe(true)
    expect(record.thumbnail?.bodies.map(([role]) => role)).toContain('concrete')
    expect(JSON.stringify(record.thumbnail).length).toBeLessThan(4000)
    for (const odd of [
      null,
      {},
      { box: [1, 2, 3], bodies: [] },
      { box: [1, 2, 3, Number.NaN], bodies: [] },
      { box: [1, 2, 3, 4], bodies: [['moon', []]] },
    ])
      expect(isThumbnail(odd)).toBe(false)
  })

  it('has a thumbnail for every kind of pier', () => {
    fc.assert(
      fc.property(arbitraryPier(), ({ spec }) => isThumbnail(thumbnailOf(spec))),
      { numRuns: 40 },
    )
  })
})

describe('[M2] a record that is not whole is told, and kept as it was found', () => {
  it('is told by its check, wherever its job was changed', () => {
    for (let at = 0; at < record.job.length; at += 7) {
      const job = `${record.job.slice(0, at)}${record.job[at] === 'x' ? 'y' : 'x'}${record.job.slice(at + 1)}`
      expect(shelved({ ...record, job })).toMatchObject({ kind: 'damaged', issues: [{ code: 'record-check' }] })
    }
  })

  it.each([
    ['nothing', null],
    ['a text', 'whole'],
    ['no job', { ...record, job: undefined }],
    ['no revision', { ...record, revision: undefined }],
    ['half a revision', { ...record, revision: 1.5 }],
    ['no dates', { ...record, changed: Number.NaN }],
    ['no list of typed texts', { ...record, typed: 'all' }],
    ['a version before the first', { ...record, schema: 0 }],
  ])('%s is damaged and keeps what was found', (_, raw) => {
    expect(shelved(raw)).toMatchObject({ kind: 'damaged', raw, issues: [{ code: 'record-incomplete' }] })
  })

  it('of a later version is newer, never damaged, and shows its picture', () => {
    const raw = { ...record, schema: recordVersion + 1, job: { in: 'another form' } }
    expect(shelved(raw)).toMatchObject({ kind: 'newer', name: record.name, thumbnail: record.thumbnail })
  })

  it('with a thumbnail that can not be drawn still opens', () => {
    expect(shelved({ ...record, thumbnail: { svg: '<svg onload=alert(1)>' } })).toMatchObject({ kind: 'whole', thumbnail: null })
  })

  it('that breaks the reader stays what it is', () => {
    const read = openRecord(
      {
        ...pier,
        parse: () => {
          throw new Error('a migration that fails')
        },
      },
      record,
    )
    expect(read.ok ? [] : read.issues.map((issue) => issue.code)).toEqual(['record-unreadable'])
    expect(shelved(record)).toMatchObject({ kind: 'whole', record })
  })
})

/** Records as released versions wrote them. They open for ever: add a file with each version, never change one. */
describe('[M3] records of every release', () => {
  const folder = new URL('./released/', import.meta.url)
  const files = readdirSync(folder)
  it('has one for each version', () => {
    for (let version = 1; version <= recordVersion; version++) expect(files).toContain(`record-${version}.json`)
  })
  it.each(files)('%s', (name) => {
    const { raw, spec } = JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as { raw: unknown; spec: unknown }
    const found = shelved(raw)
    if (found.kind !== 'whole') expect.fail(found.kind)
    const read = openRecord(pier, found.record)
    const kept = spec as PierSpec
    // What came into the document later is as in the pier that everybody starts from.
    expect(read.ok && read.value.spec).toEqual({ ...defaultSpec, ...kept, post: { ...defaultSpec.post, ...kept.post } })
  })
})
