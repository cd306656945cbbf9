import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import type { PierDocument } from '../../src/core/model/spec.ts'
import { resultCsv } from '../../src/export/numbers/resultCsv.ts'
import { resultJson } from '../../src/export/numbers/resultJson.ts'
import { derived } from '../../src/state/derived.ts'
import { someJobs } from './someJobs.ts'

/** Read by csv-parse, an independent reader of RFC 4180. */
type Row = Readonly<Record<string, string>>
const read = (csv: string): Row[] => parse(csv, { bom: true, columns: true, record_delimiter: '\r\n' }) as Row[]

const plainResult = (document: PierDocument): unknown => {
  const result = derived(document.spec)
  return JSON.parse(JSON.stringify(resultJson(document, { ...result, issues: [] }, result.issues)))
}

/** Every number in plain data, at any depth, but those said in words beside it. */
const numbersIn = (value: unknown): number[] => {
  if (typeof value === 'number') return [value]
  if (Array.isArray(value)) return value.flatMap(numbersIn)
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : []
}

describe('[E2] the table holds what the result holds', () => {
  it.each(someJobs)('%s', (_, document) => {
    const result = plainResult(document)
    const rows = read(resultCsv(result))
    const inTable = rows.flatMap(({ value = '' }) => value.split('; ')).filter((text) => text !== '' && Number.isFinite(Number(text)))
    const counted = new Map<number, number>()
    for (const text of inTable) counted.set(Number(text), (counted.get(Number(text)) ?? 0) + 1)
    const missing = numbersIn(result).filter((number) => {
      const left = counted.get(number) ?? 0
      counted.set(number, left - 1)
      return left <= 0
    })
    expect(missing).toEqual([])
    expect(rows.length).toBeGreaterThan(200)
  })

  it('says a length in both systems, and names what it is', () => {
    const [, document] = someJobs[0] as (typeof someJobs)[number]
    const rows = read(resultCsv(plainResult(document)))
    const depth = rows.find(({ group, where }) => group === 'spec' && where === 'hole.depth_m')
    expect(depth).toMatchObject({ name: 'Hole depth', value: String(document.spec.hole.depth), unit: 'm' })
    expect(depth?.us).toMatch(/in$/)
    expect(depth?.metric).toMatch(/m$/)
    const volume = rows.find(({ group, where }) => group === 'headlines' && where === 'hole-volume')
    expect(volume).toMatchObject({ unit: 'm3', standing: 'definition' })
  })

  it('a name stays a name: no formula, no broken line', () => {
    const [, document] = someJobs[0] as (typeof someJobs)[number]
    for (const name of ['=HYPERLINK("http://x")', '+1+1', '@SUM(A1)', '-2', 'one, "two"\r\nthree', '\ttab']) {
      const rows = read(resultCsv(plainResult({ ...document, name })))
      const told = rows.find(({ group }) => group === 'name')?.value
      expect(told).toBe(/^[=+@\t]/.test(name) ? `'${name}` : name)
    }
  })

  it.each([' =1+1', '\u00a0\u200b=1+1', '\n=1+1', 'a note\n=1+1', '\r\n +1+1', '＝1+1', ' ＋1', '－1+1', '＠SUM(A1)'])(
    '%j is no formula either: after blanks, after a line break, or in wide letters',
    (name) => {
      const [, document] = someJobs[0] as (typeof someJobs)[number]
      const rows = read(resultCsv(plainResult({ ...document, name })))
      expect(rows.find(({ group }) => group === 'name')?.value).toBe(`'${name}`)
    },
  )

  it('a semicolon parts no cells where a spreadsheet parts them by it', () => {
    const [, document] = someJobs[0] as (typeof someJobs)[number]
    const csv = resultCsv(plainResult({ ...document, name: 'a;=1+1' }))
    expect(csv).toContain('"a;=1+1"')
    expect(csv.replace(/"(?:[^"]|"")*"/g, '')).not.toContain(';')
  })
})
