import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { calcJob } from '../../src/cli/calcJob.ts'
import { pierKind } from '../../src/core/documents/pier.ts'
import { pierReader } from '../../src/core/documents/readPier.ts'
import { writeJob } from '../../src/core/spec/jobFile.ts'
import { openRecord, shelved } from '../../src/state/storage/record.ts'
import { kept } from './kept.ts'
import { type NamedJob, ofLink } from './piers.ts'
import { differences, read, rowOf, written } from './table.ts'

/** Files of a folder that each release adds to and none changes. */
const filesIn = (path: string): readonly (readonly [name: string, text: string])[] => {
  const folder = new URL(path, import.meta.url)
  return readdirSync(folder).map((name) => [name.replace('.json', ''), readFileSync(new URL(name, folder), 'utf8')])
}

const fromRecord = (text: string): string => {
  const found = shelved((JSON.parse(text) as { raw: unknown }).raw)
  if (found.kind !== 'whole') throw new Error(found.kind)
  const opened = openRecord({ ...pierReader, onlyTyped: pierKind.onlyTyped }, found.record)
  if (!opened.ok) throw new Error(JSON.stringify(opened.issues))
  return writeJob(opened.value)
}

const jobs = (): readonly NamedJob[] => [
  ...filesIn('../core/spec/released/').map(([name, text]): NamedJob => [`job ${name}`, text]),
  ...filesIn('../state/links/').flatMap(([name, text]) =>
    (JSON.parse(text) as readonly { code: string }[]).map(({ code }, i): NamedJob => [`link ${name} ${i + 1}`, writeJob(ofLink(code))]),
  ),
  ...filesIn('../state/shelf/released/').map(([name, text]): NamedJob => [`shelf ${name}`, fromRecord(text)]),
]

describe('[Z5] links, job files and saved piers of every release still open with the same numbers and words', () => {
  const now = new Map(
    jobs().map(([name, job]) => {
      const { out, err } = calcJob(job)
      if (err !== '') throw new Error(err)
      return [name, rowOf(JSON.parse(out))]
    }),
  )
  const was = read(kept('calc/released.csv', written(now)))

  it.each([...now])('%s', (name, row) => {
    expect(differences(name, row, was.get(name))).toEqual([])
  })

  it('and none of them is gone', () => {
    expect(was.size).toBeGreaterThanOrEqual(6)
    expect([...was.keys()]).toEqual([...now.keys()])
  })

  it('and a number that moves in its ninth digit, or a pier without a reference, shows', () => {
    const [[name, row] = expect.fail()] = now
    const moved = new Map(row).set('hole [m³]', String(Number(row.get('hole [m³]')) * (1 + 1e-9)))
    expect(differences(name, moved, was.get(name))).toHaveLength(1)
    expect(differences('new', row, was.get('new'))).toEqual(['new has no reference'])
  })
})
