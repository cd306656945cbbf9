import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { filesUnder, root } from '../architecture/sourceFile.ts'
import { grade, median, sentencesOf } from './readingGrade.ts'

/** Every string in a table, at any depth; a function gives the strings it is written with. */
const stringsIn = (value: unknown): string[] => {
  if (typeof value === 'string') return [value]
  if (typeof value === 'function')
    return [...String(value).matchAll(/'((?:\\.|[^'\\])*)'|`((?:\\.|[^`\\])*)`/g)].map((m) => m[1] ?? m[2] ?? '')
  if (Array.isArray(value)) return value.flatMap(stringsIn)
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(stringsIn)
  return []
}

const tables = filesUnder('src/words/en', ['.ts'])
const loaded = await Promise.all(
  tables.map(async (path) => ({ path, strings: stringsIn({ ...((await import(join(root, path))) as Record<string, unknown>) }) })),
)
const all = loaded.flatMap(({ path, strings }) => strings.map((text) => ({ path, text })))

/** A number is never permission to build. */
const banned = /\b(?:safe|safely|approved?|approval|ok to build|guarantee[ds]?)\b/i
const isPlain = (text: string): boolean => !banned.test(text)

describe('[T1] the words on the page', () => {
  it('are all seen', () => {
    expect(tables.length).toBeGreaterThanOrEqual(5)
    expect(all.length).toBeGreaterThan(200)
  })

  it('never read as permission to build', () => {
    expect(all.filter(({ text }) => !isPlain(text))).toEqual([])
    const written = ['index.html', 'README.md', ...filesUnder('src/view', ['.tsx'])].filter(
      (path) => !isPlain(readFileSync(join(root, path), 'utf8')),
    )
    expect(written).toEqual([])
  })

  it('would be caught', () => {
    for (const text of ['This is safe.', 'Approved by code', 'It is OK to build', 'strength guaranteed']) expect(isPlain(text)).toBe(false)
    expect(isPlain('The safety factor is 3.')).toBe(true)
  })
})

describe('[T2] a reader of US grade 8 can follow', () => {
  it('grades a plain and a heavy sentence apart', () => {
    expect(grade('The post stands in the hole and the soil holds it up.')).toBeLessThan(4)
    expect(grade('Substantial geotechnical investigation necessitates comprehensive interdisciplinary consideration.')).toBeGreaterThan(14)
  })

  it.each(loaded.map(({ path, strings }) => [path, strings] as const))('%s', (_, strings) => {
    const sentences = strings.flatMap(sentencesOf).map((text) => ({ text, grade: Math.round(grade(text) * 10) / 10 }))
    if (sentences.length < 5) return
    expect(median(sentences.map((sentence) => sentence.grade))).toBeLessThanOrEqual(8)
    expect(sentences.filter((sentence) => sentence.grade > 16)).toEqual([])
  })
})
